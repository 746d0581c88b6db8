package ampdays.cli;

import ampdays.commission.Item;
import ampdays.commission.Judgement;
import ampdays.commission.Judgement.Support;
import ampdays.commission.Judgement.Suspect;
import ampdays.commission.Outcome;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** A commissioning sheet, and what its readings say, on the screen. */
final class CommissionScreen {
    private static final int MOST_CAUSES = 3;

    private final PrintWriter out;

    CommissionScreen(PrintWriter out) {
        this.out = out;
    }

    void sheet(Sheet sheet) {
        head(sheet);
        Sheet.CAUTIONS.forEach(caution -> wrapped("! ", caution));
        int number = 1;
        for (Step step : sheet.steps()) {
            out.println();
            out.println(number + ". " + step.title());
            number++;
            wrapped("   ", step.how());
            if (!step.caution().isEmpty()) {
                wrapped("   ! ", step.caution());
            }
            step.items().forEach(this::item);
        }
        out.println();
        sheet.notes().forEach(note -> wrapped("", note));
        out.println();
    }

    private void head(Sheet sheet) {
        out.println(sheet.title());
        out.println("Commissioning, option \"" + sheet.option() + "\"; "
                + sheet.conditions().words());
        out.println();
    }

    private void item(Item item) {
        if (item.isQuestion()) {
            wrapped(
                    "   - ",
                    item.what() + " (" + item.where() + ")" + (item.stopText().isEmpty() ? "" : " No is a stop."));
            return;
        }
        String predicted = item.show(item.predicted());
        wrapped(
                "   - ",
                item.what() + " (" + item.where() + "): " + (predicted.isEmpty() ? "" : predicted + "; ") + "pass "
                        + item.passText()
                        + (item.stopText().isEmpty() ? "" : "; stop " + item.stopText()));
    }

    void judged(Sheet sheet, List<Judgement> judgements) {
        head(sheet);
        for (Outcome outcome : List.of(Outcome.STOP, Outcome.INVESTIGATE)) {
            List<Judgement> of =
                    judgements.stream().filter(j -> j.outcome() == outcome).toList();
            if (!of.isEmpty()) {
                out.println(outcome == Outcome.STOP ? "Stop:" : "Investigate:");
                of.forEach(judgement -> deviation(sheet, judgement));
                out.println();
            }
        }
        long passed =
                judgements.stream().filter(j -> j.outcome() == Outcome.PASS).count();
        out.println("Passed: " + passed + " of " + judgements.size() + " readings.");
        List<String> blank = Judgement.notRead(sheet, judgements).map(Item::id).toList();
        if (!blank.isEmpty()) {
            wrapped("", "Not read yet, " + blank.size() + ": " + String.join(", ", blank) + ".");
        }
        boolean stops = judgements.stream().anyMatch(j -> j.outcome() == Outcome.STOP);
        out.println(
                stops
                        ? "A stop stands: do not go on, and do not hand over, until it is cleared and read again."
                        : blank.isEmpty() ? "No stop stands; the sheet is complete." : "No stop stands so far.");
        out.println("Not a code check; have it inspected by a licensed person.");
        out.flush();
    }

    private void deviation(Sheet sheet, Judgement judgement) {
        Item item = judgement.item();
        Item judgedBy = item.judgedBy(judgement.band());
        wrapped(
                "  ",
                step(sheet, item) + ", " + item.id() + ": " + item.what() + " " + item.showTyped(judgement.reading())
                        + (item.isQuestion()
                                ? ""
                                : "; pass " + judgedBy.passText()
                                        + (judgedBy.passText().equals(item.passText())
                                                ? ""
                                                : " at the current that was read")
                                        + (judgement.outcome() == Outcome.STOP
                                                ? "; stop " + judgedBy.stopText()
                                                : "")));
        int shown = 0;
        for (Suspect suspect : judgement.causes()) {
            if (shown < MOST_CAUSES || suspect.support() == Support.FOR) {
                shown++;
                wrapped("    " + shown + ". ", suspect.cause().text() + words(suspect.support()));
            }
        }
        wrapped("    ", (shown > 1 ? "Next, to tell 1 from 2: " : "Next: ") + judgement.next());
    }

    private static String words(Support support) {
        return switch (support) {
            case FOR -> " (another reading of this sheet says so too)";
            case AGAINST -> " (another reading of this sheet speaks against it)";
            case UNTOLD -> "";
        };
    }

    private static String step(Sheet sheet, Item item) {
        for (int i = 0; i < sheet.steps().size(); i++) {
            if (sheet.steps().get(i).items().contains(item)) {
                return String.format(Locale.ROOT, "step %d", i + 1);
            }
        }
        throw new IllegalArgumentException(item.id() + " is not on the sheet");
    }

    /** A paragraph behind a lead, its further lines set in as far. */
    private void wrapped(String lead, String text) {
        Paragraph.print(out, lead + text, " ".repeat(lead.length()));
    }
}
