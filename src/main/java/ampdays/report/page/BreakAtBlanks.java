package ampdays.report.page;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Breaks lines behind blanks, and behind hyphens within a word: never between a number and its unit's sign. */
final class BreakAtBlanks implements FSTextBreaker {
    private static final String SIGNS = "°%";

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
        boolean afterBlank = before == ' ' && after != ' ' && !isUnit(place);
        boolean afterHyphen = before == '-' && Character.isLetter(after);
        return afterBlank || afterHyphen;
    }

    /** Whether a sign of a unit stands here, and a number before the blank. */
    private boolean isUnit(int place) {
        return SIGNS.indexOf(text.charAt(place)) >= 0 && place > 1 && Character.isDigit(text.charAt(place - 2));
    }
}
