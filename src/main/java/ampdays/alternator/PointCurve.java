package ampdays.alternator;

import ampdays.units.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * The curve through points of a data sheet or of measurements: {@link MonotoneCurve} between them, flat beyond the last,
 * zero below cut-in.
 *
 * <p>Between 25 °C and the hot set's winding temperature the current goes straight from cold to hot. Outside it, and
 * where there is no hot set, the temperature laws of {@link AlternatorPhysics#curveA} hold: the current falls by 0.154 %
 * and the whole curve moves up in speed by 0.122 % of cut-in for each kelvin. A hot current is never above the cold one
 * at the same speed. Reference: OutputCurveTest.
 *
 * @param cold points at 25 °C, speeds rising, currents not falling; the first at 0 A is the cut-in
 * @param hot points at {@code hotWindingC}; may be empty
 * @param cutInRpm rotor speed of the first amp, cold, 1/min; the cold points lie above it unless they name it
 * @param hotWindingC winding temperature of the hot points, °C
 */
public record PointCurve(List<OutputPoint> cold, List<OutputPoint> hot, double cutInRpm, double hotWindingC)
        implements OutputCurve {
    private static final double IMAX_PER_K = AlternatorPhysics.IMAX_PER_K;
    private static final double CUT_IN_PER_K = AlternatorPhysics.CUT_IN_PER_K;

    public PointCurve {
        Require.within("cut-in speed", cutInRpm, 100, 5000);
        Require.within("winding temperature of the hot points", hotWindingC, COLD_C + 10, 250);
        cold = fromCutIn("cold points", cold, cutInRpm);
        cutInRpm = cold.get(0).rotorRpm();
        double hotCutInRpm = cutInRpm * (1 + CUT_IN_PER_K * (hotWindingC - COLD_C));
        hot = hot.isEmpty() ? List.of() : fromCutIn("hot points", hot, hotCutInRpm);
        MonotoneCurve coldLine = MonotoneCurve.through(cold);
        for (OutputPoint point : hot) {
            double coldA = coldLine.at(point.rotorRpm());
            if (point.currentA() > coldA * 1.001) {
                throw new IllegalArgumentException(
                        "the hot points give more than the cold points at " + Math.round(point.rotorRpm()) + " rpm");
            }
        }
    }

    private static List<OutputPoint> fromCutIn(String what, List<OutputPoint> points, double cutInRpm) {
        OutputPoint.rising(what, points);
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).currentA() < points.get(i - 1).currentA()) {
                throw new IllegalArgumentException("the currents of the " + what + " must not fall with speed");
            }
        }
        List<OutputPoint> all = new ArrayList<>(points);
        if (points.isEmpty() || points.get(0).currentA() > 0) {
            if (!points.isEmpty() && points.get(0).rotorRpm() <= cutInRpm) {
                throw new IllegalArgumentException("the " + what + " begin at or below the cut-in speed of "
                        + Math.round(cutInRpm) + " rpm; give a lower cut-in");
            }
            all.add(0, new OutputPoint(cutInRpm, 0));
        }
        if (all.size() < 2) {
            throw new IllegalArgumentException("the " + what + " need at least one point with current");
        }
        return List.copyOf(all);
    }

    @Override
    public double currentA(double rotorRpm, double windingC) {
        MonotoneCurve coldLine = MonotoneCurve.through(cold);
        double aboveK = windingC - COLD_C;
        if (hot.isEmpty() || aboveK < 0) {
            double shifted = rotorRpm - cutInRpm * CUT_IN_PER_K * aboveK;
            return notNegative(coldLine.at(shifted) * (1 - IMAX_PER_K * aboveK));
        }
        MonotoneCurve hotLine = MonotoneCurve.through(hot);
        double hotSpanK = hotWindingC - COLD_C;
        if (aboveK <= hotSpanK) {
            double coldA = coldLine.at(rotorRpm);
            double hotA = lower(hotLine.at(rotorRpm), coldA);
            return coldA + (hotA - coldA) * aboveK / hotSpanK;
        }
        double beyondK = aboveK - hotSpanK;
        double shifted = rotorRpm - cutInRpm * CUT_IN_PER_K * beyondK;
        double hotA = lower(hotLine.at(shifted), coldLine.at(shifted));
        return notNegative(hotA * (1 - IMAX_PER_K * beyondK));
    }

    private static double lower(double a, double b) {
        return a < b ? a : b;
    }

    private static double notNegative(double currentA) {
        return currentA > 0 ? currentA : 0;
    }

    @Override
    public double endA() {
        return cold.get(cold.size() - 1).currentA();
    }
}
