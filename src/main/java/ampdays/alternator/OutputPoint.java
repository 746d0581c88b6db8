package ampdays.alternator;

import ampdays.units.Require;
import java.util.List;

/**
 * One point of a line over rotor speed.
 *
 * @param rotorRpm rotor speed, 1/min
 * @param currentA current there, A
 */
public record OutputPoint(double rotorRpm, double currentA) {
    public OutputPoint {
        Require.within("rotor speed of a point", rotorRpm, 0, 30_000);
        Require.within("current of a point", currentA, 0, 2000);
    }

    /** Refuses points whose speeds do not rise from one to the next. */
    static void rising(String what, List<OutputPoint> points) {
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).rotorRpm() > points.get(i - 1).rotorRpm())) {
                throw new IllegalArgumentException("the speeds of the " + what + " must rise from point to point");
            }
        }
    }

    /** Straight between the points, flat outside them; no limit without points. */
    static double straightA(List<OutputPoint> points, double rotorRpm) {
        if (points.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        if (rotorRpm <= points.get(0).rotorRpm()) {
            return points.get(0).currentA();
        }
        for (int i = 1; i < points.size(); i++) {
            OutputPoint left = points.get(i - 1);
            OutputPoint right = points.get(i);
            if (rotorRpm <= right.rotorRpm()) {
                double share = (rotorRpm - left.rotorRpm()) / (right.rotorRpm() - left.rotorRpm());
                return left.currentA() + share * (right.currentA() - left.currentA());
            }
        }
        return points.get(points.size() - 1).currentA();
    }
}
