package ampdays.study;

import ampdays.log.MeteredLog;
import ampdays.log.Signal;
import ampdays.scenario.Design;
import ampdays.sim.RunPlan;
import ampdays.sim.TripClock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A log laid beside a simulated trip, step by step: powers at the bus in W, NaN where the log does not tell them.
 *
 * <p>What was used is the sources less what went into the bank, so cables and converters behind the bus count as use; where a
 * source of the design is not logged, the logged use counts, if there is one.
 */
public final class LoggedTrip {
    private final TripClock clock;
    private final MeteredLog log;
    private final long shiftMinutes;
    private final double[] bankW;
    private final double[] solarW;
    private final double[] chargerW;
    private final double[] secondW;
    private final double[] shoreW;
    private final double[] useW;
    private final double[] soc;
    private final List<String> missing = new ArrayList<>();

    private LoggedTrip(MeteredLog log, RunPlan plan, LocalDate from) {
        this.log = log;
        this.clock = plan.clock();
        long logged = from.atStartOfDay(clock.zone()).toEpochSecond();
        this.shiftMinutes = Math.floorDiv(logged - log.epochSecond(0), 60);
        Design design = plan.variant().design();
        int steps = clock.steps();
        bankW = new double[steps];
        solarW = source(design.solar().isPresent(), log.hasSolar(), "solar power");
        chargerW = source(design.factory().isPresent(), log.hasCharger(), "DC-DC charger power or current");
        secondW = source(design.second().isPresent(), log.hasSecond(), "second alternator power or current");
        shoreW = source(design.shore().isPresent(), log.has(Signal.SHORE_POWER), "shore charger power");
        useW = new double[steps];
        soc = new double[steps];
        if (!log.hasBank()) {
            missing.add("bank voltage and current");
        }
        for (int step = 0; step < steps; step++) {
            read(step);
        }
    }

    /**
     * Lays them side by side.
     *
     * @param from day of the log beside which the trip's first day is laid
     */
    public static LoggedTrip of(MeteredLog log, RunPlan plan, LocalDate from) {
        if (plan.clock().stepSeconds() != 60) {
            throw new IllegalArgumentException("a log is laid beside a trip in steps of one minute");
        }
        return new LoggedTrip(log, plan, from);
    }

    /** NaN for a source that the log lacks, 0 for one that the design has not. */
    private double[] source(boolean inDesign, boolean inLog, String name) {
        double[] watts = new double[clock.steps()];
        if (inDesign && !inLog) {
            missing.add(name);
            Arrays.fill(watts, Double.NaN);
        }
        return watts;
    }

    private void read(int step) {
        int minute = minute(step);
        bankW[step] = log.bankW(minute);
        solarW[step] = log.hasSolar() ? log.solarW(minute) : solarW[step];
        chargerW[step] = log.hasCharger() ? log.chargerW(minute) : chargerW[step];
        secondW[step] = log.hasSecond() ? log.secondW(minute) : secondW[step];
        shoreW[step] = log.has(Signal.SHORE_POWER) ? log.value(Signal.SHORE_POWER, minute) : shoreW[step];
        soc[step] = log.value(Signal.STATE_OF_CHARGE, minute);
        double balance = solarW[step] + chargerW[step] + secondW[step] + shoreW[step] - bankW[step];
        useW[step] = Double.isNaN(balance) ? log.value(Signal.USE_POWER, minute) : balance;
    }

    /** The minute of the log beside a step; may lie outside the log. */
    int minute(int step) {
        return (int) (shiftMinutes + step);
    }

    TripClock clock() {
        return clock;
    }

    MeteredLog log() {
        return log;
    }

    /** What the log lacks to close the balance of the bus. */
    public List<String> missing() {
        return List.copyOf(missing);
    }

    double bankW(int step) {
        return bankW[step];
    }

    double solarW(int step) {
        return solarW[step];
    }

    double chargerW(int step) {
        return chargerW[step];
    }

    double secondW(int step) {
        return secondW[step];
    }

    double shoreW(int step) {
        return shoreW[step];
    }

    double useW(int step) {
        return useW[step];
    }

    /** State of charge as the meter had it, 0 to 1. */
    double soc(int step) {
        return soc[step];
    }

    /** Voltage of the bank, V. */
    double volts(int step) {
        return value(Signal.BANK_VOLTAGE, step);
    }

    double value(Signal signal, int step) {
        return log.value(signal, minute(step));
    }
}
