package ampdays.study;

import ampdays.results.DayTotals;
import ampdays.results.Limit;
import ampdays.results.Metric;
import ampdays.results.RunResult;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The answer to a question of size in plain words. */
public final class SizeText {
    private SizeText() {}

    /** A few sentences, each with a line of its own or more. */
    public static List<String> of(Sizing sizing) {
        return sizing.answer().isPresent() ? answer(sizing) : noAnswer(sizing);
    }

    private static List<String> answer(Sizing sizing) {
        Tried best = sizing.bestTried();
        List<String> text = new ArrayList<>();
        text.add("The " + (sizing.smallest() ? "smallest " : "largest ") + sizing.path() + " with which \""
                + sizing.option() + "\" meets " + goals(sizing) + ": " + best.value() + ".");
        RunResult run = best.result().orElseThrow();
        text.add("With " + best.value() + " the van " + outcome(run));
        if (sizing.path().equals(ReadyQuestion.WEATHER_OFFSET)) {
            text.add(heat(run));
        }
        text.add(sizing.notEnough()
                .map(next -> "The next value, " + next.value() + ", does not: " + shortfall(sizing, next))
                .orElseGet(() -> atTheEnd(sizing, run)));
        text.addAll(parked(sizing));
        if (!sizing.against().isEmpty()) {
            text.add("Beware: " + (sizing.smallest() ? "more" : "less")
                    + " is not always better here. Of the values that were run, these do not meet it: "
                    + String.join(", ", sizing.against()) + ".");
        }
        return text;
    }

    /** Where the range ends because no more can be, the answer lies nowhere else. */
    private static String atTheEnd(Sizing sizing, RunResult run) {
        String value = sizing.bestTried().value();
        if (sizing.smallest() && sizing.path().equals(ReadyQuestion.DRIVE_HOURS) && value.matches("0(\\.0+)?( .*)?")) {
            return "No driving is needed, but for drives past midnight where there are any.";
        }
        if (!sizing.smallest()
                && sizing.parkedForGood().isPresent()
                && sizing.path().equals(ReadyQuestion.PARKED_DAYS)
                && Integer.parseInt(value) >= run.tripDays() - 1) {
            return String.format(
                    Locale.ROOT,
                    "No more can be parked in a row on a trip of %.0f days: it drives once, if it drives at all.",
                    run.tripDays());
        }
        return "That is the " + (sizing.smallest() ? "low" : "high")
                + " end of the range, so the answer may lie beyond. Search a wider range.";
    }

    /** Days parked in a row are a rhythm; a van that stays where it is, is another question. */
    private static List<String> parked(Sizing sizing) {
        return sizing.parkedForGood()
                .map(run -> List.of(
                        "Days parked in a row are a rhythm: after each day with a drive so many without, all through"
                                + " the trip. Parked at once and for good, the van " + Verdict.fate(run) + ", "
                                + Verdict.nights(run) + "."))
                .orElse(List.of());
    }

    /** The weather of the trip in degrees, since an offset alone tells nobody how hot it is. */
    private static String heat(RunResult run) {
        return String.format(
                Locale.ROOT,
                "In that weather the hottest afternoon of the trip reaches %.0f °C, and in its warmest night the air outside does"
                        + " not fall below %.0f °C.",
                run.days().stream()
                        .mapToDouble(DayTotals::warmestOutsideC)
                        .max()
                        .orElseThrow(),
                run.days().stream()
                        .mapToDouble(DayTotals::coolestOutsideC)
                        .max()
                        .orElseThrow());
    }

    private static List<String> noAnswer(Sizing sizing) {
        Tried best = sizing.bestTried();
        String none = "No " + sizing.path() + " that was run in " + sizing.range() + " meets " + goals(sizing)
                + " with \"" + sizing.option() + "\".";
        if (best.result().isEmpty()) {
            return List.of(none, "None of its values is possible. " + best.value() + ": " + best.problem());
        }
        RunResult run = best.result().get();
        List<String> text = new ArrayList<>(List.of(
                none, "The best was " + best.value() + ": " + lacking(sizing, best) + " the van " + outcome(run)));
        if (sizing.path().equals(ReadyQuestion.WEATHER_OFFSET)) {
            text.add(heat(run));
        }
        text.addAll(parked(sizing));
        return text;
    }

    /** Places in {@code tried} of the values worth showing: the ends, the neighbours of the best, and what speaks against it. */
    public static List<Integer> shown(Sizing sizing) {
        int last = sizing.tried().size() - 1;
        return IntStream.rangeClosed(0, last)
                .filter(at -> at == 0
                        || at == last
                        || Math.abs(at - sizing.best()) <= 3
                        || sizing.against().contains(sizing.tried().get(at).value()))
                .boxed()
                .toList();
    }

    private static String goals(Sizing sizing) {
        return "\"" + String.join(" and ", sizing.goals()) + "\"";
    }

    /** What the metrics of the goals came to; whether a design holds is told by what becomes of it. */
    /** What is missing, unless what becomes of the van says it all. */
    private static String lacking(Sizing sizing, Tried best) {
        return sizing.goals().equals(List.of(Metric.HOLDS)) ? "with it" : shortfall(sizing, best) + " With it";
    }

    private static String shortfall(Sizing sizing, Tried tried) {
        return tried.result()
                .map(run -> IntStream.range(0, sizing.goals().size())
                                .mapToObj(i -> sizing.goals().get(i).equals(Metric.HOLDS)
                                        ? "it " + Verdict.fate(run)
                                        : sizing.goals().get(i).split("\\s*[<>≤≥]", 2)[0] + " is "
                                                + tried.measured().get(i))
                                .collect(Collectors.joining(", "))
                        + ".")
                .orElse(tried.problem());
    }

    private static String outcome(RunResult run) {
        List<Map.Entry<Limit, Double>> limits = run.limitHours().entrySet().stream()
                .sorted(Map.Entry.<Limit, Double>comparingByValue(Comparator.reverseOrder()))
                .limit(2)
                .toList();
        return Verdict.fate(run) + ", " + Verdict.nights(run) + "; what rules its charging: "
                + limits.stream()
                        .map(e -> String.format(
                                Locale.ROOT, "%s %.0f h", e.getKey().label(), e.getValue()))
                        .collect(Collectors.joining(", then "))
                + ".";
    }
}
