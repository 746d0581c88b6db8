package ampdays.cli;

import ampdays.results.Bounded;
import ampdays.results.Matters;
import ampdays.study.Verdict;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** What moves the answer of a design, and what to measure first, as text. */
final class MattersScreen {
    private static final int MOST_INPUTS = 12;

    private final PrintWriter out;
    private final Matters matters;

    MattersScreen(PrintWriter out, Matters matters) {
        this.out = out;
        this.matters = matters;
    }

    void print() {
        out.println(matters.title());
        out.println();
        Paragraph.print(out, opening(), "");
        out.println();
        alone();
        Paragraph.print(
                out,
                "All " + matters.inputs().size() + " inputs, the weather and the start drawn together "
                        + matters.samples()
                        + " times (seed " + matters.seed()
                        + "): what each has of the variance, by itself and with all that it does together with others;"
                        + " in brackets, 95 % sure. Below 0 % is chance.",
                "");
        out.println();
        shares();
        measureFirst();
        out.println();
    }

    private String opening() {
        return "\"" + matters.option() + "\": " + heading() + ": " + answer(matters.usual()) + ", "
                + matters.usualNights() + " comfortable nights. Each input alone, at the low and at the high end of the"
                + " spread that its mark stands for:";
    }

    private void alone() {
        Table table = new Table(List.of("low end", "high end", heading(), "comfortable nights"));
        matters.inputs().stream()
                .limit(MOST_INPUTS)
                .forEach(input -> table.row(
                        input.name() + " (" + input.source() + ")",
                        List.of(
                                input.low(),
                                input.high(),
                                Table.whole(answer(input.answerAtLow()) + " to " + answer(input.answerAtHigh())),
                                input.nightsAtLow() + " to " + input.nightsAtHigh())));
        table.print(out);
    }

    private void shares() {
        Table table = new Table(List.of("by itself", "", "in all", ""));
        for (Matters.Share share : matters.shares()) {
            table.row(
                    share.name(),
                    List.of(
                            percent(share.first().value()),
                            between(share.first()),
                            percent(share.total().value()),
                            between(share.total())));
        }
        table.print(out);
    }

    private void measureFirst() {
        List<Matters.Input> first = matters.measureFirst();
        if (first.isEmpty()) {
            Paragraph.print(
                    out, "Nothing to measure first: what is left is weather, habits, or what is measured already.", "");
            return;
        }
        out.println("Measure this first:");
        for (int i = 0; i < first.size(); i++) {
            Matters.Input input = first.get(i);
            Paragraph.print(
                    out,
                    (i + 1) + ". " + input.name() + ": " + input.usual() + " (" + input.source()
                            + "), taken to lie between " + input.low() + " and " + input.high(),
                    "   ");
        }
    }

    private String answer(double value) {
        return (value >= matters.cap() ? "over " : "") + Verdict.twoDigits(value);
    }

    /** The answer in words, with a unit where they do not say it. */
    private String heading() {
        return matters.unit().equals("days") ? matters.answer() : matters.answer() + ", " + matters.unit();
    }

    private static String between(Bounded share) {
        return "(" + String.format(Locale.ROOT, "%d", Math.round(100 * share.low())) + " to " + percent(share.high())
                + ")";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%d %%", Math.round(100 * share));
    }
}
