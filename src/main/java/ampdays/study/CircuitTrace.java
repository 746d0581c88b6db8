package ampdays.study;

import ampdays.sim.CircuitLog;
import ampdays.wiring.Place;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What one circuit met on the trip: its currents with the air of every place, step by step. {@link #hardest} keeps only
 * steps that no other outdoes in current and in the air of some place; every limit falls with heat, so what holds in these
 * holds in all.
 */
final class CircuitTrace {
    private static final int WINDOW_S = 3600;

    private final Source source;
    private final int[] steps;
    private final double continuousA;
    private final Map<Place, Double> hottestC;

    /** Current and air of every step. */
    interface Source {
        double currentA(int step);

        double airC(Place place, int step);
    }

    private CircuitTrace(Source source, int[] steps, double continuousA, Map<Place, Double> hottestC) {
        this.source = source;
        this.steps = steps;
        this.continuousA = continuousA;
        this.hottestC = hottestC;
    }

    static CircuitTrace of(CircuitLog log, int circuit) {
        Source source = new Source() {
            @Override
            public double currentA(int step) {
                return log.currentA(circuit, step);
            }

            @Override
            public double airC(Place place, int step) {
                return log.airC(place, step);
            }
        };
        return of(source, log.clock().steps(), log.clock().stepSeconds());
    }

    static CircuitTrace of(Source source, int count, int stepSeconds) {
        Map<Place, Double> hottest = new EnumMap<>(Place.class);
        for (Place place : Place.values()) {
            double most = Double.NEGATIVE_INFINITY;
            for (int step = 0; step < count; step++) {
                most = Math.max(most, source.airC(place, step));
            }
            hottest.put(place, most);
        }
        int[] all = IntStream.range(0, count).toArray();
        return new CircuitTrace(source, all, hardestHourA(source, count, stepSeconds), hottest);
    }

    /** Largest root mean square of the current over an hour, or over the whole of a shorter trip, A. */
    private static double hardestHourA(Source source, int count, int stepSeconds) {
        int window = Math.min(count, WINDOW_S / stepSeconds);
        double[] squares = new double[count];
        for (int step = 0; step < count; step++) {
            squares[step] = source.currentA(step) * source.currentA(step);
        }
        double most = 0;
        for (int first = 0; first + window <= count; first++) {
            double sum = 0;
            for (int step = first; step < first + window; step++) {
                sum += squares[step];
            }
            most = Math.max(most, sum / window);
        }
        return Math.sqrt(most);
    }

    /** The same circuit by its hardest steps alone; times mean nothing in it. */
    CircuitTrace hardest() {
        TreeSet<Integer> kept = new TreeSet<>();
        Integer[] byCurrent = Arrays.stream(steps).boxed().toArray(Integer[]::new);
        Arrays.sort(byCurrent, Comparator.comparingDouble((Integer i) -> -source.currentA(i)));
        for (Place place : Place.values()) {
            double warmestC = Double.NEGATIVE_INFINITY;
            for (Integer step : byCurrent) {
                if (source.airC(place, step) > warmestC) {
                    warmestC = source.airC(place, step);
                    kept.add(step);
                }
            }
        }
        int[] few = kept.stream().mapToInt(Integer::intValue).toArray();
        return new CircuitTrace(source, few, continuousA, hottestC);
    }

    int size() {
        return steps.length;
    }

    /** The step of the trip that is the {@code i}th here. */
    int step(int i) {
        return steps[i];
    }

    double currentA(int i) {
        return source.currentA(steps[i]);
    }

    double airC(Place place, int i) {
        return source.airC(place, steps[i]);
    }

    /** Largest current of any step, A. */
    double mostA() {
        double most = 0;
        for (int i = 0; i < size(); i++) {
            most = Math.max(most, currentA(i));
        }
        return most;
    }

    /** Root mean square of the hardest hour, A. */
    double continuousA() {
        return continuousA;
    }

    /** Warmest air of a place on the trip, °C. */
    double hottestC(Place place) {
        return hottestC.get(place);
    }
}
