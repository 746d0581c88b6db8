package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.sim.Measured;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** What of a log can take the place of what a plan works out. */
final class LoggedFlows {
    /** A nearly full bank takes less than the panels could give, so that their power is no longer told. */
    private static final double NEARLY_FULL = 0.97;

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
        return other.withUse(steps(logged::useW));
    }

    Measured solar(Measured other) {
        return other.withSolar(steps(step -> logged.soc(step) >= NEARLY_FULL ? Double.NaN : logged.solarW(step)));
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
