package ampdays.scenario;

import ampdays.alternator.OutputPoint;
import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Currents by rotor speed, from a text such as {@code 1800 rpm 120 A, 2500 rpm 190 A}. */
final class CurvePoints {
    private static final Pattern SPEED_AND_CURRENT =
            Pattern.compile("([\\d.]+\\s*(?:1/min|/min|[A-Za-z/]+))\\s+([\\d.]+\\s*[A-Za-z]+)");
    private static final int MOST = 40;

    private CurvePoints() {}

    /** Reads points; the exception's message is a predicate after the parameter's path. */
    static List<OutputPoint> parse(String text) throws QuantityException {
        List<OutputPoint> points = new ArrayList<>();
        for (String part : text.split("[,;]", -1)) {
            points.add(point(part.strip()));
        }
        if (points.size() > MOST) {
            throw new QuantityException("has more than " + MOST + " points. Leave out those that lie close together.");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).rotorRpm() <= points.get(i - 1).rotorRpm()) {
                throw new QuantityException("has the point \"" + text.split("[,;]", -1)[i].strip()
                        + "\", whose speed is not above that before it. Write the points by rising speed.");
            }
        }
        return List.copyOf(points);
    }

    private static OutputPoint point(String text) throws QuantityException {
        Matcher matcher = SPEED_AND_CURRENT.matcher(text);
        if (!matcher.matches()) {
            throw new QuantityException("has the point \"" + text + "\", which is not a rotor speed and a current. "
                    + new Kind.SpeedPoints().advice());
        }
        double rotorRpm = Quantity.parse(matcher.group(1), Dimension.ROTATION).value();
        double currentA = Quantity.parse(matcher.group(2), Dimension.CURRENT).value();
        try {
            return new OutputPoint(rotorRpm, currentA);
        } catch (IllegalArgumentException e) {
            throw new QuantityException("has the point \"" + text + "\": " + e.getMessage() + ".");
        }
    }
}
