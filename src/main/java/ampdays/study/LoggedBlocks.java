package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What of a log is held against a run: alternator currents and bank voltage as means of ten minutes, and the change of the
 * state of charge over each hour, in columns.
 */
final class LoggedBlocks {
    static final int SECOND = 0;
    static final int CHARGER = 1;
    static final int VOLTS = 2;
    static final int SOC = 3;
    /** What a run must record to be held against the log. */
    static final Set<Channel> CHANNELS = EnumSet.of(
            Channel.SECOND_ALTERNATOR, Channel.FACTORY_ALTERNATOR, Channel.BUS_VOLTAGE, Channel.STATE_OF_CHARGE);

    private static final int BLOCK = 10;
    private static final int BLOCKS_AN_HOUR = 6;
    /** What a column of observations is first thought to be off by: A, A, V, share (guess). */
    private static final double[] FIRST_U = {0.5, 0.5, 0.02, 0.005};

    /** An alternator that stands tells nothing of the meter, A. */
    private static final double[] LEAST_TELLING = {1, 1, 0, 0};

    private static final double LEAST_U = 1e-6;

    /** A run that misses a column by so many times what it is first thought to be off by does not follow it (guess). */
    private static final double ASTRAY = 6;

    /** What the columns are, and of each a number and unit for an observation of 1. */
    private static final List<String> NAMES =
            List.of("the second alternator's current", "the charger's current", "the bank's voltage", "the charge");

    private static final List<Dimension> SHOWN_IN =
            List.of(Dimension.CURRENT, Dimension.CURRENT, Dimension.VOLTAGE, Dimension.SHARE);

    private final LoggedTrip logged;
    private final List<Integer> blockOf = new ArrayList<>();
    private final List<Integer> columnOf = new ArrayList<>();
    private final double[] observed;

    LoggedBlocks(LoggedTrip logged) {
        this.logged = logged;
        this.observed = observe();
    }

    boolean tells(int column) {
        return columnOf.contains(column);
    }

    double[] observed() {
        return observed.clone();
    }

    /** What each observation is first thought to be off by. */
    double[] firstU() {
        return columnOf.stream().mapToDouble(column -> FIRST_U[column]).toArray();
    }

    /** The hour of each observation. */
    int[] hours() {
        return blockOf.stream().mapToInt(block -> block / BLOCKS_AN_HOUR).toArray();
    }

    private double[] observe() {
        List<Double> all = new ArrayList<>();
        List<IntToDoubleFunction> columns = List.of(
                step -> logged.log().hasSecond() ? logged.secondW(step) / logged.volts(step) : Double.NaN,
                step -> logged.log().hasCharger() ? logged.chargerW(step) / logged.volts(step) : Double.NaN,
                logged::volts,
                logged::soc);
        for (int block = 0; (block + 1) * BLOCK <= logged.clock().steps(); block++) {
            for (int column = 0; column < columns.size(); column++) {
                double value = observation(block, column, columns.get(column));
                if (!Double.isNaN(value) && !atAnEnd(block, column)) {
                    all.add(value);
                    blockOf.add(block);
                    columnOf.add(column);
                }
            }
        }
        return offsetAside(all.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Voltages less their mean, since a voltmeter or a table of resting voltages may be off by a constant. */
    private double[] offsetAside(double... all) {
        double mean = IntStream.range(0, all.length)
                .filter(i -> columnOf.get(i) == VOLTS)
                .mapToDouble(i -> all[i])
                .average()
                .orElse(0);
        for (int i = 0; i < all.length; i++) {
            all[i] -= columnOf.get(i) == VOLTS ? mean : 0;
        }
        return all;
    }

    /**
     * A nearly full bank takes what it likes and an empty one gives what it can: such minutes are not held against a run,
     * nor is a change of charge that begins or ends in them.
     */
    private boolean atAnEnd(int block, int column) {
        int first = column == SOC ? block - BLOCKS_AN_HOUR : block;
        for (int step = first * BLOCK; step < (block + 1) * BLOCK; step++) {
            double soc = logged.soc(step);
            if (soc >= LoggedFlows.NEARLY_FULL || soc <= logged.clock().reserveShare()) {
                return true;
            }
        }
        return false;
    }

    /** A mean; of the state of charge, whose error adds up, the change since the hour before, once an hour. */
    private static double observation(int block, int column, IntToDoubleFunction of) {
        if (column != SOC) {
            return mean(block, of);
        }
        return block < BLOCKS_AN_HOUR || block % BLOCKS_AN_HOUR != 0
                ? Double.NaN
                : mean(block, of) - mean(block - BLOCKS_AN_HOUR, of);
    }

    private static double mean(int block, IntToDoubleFunction of) {
        double sum = 0;
        for (int step = block * BLOCK; step < (block + 1) * BLOCK; step++) {
            sum += of.applyAsDouble(step);
        }
        return sum / BLOCK;
    }

    /** What a run lets expect at every observation. */
    double[] of(MinuteLog run) {
        List<IntToDoubleFunction> columns = List.of(
                step -> run.get(Channel.SECOND_ALTERNATOR, step) / run.get(Channel.BUS_VOLTAGE, step),
                step -> run.get(Channel.FACTORY_ALTERNATOR, step) / run.get(Channel.BUS_VOLTAGE, step),
                step -> run.get(Channel.BUS_VOLTAGE, step),
                step -> run.get(Channel.STATE_OF_CHARGE, step) / 100);
        double[] expected = new double[observed.length];
        for (int i = 0; i < expected.length; i++) {
            expected[i] = observation(blockOf.get(i), columnOf.get(i), columns.get(columnOf.get(i)));
        }
        return offsetAside(expected);
    }

    /**
     * Sets the uncertainty of each column to the scatter that the fit left, and the larger the more neighbours resemble each
     * other, since they then tell less: a variance grows by (1 + r)/(1 − r) for a correlation r of each block with the next.
     */
    void scale(Fit.Result fit, double... u) {
        for (int column = 0; column < FIRST_U.length; column++) {
            scale(fit, column, u);
        }
    }

    /** What the best run misses by far, in words; empty when it follows the log. */
    Optional<String> astray(Fit.Result fit, double... u) {
        for (int column = 0; column < FIRST_U.length; column++) {
            int of = column;
            double scatter = Math.sqrt(IntStream.range(0, observed.length)
                    .filter(i -> columnOf.get(i) == of && Math.abs(observed[i]) > LEAST_TELLING[of])
                    .mapToDouble(i -> fit.residual(i) * u[i] / FIRST_U[of])
                    .map(residual -> residual * residual)
                    .average()
                    .orElse(0));
            if (scatter > ASTRAY) {
                return Optional.of(
                        NAMES.get(column) + " by " + SHOWN_IN.get(column).show(scatter * FIRST_U[column]));
            }
        }
        return Optional.empty();
    }

    private void scale(Fit.Result fit, int column, double... u) {
        double square = 0;
        double product = 0;
        int count = 0;
        double before = 0;
        for (int i = 0; i < u.length; i++) {
            if (columnOf.get(i) == column && Math.abs(observed[i]) > LEAST_TELLING[column]) {
                double residual = fit.residual(i);
                square += residual * residual;
                product += residual * before;
                before = residual;
                count++;
            }
        }
        if (count < 2 || square == 0) {
            return;
        }
        double scatter = Math.sqrt(square / count);
        double r = Math.min(0.95, Math.max(0, product / square));
        double times = scatter * Math.sqrt((1 + r) / (1 - r));
        for (int i = 0; i < u.length; i++) {
            u[i] = columnOf.get(i) == column ? Math.max(LEAST_U, u[i] * times) : u[i];
        }
    }
}
