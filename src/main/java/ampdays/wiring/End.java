package ampdays.wiring;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a circuit begins or ends at.
 *
 * @param point which kind of thing
 * @param load name of the load, empty unless it is one
 */
public record End(Point point, String load) {
    /** What a circuit may join. */
    public enum Point {
        BANK("bank"),
        BUS("bus"),
        LOAD_PANEL("load panel"),
        INVERTER("inverter"),
        AIR_CONDITIONER("air conditioner"),
        REFRIGERATOR("refrigerator"),
        SHORE_CHARGER("shore charger"),
        SOLAR_CONTROLLER("solar controller"),
        SOLAR_PANELS("solar panels"),
        SECOND_ALTERNATOR("second alternator"),
        CHARGER("DC-DC charger"),
        START_BATTERY("start battery"),
        FACTORY_ALTERNATOR("factory alternator"),
        LOAD("load");

        private final String label;

        Point(String label) {
            this.label = label;
        }
    }

    public static End of(Point point) {
        return new End(point, "");
    }

    public static End ofLoad(String name) {
        return new End(Point.LOAD, name);
    }

    /** The end of that name, unless it is a load's. */
    public static Optional<End> named(String label) {
        return Arrays.stream(Point.values())
                .filter(p -> p != Point.LOAD && p.label.equals(label))
                .findFirst()
                .map(End::of);
    }

    /** All names but those of loads. */
    public static List<String> labels() {
        return Arrays.stream(Point.values())
                .filter(p -> p != Point.LOAD)
                .map(p -> p.label)
                .toList();
    }

    public String label() {
        return point == Point.LOAD ? load : point.label;
    }

    @Override
    public String toString() {
        return label();
    }
}
