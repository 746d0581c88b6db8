package ampdays.report.page;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Breaks lines behind blanks, and behind hyphens within a word: never between a number and its unit's sign. */
final class BreakAtBlanks implements FSTextBreaker {
    private String text = "";
    private int at;

    @Override
    public void setText(String newText) {
        text = newText;
        at = 0;
    }

    @Override
    public int next() {
        if (at >= text.length()) {
            return -1;
        }
        at++;
        while (at < text.length() && !isBreak(at)) {
            at++;
        }
        return at;
    }

    private boolean isBreak(int place) {
        char before = text.charAt(place - 1);
        char after = text.charAt(place);
        boolean afterBlank = before == ' ' && after != ' ';
        boolean afterHyphen = before == '-' && Character.isLetter(after);
        return afterBlank || afterHyphen;
    }
}
