package ampdays.study;

import ampdays.log.LogBuilder;
import ampdays.log.LogMap;
import ampdays.log.LogMap.Column;
import ampdays.log.LogMap.Time;
import ampdays.log.MeteredLog;
import ampdays.log.Signal;
import ampdays.log.TimeForm;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** A log as a meter would have written it in a simulated van: a row a minute, with noise and rounding. */
final class SyntheticLog {
    private static final List<Signal> SIGNALS = List.of(
            Signal.BANK_VOLTAGE,
            Signal.BANK_CURRENT,
            Signal.STATE_OF_CHARGE,
            Signal.SOLAR_POWER,
            Signal.CHARGER_CURRENT,
            Signal.SECOND_CURRENT,
            Signal.COOLING_POWER,
            Signal.REFRIGERATOR_POWER,
            Signal.CABIN_TEMPERATURE);
    /** A shunt of class 0.5 shows up to half a percent too much or too little, always the same. */
    private static final double CLASS = 0.005;

    private final SplittableRandom random;

    private SyntheticLog(long seed) {
        random = new SplittableRandom(seed);
    }

    /**
     * Noise of 10 mV, 0.3 A or 1 %, 2 W or 1 %, 0.2 K, steps of 10 mV, 0.1 A, 0.1 %, 1 W, 0.1 K, and of each meter of a
     * current or power an error of its scale, drawn once, within its class.
     */
    static MeteredLog of(RunPlan truth, long seed) {
        return new SyntheticLog(seed).log(truth, Set.of());
    }

    /** The same of a van that lacks some meters. */
    static MeteredLog without(Set<Signal> lacking, RunPlan truth, long seed) {
        return new SyntheticLog(seed).log(truth, lacking);
    }

    private MeteredLog log(RunPlan truth, Set<Signal> lacking) {
        List<Column> columns = SIGNALS.stream()
                .filter(s -> !lacking.contains(s))
                .map(s -> new Column(s, s.label(), "", 1, 0, "", true, null))
                .toList();
        LogMap map = new LogMap(new Time("t", "", TimeForm.EPOCH_SECONDS, ZoneOffset.UTC, false), "", true, columns);
        LogBuilder builder = new LogBuilder(map, Map.of("", 60.0));
        int steps = truth.clock().steps();
        MinuteLog run = Simulator.record(truth, 0, steps);
        double offV = random.nextDouble(-0.02, 0.02);
        double[] scale = random.doubles(6, 1 - CLASS, 1 + CLASS).toArray();
        for (int step = 0; step < steps; step++) {
            double volts = run.get(Channel.BUS_VOLTAGE, step);
            double[] shown = {
                read(volts + offV, 0.01, 0, 0.01),
                read(scale[0] * run.get(Channel.BANK_CURRENT, step), 0.3, 0.01, 0.1),
                Math.min(1, read(run.get(Channel.STATE_OF_CHARGE, step) / 100, 0.001, 0, 0.001)),
                read(scale[1] * run.get(Channel.SOLAR, step), 2, 0.01, 1),
                read(scale[2] * run.get(Channel.FACTORY_ALTERNATOR, step) / volts, 0.3, 0.01, 0.1),
                read(scale[3] * run.get(Channel.SECOND_ALTERNATOR, step) / volts, 0.3, 0.01, 0.1),
                read(scale[4] * run.get(Channel.COOLING, step), 2, 0.01, 1),
                read(scale[5] * run.get(Channel.REFRIGERATOR, step), 1, 0.01, 1),
                read(run.get(Channel.CABIN_AIR, step), 0.2, 0, 0.1)
            };
            builder.row(
                    "",
                    step + 2,
                    Long.toString(truth.clock().epochSecond(step)),
                    IntStream.range(0, shown.length)
                            .filter(i -> !lacking.contains(SIGNALS.get(i)))
                            .mapToDouble(i -> shown[i])
                            .toArray());
        }
        return builder.log("log.csv");
    }

    private double read(double value, double noise, double share, double digit) {
        double gaussian =
                Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
        double off = value == 0 ? 0 : gaussian * Math.max(noise, share * Math.abs(value));
        return Math.rint((value + off) / digit) * digit;
    }
}
