package ampdays.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How far a log can be trusted: what it covers, whether power summed over time agrees with its counters, and charge with its
 * state of charge.
 *
 * @param coverage of each signal, in the order of the signals
 * @param checks of one part of the log against another
 * @param capacityAh size of the bank with which the log's charge and state of charge agree; NaN when it cannot be told
 * @param signDoubt what speaks against the direction of the bank's current
 */
public record Quality(List<Coverage> coverage, List<Check> checks, double capacityAh, Optional<String> signDoubt) {
    /** Two ways to the same sum agree if they differ by less than this (common practice, no source). */
    private static final double AGREE = 0.05;

    /** Share of the minutes between two entries of a counter in which the flow must be known (guess). */
    private static final double TOLD = 0.9;

    private static final int HOUR = 60;
    private static final double LEAST_AH = 1;
    private static final double LEAST_WH = 10;
    private static final double LEAST_SOC = 0.01;
    private static final double NEAR_FULL = 0.97;
    private static final double MOST_HOURLY_SOC = 0.9;
    private static final int LEAST_HOURS = 6;

    public Quality {
        coverage = List.copyOf(coverage);
        checks = List.copyOf(checks);
    }

    /** What share of the log's time has a signal, 0 to 1. */
    public record Coverage(Signal signal, double share) {}

    /**
     * The same sum by two ways, over the minutes that have both.
     *
     * @param what is summed
     * @param summed from powers or currents, in Wh or Ah
     * @param counted by the counter
     * @param unit Wh or Ah
     */
    public record Check(String what, double summed, double counted, String unit) {
        /** Counted less summed, as a share of the larger. */
        public double apart() {
            return (counted - summed) / Math.max(Math.abs(summed), Math.abs(counted));
        }

        public boolean agrees() {
            return Math.abs(apart()) < AGREE;
        }
    }

    public static Quality of(MeteredLog log) {
        List<Coverage> coverage = log.signals().stream()
                .map(signal -> new Coverage(signal, log.coverage(signal)))
                .toList();
        List<Check> checks = new ArrayList<>();
        check(log, Signal.SOLAR_ENERGY, "solar energy", m -> log.value(Signal.SOLAR_POWER, m))
                .ifPresent(checks::add);
        check(log, Signal.ENERGY_IN, "energy into the bank", m -> positive(log.bankW(m)))
                .ifPresent(checks::add);
        check(log, Signal.ENERGY_OUT, "energy out of the bank", m -> positive(-log.bankW(m)))
                .ifPresent(checks::add);
        check(log, Signal.CHARGE_IN, "charge into the bank", m -> positive(log.value(Signal.BANK_CURRENT, m)))
                .ifPresent(checks::add);
        check(log, Signal.CHARGE_OUT, "charge out of the bank", m -> positive(-log.value(Signal.BANK_CURRENT, m)))
                .ifPresent(checks::add);
        double[] slope = socAgainstCharge(log);
        return new Quality(coverage, checks, slope[0], signDoubt(log, slope[1]));
    }

    private interface ByMinute {
        double at(int minute);
    }

    private static double positive(double value) {
        return value < 0 ? 0 : value;
    }

    /** Sums from one entry of the counter to the next, where the flow between them is told but for a little. */
    private static Optional<Check> check(MeteredLog log, Signal counter, String what, ByMinute flow) {
        if (!log.has(counter)) {
            return Optional.empty();
        }
        double summed = 0;
        double counted = 0;
        double since = 0;
        int told = 0;
        int entry = -1;
        for (int m = 0; m < log.minutes(); m++) {
            double growth = log.value(counter, m);
            if (!Double.isNaN(growth)) {
                if (entry >= 0 && told >= TOLD * (m - entry)) {
                    counted += growth;
                    summed += since / told * (m - entry);
                }
                entry = m;
                since = 0;
                told = 0;
            }
            double power = flow.at(m);
            since += Double.isNaN(power) ? 0 : power / 60;
            told += Double.isNaN(power) ? 0 : 1;
        }
        boolean ah = counter.dimension().symbols().get(0).equals("Ah");
        boolean enough = Math.max(summed, counted) > (ah ? LEAST_AH : LEAST_WH);
        return enough ? Optional.of(new Check(what, summed, counted, ah ? "Ah" : "Wh")) : Optional.empty();
    }

    /**
     * Size of the bank by hours in which the state of charge changed and nothing jumped, and the correlation of the two. The
     * size is that of the line through zero that makes both errors equally large: total charge over total change of state,
     * each with the sign of the charge.
     */
    private static double[] socAgainstCharge(MeteredLog log) {
        double ah = 0;
        double soc = 0;
        double product = 0;
        double ahSquare = 0;
        double socSquare = 0;
        int hours = 0;
        for (int from = 0; from + HOUR < log.minutes(); from += HOUR) {
            double change = log.value(Signal.STATE_OF_CHARGE, from + HOUR) - log.value(Signal.STATE_OF_CHARGE, from);
            boolean full = log.value(Signal.STATE_OF_CHARGE, from + HOUR) > NEAR_FULL
                    || log.value(Signal.STATE_OF_CHARGE, from) > NEAR_FULL;
            double charge = 0;
            for (int m = from + 1; m <= from + HOUR; m++) {
                charge += log.value(Signal.BANK_CURRENT, m) / 60;
            }
            if (Double.isNaN(change) || Double.isNaN(charge) || full || Math.abs(change) > MOST_HOURLY_SOC) {
                continue;
            }
            hours++;
            ah += Math.abs(charge);
            soc += change * Math.signum(charge);
            product += charge * change;
            ahSquare += charge * charge;
            socSquare += change * change;
        }
        boolean enough = hours >= LEAST_HOURS && Math.abs(soc) > 10 * LEAST_SOC && ah > LEAST_AH;
        double correlation = product / Math.sqrt(ahSquare * socSquare);
        return new double[] {
            enough && correlation > 0.8 ? ah / Math.abs(soc) : Double.NaN, enough ? correlation : Double.NaN
        };
    }

    private static Optional<String> signDoubt(MeteredLog log, double correlation) {
        if (correlation < -0.5) {
            return Optional.of(
                    "The state of charge falls while current, as the map has it, flows into the bank. Exchange"
                            + " charge and discharge after plus: in the map.");
        }
        double up = 0;
        double all = 0;
        for (int m = 1; m < log.minutes(); m++) {
            double amps = log.value(Signal.BANK_CURRENT, m) - log.value(Signal.BANK_CURRENT, m - 1);
            double volts = log.value(Signal.BANK_VOLTAGE, m) - log.value(Signal.BANK_VOLTAGE, m - 1);
            if (Math.abs(amps) > 2 && Math.abs(volts) > 0) {
                up += amps * volts > 0 ? 1 : 0;
                all++;
            }
        }
        return all >= 20 && up < 0.2 * all
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "In %.0f of %.0f steps of the current the voltage went the other way, which a battery does not."
                                + " Exchange charge and discharge after plus: in the map.",
                        all - up,
                        all))
                : Optional.empty();
    }
}
