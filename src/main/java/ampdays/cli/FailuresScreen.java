package ampdays.cli;

import ampdays.results.FailureOutcome;
import ampdays.results.FailureOutcome.Addition;
import ampdays.results.FailureOutcome.Sign;
import ampdays.results.FailureOutcome.Times;
import ampdays.results.FailureOutcome.Use;
import ampdays.results.FailureReport;
import ampdays.results.HeatAfterLoss;
import ampdays.study.Verdict;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What the failures of a design come to, on the screen. */
final class FailuresScreen {
    private static final int MOST_ADDITIONS = 3;
    private static final String NEVER = "–";
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private final PrintWriter out;
    private final FailureReport report;

    FailuresScreen(PrintWriter out, FailureReport report) {
        this.out = out;
        this.report = report;
    }

    void print(Path folder, Collection<String> charts) {
        out.println(report.title() + ": when something fails (" + report.option() + ")");
        out.println();
        wrap(
                "Without any failure this design " + Verdict.fate(report.undisturbed())
                        + ". Each failure stands beside that, from its own moment on."
                        + (report.undisturbed().holds()
                                ? ""
                                : " What a failure costs shows better on a design that holds: --option NAME takes"
                                        + " one."),
                "");
        out.println();
        if (!report.outcomes().isEmpty()) {
            table().print(out);
        }
        report.outcomes().forEach(this::words);
        notApplying();
        heat();
        wrap(
                "Written to " + folder + ": failures.csv, failures.json; charts (.svg and .png): "
                        + String.join(", ", charts) + ".",
                "");
        wrap(Paragraph.ESTIMATES, "");
    }

    private Table table() {
        List<FailureOutcome> outcomes = report.outcomes();
        Table table = new Table(outcomes.stream().map(FailureOutcome::name).toList());
        table.row("begins", outcomes.stream().map(o -> at(o.fromEpochSecond())).toList());
        table.row(
                "left of the trip", outcomes.stream().map(o -> hours(o.leftH())).toList());
        rows(table, number("to reserve, %.0f %%", 100 * report.reserveShare()), Times::reserveH);
        rows(table, "to cut-out", Times::cutOutH);
        rows(table, "to cabin over 32 °C", Times::over32H);
        rows(table, "to 35 °C", Times::over35H);
        rows(table, "to 40 °C", Times::over40H);
        rows(table, "over 32 °C, people in", Times::hotH, hotH -> hotH == 0 ? "none" : hours(hotH));
        table.row(
                "survived",
                outcomes.stream().map(o -> o.survived() ? "yes" : "no").toList());
        return table;
    }

    private void rows(Table table, String label, ToDoubleFunction<Times> time) {
        rows(table, label, time, FailuresScreen::hours);
    }

    /** A row with the failure and one without it; the latter only where it differs somewhere. */
    private void rows(Table table, String label, ToDoubleFunction<Times> time, DoubleFunction<String> text) {
        List<String> with = cells(o -> text.apply(time.applyAsDouble(o.times())));
        List<String> without = cells(o -> text.apply(time.applyAsDouble(o.otherwise())));
        table.row(label, with);
        if (!without.equals(with)) {
            table.row("  without it", without);
        }
    }

    private List<String> cells(Function<FailureOutcome, String> text) {
        return report.outcomes().stream().map(text).toList();
    }

    private void words(FailureOutcome o) {
        wrap(o.name() + ", " + span(o) + ": " + o.what() + ".", "  ");
        String alive = o.uses().stream().filter(Use::goesOn).map(Use::name).collect(Collectors.joining(", "));
        String shorts = o.uses().stream()
                .filter(Use::goesShort)
                .map(use -> use.name()
                        + number(" %.0f %%", 100 * use.servedShare())
                        + (use.otherwiseShare() < 0.995 ? number(" (else %.0f %%)", 100 * use.otherwiseShare()) : ""))
                .collect(Collectors.joining(", "));
        wrap("  Goes on while it lasts: " + (alive.isEmpty() ? "nothing" : alive) + ".", "    ");
        if (!shorts.isEmpty()) {
            wrap("  Gets less of what it asks for: " + shorts + ".", "    ");
        }
        wrap("  First to show: " + sign(o.sign()) + ". First to be felt: " + sign(o.alarm()) + ".", "    ");
        if (!o.survived()) {
            wrap("  Worse than without it: " + String.join(", ", o.worse()) + ".", "    ");
        }
        wrap("  " + madeGood(o), "    ");
        o.impossible()
                .forEach(impossible ->
                        wrap("  Cannot be with it: " + impossible.change() + ": " + impossible.why() + ".", "    "));
        if (!o.advice().isEmpty()) {
            wrap("  " + o.advice(), "    ");
        }
        out.println();
    }

    private String span(FailureOutcome o) {
        boolean forGood = o.untilEpochSecond()
                >= report.undisturbed().startEpochSecond()
                        + (long) report.undisturbed().steps()
                                * report.undisturbed().stepSeconds();
        return at(o.fromEpochSecond()) + (forGood ? " to the end of the trip" : " to " + at(o.untilEpochSecond()));
    }

    private static String sign(Optional<Sign> sign) {
        return sign.map(s -> s.words() + (s.afterH() == 0 ? ", at once" : ", after " + hours(s.afterH())))
                .orElse("nothing");
    }

    private static String madeGood(FailureOutcome o) {
        if (o.survived()) {
            return "Survived as it is: the trip is no worse than without it.";
        }
        if (o.tried() == 0) {
            return o.impossible().isEmpty()
                    ? "What makes it good was not looked for."
                    : "No single change could be tried with it.";
        }
        return o.additions().isEmpty()
                ? "None of the " + o.tried() + " kinds of single change that were tried makes it good."
                : "Made good by "
                        + o.additions().stream()
                                .limit(MOST_ADDITIONS)
                                .map(FailuresScreen::priced)
                                .collect(Collectors.joining("; or "))
                        + ".";
    }

    private static String priced(Addition addition) {
        return addition.change()
                + (addition.priceFrom().isEmpty()
                        ? ", which takes no money"
                        : String.format(
                                Locale.ROOT,
                                ", %,.0f %s%s (%s)",
                                addition.price(),
                                addition.currency(),
                                addition.perTrip() ? " for this trip" : "",
                                addition.priceFrom()));
    }

    private void notApplying() {
        if (!report.notApplying().isEmpty()) {
            wrap(
                    "Does not apply: "
                            + report.notApplying().stream()
                                    .map(not -> not.name() + " (" + not.why() + ")")
                                    .collect(Collectors.joining("; "))
                            + ".",
                    "  ");
            out.println();
        }
    }

    private void heat() {
        HeatAfterLoss heat = report.heat();
        wrap(
                number(
                                "When cooling stops at the worst moment, parked in the sun with windows shut (%.0f °C"
                                        + " inside, ",
                                heat.keptC())
                        + number("%.0f °C outside, ", heat.outsideC())
                        + at(heat.epochSecond()) + "), the cabin passes 32 °C " + minutes(heat.minutesTo32C())
                        + ", 35 °C "
                        + minutes(heat.minutesTo35C()) + ", 40 °C " + minutes(heat.minutesTo40C()) + ". "
                        + HeatAfterLoss.CAUTION,
                "  ");
        out.println();
    }

    private static String minutes(double minutes) {
        return Double.isNaN(minutes)
                ? "not within " + HeatAfterLoss.WATCHED_H + " hours"
                : minutes == 0 ? "at once" : number("after %.0f min", minutes);
    }

    private String at(long epochSecond) {
        ZonedDateTime at = Instant.ofEpochSecond(epochSecond).atZone(report.zone());
        return DATE.format(at);
    }

    private static String hours(double hours) {
        return Double.isNaN(hours)
                ? NEVER
                : hours == 0
                        ? "at once"
                        : hours < 1
                                ? number("%.0f min", hours * 60)
                                : hours < 10 ? number("%.1f h", hours) : number("%.0f h", hours);
    }

    private void wrap(String text, String indent) {
        Paragraph.print(out, text, indent);
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
