package ampdays.study;

import ampdays.results.Metric;
import ampdays.results.RunResult;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a design shall reach: a metric on one side of a bound, which is an amount or another metric. Test: {@code GoalTest}.
 *
 * @param text as written
 * @param amount the bound in the unit of the metric; not a number where it is another metric
 */
public record Goal(
        String text, Metric metric, boolean atLeast, boolean orEqual, double amount, Optional<Metric> other) {
    private static final Pattern COMPARISON = Pattern.compile("(.*?)\\s*(>=|<=|≥|≤|>|<|=+)\\s*(.*)");
    /** Less than one step of 60 s in a year, and than one digit of a lowest charge. */
    private static final double LOWEST_CHARGE_COUNTS = 1e-7;

    private static final double TREND_COUNTS = 1e-12;
    private static final String EXAMPLE = " Write a goal like: daysToEmpty >= 7, lowestSoc >= 30 %, or holds.";

    /**
     * Reads goals that are joined by {@code and}.
     *
     * @throws IllegalArgumentException with a sentence for the user
     */
    public static List<Goal> read(String text, List<Metric> metrics) {
        List<Goal> goals = new ArrayList<>();
        Iterator<String> parts =
                Arrays.asList(text.strip().split("\\s+and\\s+", -1)).iterator();
        while (parts.hasNext()) {
            String part = parts.next();
            while (!isWhole(part) && parts.hasNext()) {
                part += " and " + parts.next();
            }
            goals.add(one(part.strip(), metrics));
        }
        return List.copyOf(goals);
    }

    /** Names of loads may have an "and" of their own, so a part without a comparison is only the beginning of one. */
    private static boolean isWhole(String part) {
        return part.strip().equals(Metric.HOLDS) || COMPARISON.matcher(part).matches();
    }

    private static Goal one(String text, List<Metric> metrics) {
        if (text.equals(Metric.HOLDS)) {
            return new Goal(text, Metric.find(text, metrics), true, true, 1, Optional.empty());
        }
        Matcher matcher = COMPARISON.matcher(text);
        if (text.isEmpty() || !matcher.matches()) {
            throw new IllegalArgumentException(
                    (text.isEmpty() ? "The goal is empty." : "\"" + text + "\" compares nothing.") + EXAMPLE);
        }
        String sign = matcher.group(2);
        if (matcher.group(1).isEmpty() || matcher.group(3).isEmpty()) {
            throw new IllegalArgumentException("\"" + text + "\" lacks what stands "
                    + (matcher.group(1).isEmpty() ? "before" : "behind") + " its " + sign + "." + EXAMPLE);
        }
        if (sign.startsWith("=")) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" asks for one exact value, which a search does not meet. Write >= or <=.");
        }
        Metric metric = Metric.find(matcher.group(1), metrics);
        if (metric.name().equals(Metric.HOLDS)) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" compares yes or no with an amount. Write the goal holds alone.");
        }
        return withBound(
                text,
                metric,
                sign.equals(">=") || sign.equals("≥") || sign.equals(">"),
                !sign.equals(">") && !sign.equals("<"),
                matcher.group(3),
                metrics);
    }

    private static Goal withBound(
            String text, Metric metric, boolean atLeast, boolean orEqual, String bound, List<Metric> metrics) {
        Optional<Metric> other =
                metrics.stream().filter(m -> m.name().equals(bound)).findFirst();
        if (other.isPresent()) {
            if (other.get().dimension() != metric.dimension()
                    || !other.get().unit().equals(metric.unit())) {
                throw new IllegalArgumentException(metric.name() + " is "
                        + metric.dimension().title() + in(metric)
                        + ", but " + bound + " is " + other.get().dimension().title() + in(other.get())
                        + ". Compare like with like.");
            }
            return new Goal(text, metric, atLeast, orEqual, Double.NaN, other);
        }
        try {
            return new Goal(text, metric, atLeast, orEqual, metric.amount(bound), Optional.empty());
        } catch (QuantityException e) {
            throw new IllegalArgumentException(metric.name() + " " + e.getMessage(), e);
        }
    }

    /**
     * Refuses a bound that no trip of this length can show.
     *
     * @throws IllegalArgumentException with a sentence for the user
     */
    public void requireWithin(int tripDays) {
        if (metric.name().equals(Metric.DAYS_TO_EMPTY) && amount > tripDays) {
            throw new IllegalArgumentException("\"" + text + "\" cannot be seen on a trip of " + tripDays
                    + " days. Write fewer, or a longer trip: --set \"trip.days=" + (int) Math.ceil(amount) + "\".");
        }
    }

    private static String in(Metric metric) {
        return metric.unit().isEmpty() ? "" : " in " + metric.unit();
    }

    public boolean isReached(RunResult run) {
        double over = over(run);
        return orEqual ? over >= 0 : over > 0;
    }

    /**
     * How far a run is beyond the bound on the right side, in parts of the bound; never above one, to compare runs by. Of runs
     * that do not hold, how near they come to it.
     */
    double margin(RunResult run) {
        if (metric.name().equals(Metric.HOLDS)) {
            return run.holds() ? 0 : -missingToHold(run);
        }
        double over = over(run);
        double size = Math.abs(bound(run));
        return Double.isNaN(over) ? Double.NEGATIVE_INFINITY : Math.min(1, over / (size > 0 ? size : 1));
    }

    /**
     * What a run lacks to hold, above 0: the part of the trip that the bank is short of, between equals its lowest charge, and
     * between equals again by how much of it a day falls. The parts are so far apart in size that none outweighs the one before.
     */
    private static double missingToHold(RunResult run) {
        double lasted = Double.isNaN(run.daysToEmpty()) ? 1 : Math.min(1, run.daysToEmpty() / run.tripDays());
        double fall = Double.isNaN(run.trendPerDay()) ? 1 : Math.max(0, Math.min(1, -run.trendPerDay()));
        return 1 - lasted + LOWEST_CHARGE_COUNTS * (1 - run.lowestSoc()) + TREND_COUNTS * (1 + fall);
    }

    /** A bank that is not empty within the trip has shown no more than that it lasts that long. */
    private double over(RunResult run) {
        double bound = bound(run);
        double value = metric.value().applyAsDouble(run);
        boolean unseen = atLeast && metric.name().equals(Metric.DAYS_TO_EMPTY) && bound > run.tripDays();
        double over = (unseen ? Math.min(value, run.tripDays()) : value) - bound;
        return atLeast ? over : -over;
    }

    private double bound(RunResult run) {
        return other.map(metric -> metric.value().applyAsDouble(run)).orElse(amount);
    }

    /** What the metric of this goal came to, with its unit. */
    String measured(RunResult run) {
        return metric.show(metric.value().applyAsDouble(run));
    }
}
