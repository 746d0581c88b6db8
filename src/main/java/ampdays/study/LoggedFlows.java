package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.sim.Measured;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** What of a log can take the place of what a plan works out. */
final class LoggedFlows {
    /** A nearly full bank takes less than the panels could give, so that their power is no longer told. */
    static final double NEARLY_FULL = 0.97;

    /** Sun within so long before and after tells what a nearly full bank hides (guess). */
    private static final int SUN_MINUTES = 720;

    private static final double LEAST_SUN_WH = 20;
    /** Noise of the meters may make the use of a minute negative; what is left of it after so long is dropped (guess). */
    private static final int CARRY_MINUTES = 60;

    private static final double RUNS_W = 20;
    private static final double STANDS_W = 5;
    /** An engine that gives nothing for so long stands; starting takes less. */
    private static final int STANDS_MINUTES = 5;

    private final LoggedTrip logged;
    private final MinuteLog promised;

    LoggedFlows(LoggedTrip logged, MinuteLog promised) {
        this.logged = logged;
        this.promised = promised;
    }

    Measured use(Measured other) {
        return other.withUse(carried(steps(logged::useW)));
    }

    /** A use below zero is taken off that of the next minutes, so that the sum stays that of the log. */
    static double[] carried(double... useW) {
        double[] carried = new double[useW.length];
        double owed = 0;
        for (int step = 0; step < useW.length; step++) {
            owed = step % CARRY_MINUTES == 0 || Double.isNaN(useW[step]) ? 0 : owed;
            double left = useW[step] + owed;
            carried[step] = left < 0 ? 0 : left;
            owed = left < 0 ? left : 0;
        }
        return carried;
    }

    Measured solar(Measured other) {
        return other.withSolar(sunW());
    }

    /**
     * What the panels could give: as logged, and where a nearly full bank hides it, the promise times what share of it came
     * while nothing hid it within half a day before and after; at least what was logged.
     */
    private double[] sunW() {
        int steps = logged.clock().steps();
        double[] cameWh = new double[steps + 1];
        double[] promisedWh = new double[steps + 1];
        for (int step = 0; step < steps; step++) {
            boolean open = !hidden(step) && !Double.isNaN(logged.solarW(step));
            cameWh[step + 1] = cameWh[step] + (open ? logged.solarW(step) / 60 : 0);
            promisedWh[step + 1] = promisedWh[step] + (open ? possibleW(step) / 60 : 0);
        }
        return steps(step -> {
            if (!hidden(step)) {
                return logged.solarW(step);
            }
            int from = Math.max(0, step - SUN_MINUTES);
            int to = Math.min(steps, step + SUN_MINUTES);
            double of = promisedWh[to] - promisedWh[from];
            return of < LEAST_SUN_WH
                    ? Double.NaN
                    : Math.max(
                            Double.isNaN(logged.solarW(step)) ? 0 : logged.solarW(step),
                            possibleW(step) * (cameWh[to] - cameWh[from]) / of);
        });
    }

    private boolean hidden(int step) {
        return logged.soc(step) >= NEARLY_FULL;
    }

    private double possibleW(int step) {
        return promised.get(Channel.SOLAR_POSSIBLE, step);
    }

    Measured engine(Measured other) {
        return other.withEngine(ran());
    }

    private double[] steps(IntToDoubleFunction of) {
        double[] values = new double[logged.clock().steps()];
        Arrays.setAll(values, of);
        return values;
    }

    boolean tellsUse() {
        return Arrays.stream(steps(logged::useW)).anyMatch(w -> !Double.isNaN(w));
    }

    boolean tellsSolar() {
        return logged.log().hasSolar() && promisedSun();
    }

    private boolean promisedSun() {
        return promised.mean(Channel.SOLAR_POSSIBLE, 0, promised.rows()) > 0;
    }

    /** Whether the log has what alternators gave. */
    boolean tellsEngine() {
        return logged.log().hasCharger() || logged.log().hasSecond();
    }

    private double[] ran() {
        double[] ran = new double[logged.clock().steps()];
        Arrays.fill(ran, Double.NaN);
        int zeroFrom = 0;
        for (int step = 0; step < ran.length; step++) {
            double watts = alternatorsW(step);
            if (watts > RUNS_W) {
                ran[step] = 1;
            }
            boolean zero = watts < STANDS_W && !(logged.soc(step) >= NEARLY_FULL);
            zeroFrom = zero ? zeroFrom : step + 1;
            if (zero && step + 1 - zeroFrom >= STANDS_MINUTES) {
                Arrays.fill(ran, zeroFrom, step + 1, 0);
            }
        }
        return ran;
    }

    private double alternatorsW(int step) {
        double charger = logged.log().hasCharger() ? logged.chargerW(step) : 0;
        double second = logged.log().hasSecond() ? logged.secondW(step) : 0;
        return charger + second;
    }
}
