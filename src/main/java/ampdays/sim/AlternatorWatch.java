package ampdays.sim;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.EngineState;
import ampdays.alternator.OutputCurve;
import ampdays.results.AlternatorWork;
import ampdays.results.AlternatorWork.Pace;
import ampdays.results.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** Sorts the steps of a trip by the engine's state and by the current that an alternator gave. */
final class AlternatorWatch {
    private static final int BINS = 60;
    private static final double LEAST_TOP_RPM = 8000;
    private static final double RPM_STEP = 50;

    private final String name;
    private final AlternatorSpec spec;
    private final EngineSpec engine;
    private final double stepH;
    private final double binA;
    private final Map<EngineState, Sorted> sorted = new EnumMap<>(EngineState.class);

    /** Steps by bin of current; the last bin holds what lies above the cold curve's end. */
    private static final class Sorted {
        private final int[] steps = new int[BINS + 1];
        private double sumA;
        private int count;
    }

    AlternatorWatch(String name, AlternatorSpec spec, EngineSpec engine, double stepS) {
        this.name = name;
        this.spec = spec;
        this.engine = engine;
        this.stepH = stepS / 3600;
        this.binA = spec.curve().endA() / BINS;
        for (EngineState state : EngineState.values()) {
            sorted.put(state, new Sorted());
        }
    }

    void step(EngineState state, double currentA) {
        Sorted here = sorted.get(state);
        int bin = (int) (currentA / binA);
        here.steps[bin < BINS ? bin : BINS]++;
        here.sumA += currentA;
        here.count++;
    }

    AlternatorWork work() {
        List<Pace> paces = new ArrayList<>();
        sorted.forEach((state, here) -> {
            if (state != EngineState.STOPPED && here.count > 0) {
                paces.add(pace(state, here));
            }
        });
        paces.sort(Comparator.comparingDouble(Pace::rotorRpm));
        double topRpm = Math.max(
                LEAST_TOP_RPM,
                paces.isEmpty() ? 0 : 1.1 * paces.get(paces.size() - 1).rotorRpm());
        double[] rpm =
                DoubleStream.iterate(0, n -> n <= topRpm, n -> n + RPM_STEP).toArray();
        OutputCurve curve = spec.curve();
        double hotC = curve.hotWindingC();
        return new AlternatorWork(
                name,
                OutputCurve.COLD_C,
                hotC,
                Series.of(rpm),
                along(rpm, n -> curve.currentA(n, OutputCurve.COLD_C)),
                along(rpm, n -> curve.currentA(n, hotC)),
                along(rpm, spec::capA),
                binA,
                paces);
    }

    private Pace pace(EngineState state, Sorted here) {
        return new Pace(
                words(state),
                engine.rpm(state) * spec.pulleyRatio(),
                here.sumA / here.count,
                Series.of(Arrays.stream(here.steps)
                        .mapToDouble(steps -> steps * stepH)
                        .toArray()));
    }

    private static String words(EngineState state) {
        return switch (state) {
            case STOPPED -> "engine off";
            case IDLE -> "idle";
            case FAST_IDLE -> "fast idle";
            case TOWN -> "town";
            case HIGHWAY -> "highway";
        };
    }

    private static Series along(double[] rpm, DoubleUnaryOperator currentA) {
        return Series.of(DoubleStream.of(rpm).map(currentA).toArray());
    }
}
