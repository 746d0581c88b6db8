package ampdays.study;

import ampdays.results.Fate;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioFile;
import ampdays.study.Comparison.Option;
import ampdays.units.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a comparison comes to, in plain words. */
public final class Verdict {
    private static final Comparator<RunResult> LASTING_LONGEST =
            Comparator.comparingDouble(Verdict::lasting).reversed();
    private static final String NO_LONGER = " It no longer holds with ";

    private Verdict() {}

    /** Of those that hold the one that serves the sleepers best; when none holds, the one that comes nearest. */
    public static RunResult best(List<RunResult> options) {
        return options.stream()
                .filter(RunResult::holds)
                .max(Comparator.comparingInt(RunResult::comfortableNights).thenComparingDouble(RunResult::lowestSoc))
                .orElseGet(() -> options.stream().min(LASTING_LONGEST).orElseThrow());
    }

    /** A few sentences: the base design, which options hold, which do not, which serves the sleepers best. */
    public static String of(Comparison comparison) {
        List<RunResult> results =
                comparison.options().stream().map(Option::result).toList();
        RunResult base = results.get(0);
        StringBuilder text = new StringBuilder(
                opening(base) + ", the van " + fate(base) + ", " + nights(base) + "." + balance(base));
        List<RunResult> others = results.subList(1, results.size());
        if (others.isEmpty()) {
            return text.toString();
        }
        List<RunResult> holding = others.stream().filter(RunResult::holds).toList();
        List<RunResult> failing =
                others.stream().filter(r -> !r.holds()).sorted(LASTING_LONGEST).toList();
        if (base.holds() && holding.stream().noneMatch(r -> r.comfortableNights() > base.comfortableNights())) {
            return text.append(unneeded(holding, failing)).toString();
        }
        if (holding.isEmpty()) {
            text.append(
                            failing.stream().anyMatch(Verdict::isUnknown)
                                    ? " No option is sure to hold; "
                                    : " No option holds; ")
                    .append(quoted(failing.get(0)))
                    .append(" comes nearest: it ")
                    .append(fate(failing.get(0)))
                    .append(", ")
                    .append(nights(failing.get(0)))
                    .append('.');
            failing = failing.subList(1, failing.size());
        } else {
            RunResult best = best(others);
            boolean only = holding.size() == 1;
            text.append(only && !base.holds() && results.stream().noneMatch(Verdict::isUnknown) ? " Only " : " ")
                    .append(listed(holding))
                    .append(only ? " holds" : " hold")
                    .append(base.holds() ? " too" : "");
            if (holding.size() > 1) {
                text.append("; ").append(quoted(best)).append(" does it best");
            }
            text.append(", ").append(nights(best)).append('.');
        }
        return text.append(rest(base.holds() ? NO_LONGER : " Not enough alone: ", failing))
                .toString();
    }

    /** What to say of changes on a design that holds and sleeps as well without them. */
    private static String unneeded(List<RunResult> holding, List<RunResult> failing) {
        if (holding.isEmpty()) {
            return failing.stream().anyMatch(Verdict::isUnknown)
                    ? rest(NO_LONGER, failing)
                    : " None of the changes leaves it so: " + fates(failing) + ".";
        }
        String alike = holding.size() == 1
                ? " holds too and adds no comfortable night."
                : " hold too and add no comfortable night.";
        return " None of the changes is needed: " + listed(holding) + alike + rest(NO_LONGER, failing);
    }

    /** Those that do not hold, and those of which the trip is too short to tell. */
    private static String rest(String failed, List<RunResult> options) {
        List<RunResult> failing = options.stream().filter(r -> !isUnknown(r)).toList();
        List<RunResult> unknown = options.stream().filter(Verdict::isUnknown).toList();
        return (failing.isEmpty() ? "" : failed + fates(failing) + ".")
                + (unknown.isEmpty() ? "" : " Not empty, on a trip too short to tell more: " + listed(unknown) + ".");
    }

    private static boolean isUnknown(RunResult r) {
        return r.fate() == Fate.UNKNOWN;
    }

    private static String listed(List<RunResult> results) {
        return Wording.listed(results.stream().map(Verdict::quoted).toList());
    }

    private static String fates(List<RunResult> results) {
        return results.stream()
                .map(r -> quoted(r) + " (" + fate(r).replaceFirst("^is ", "") + ")")
                .collect(Collectors.joining(", "));
    }

    /** Why a design does not hold, in a sentence: what a day asks, most of it for what, and what the sources bring. */
    private static String balance(RunResult r) {
        Map<String, Double> askedWh = new TreeMap<>(r.servedWhByUse());
        r.unservedWhByUse().forEach((use, wh) -> askedWh.merge(use, wh, Double::sum));
        Optional<Map.Entry<String, Double>> most = askedWh.entrySet().stream().max(Map.Entry.comparingByValue());
        if (r.holds() || most.isEmpty()) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                " A day asks for %.1f kWh, %.1f of them for %s; its sources bring %.1f, before losses.",
                (r.energy().servedWh() + r.energy().unservedWh()) / r.tripDays() / 1000,
                most.get().getValue() / r.tripDays() / 1000,
                most.get().getKey(),
                r.energy().sourcesWh() / r.tripDays() / 1000);
    }

    private static String opening(RunResult first) {
        return first.option().equals(ScenarioFile.BASE_NAME) ? "As it is" : "With " + quoted(first);
    }

    /** What becomes of the bank: "runs empty after 3.4 days". */
    public static String fate(RunResult r) {
        if (r.holds()) {
            return "holds";
        }
        if (!Double.isNaN(r.daysToEmpty())) {
            return "is empty after " + twoDigits(r.daysToEmpty()) + " days";
        }
        String within = "is not empty within " + twoDigits(r.tripDays()) + " days";
        return r.fate() == Fate.FALLS
                ? within + ", but falls " + twoDigits(-100 * r.trendPerDay()) + " % a day"
                : within;
    }

    static String nights(RunResult r) {
        return r.nights() == 0
                ? "with no whole night in the trip"
                : "with " + r.comfortableNights()
                        + (r.comfortableNights() == 1 ? " comfortable night" : " comfortable nights") + " of "
                        + r.nights();
    }

    private static double lasting(RunResult r) {
        return Double.isNaN(r.daysToEmpty()) ? r.tripDays() + 1 + r.trendPerDay() : r.daysToEmpty();
    }

    private static String quoted(RunResult r) {
        return "\"" + r.option() + "\"";
    }

    /** A number with two significant digits, as far as they stand before the point or one after it. */
    public static String twoDigits(double value) {
        double size = Math.abs(value);
        return size >= 10
                ? String.format(Locale.ROOT, "%.0f", value)
                : size >= 1 ? String.format(Locale.ROOT, "%.1f", value) : String.format(Locale.ROOT, "%.2f", value);
    }
}
