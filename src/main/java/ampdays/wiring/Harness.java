package ampdays.wiring;

import ampdays.wiring.End.Point;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The circuits of a van as a tree that grows from the bank. What no circuit joins hangs on the bus without cable (loads and
 * refrigerator on the load panel, if there is one), and the bus on the bank. The vehicle's side (up to the DC-DC charger)
 * and the panels' (up to the solar controller) are circuits by themselves. Immutable. Reference: HarnessTest.
 */
public final class Harness {
    /** What a circuit belongs to. */
    public enum Side {
        HOUSE,
        VEHICLE,
        PANELS
    }

    /** The way from a place towards the bank: through a circuit, or through nothing. */
    private record Way(End to, Optional<Circuit> circuit) {}

    private final List<Circuit> circuits;
    private final Map<End, Way> ways = new LinkedHashMap<>();

    public Harness(List<Circuit> circuits) {
        this.circuits = List.copyOf(circuits);
        End bank = End.of(Point.BANK);
        End bus = End.of(Point.BUS);
        End panel = End.of(Point.LOAD_PANEL);
        ways.put(bank, new Way(bank, Optional.empty()));
        grow(bank);
        hang(bus, bank);
        if (circuits.stream().anyMatch(c -> c.joins(Point.LOAD_PANEL))) {
            hang(panel, bus);
        }
        for (Circuit circuit : circuits) {
            if (side(circuit) == Side.HOUSE && !ways.containsKey(circuit.from()) && !ways.containsKey(circuit.to())) {
                hang(circuit.from(), homeOf(circuit.from()));
            }
        }
    }

    private void hang(End end, End on) {
        if (!ways.containsKey(end)) {
            ways.put(end, new Way(on, Optional.empty()));
            grow(end);
        }
    }

    private void grow(End root) {
        Deque<End> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            End here = open.remove();
            for (Circuit circuit : circuits) {
                boolean here1 = circuit.from().equals(here) || circuit.to().equals(here);
                if (here1 && side(circuit) == Side.HOUSE && !ways.containsKey(circuit.across(here))) {
                    ways.put(circuit.across(here), new Way(here, Optional.of(circuit)));
                    open.add(circuit.across(here));
                }
            }
        }
    }

    private End homeOf(End end) {
        boolean small = end.point() == Point.LOAD || end.point() == Point.REFRIGERATOR;
        End panel = End.of(Point.LOAD_PANEL);
        return small && ways.containsKey(panel) ? panel : End.of(Point.BUS);
    }

    /** What a circuit belongs to. */
    public static Side side(Circuit circuit) {
        return side(circuit.from(), circuit.to());
    }

    /** What a circuit between these ends belongs to. */
    public static Side side(End from, End to) {
        Set<Point> ends = EnumSet.of(from.point(), to.point());
        if (ends.contains(Point.START_BATTERY) || ends.contains(Point.FACTORY_ALTERNATOR)) {
            return Side.VEHICLE;
        }
        return ends.contains(Point.SOLAR_PANELS) ? Side.PANELS : Side.HOUSE;
    }

    /** The first circuit that closes a loop with those before it, if there is one. */
    public static Optional<Circuit> loop(List<Circuit> circuits) {
        Map<End, End> groups = new LinkedHashMap<>();
        for (Circuit circuit : circuits) {
            if (side(circuit) == Side.HOUSE) {
                End a = group(groups, circuit.from());
                End b = group(groups, circuit.to());
                if (a.equals(b)) {
                    return Optional.of(circuit);
                }
                groups.put(a, b);
            }
        }
        return Optional.empty();
    }

    private static End group(Map<End, End> groups, End end) {
        End at = end;
        while (groups.containsKey(at)) {
            at = groups.get(at);
        }
        return at;
    }

    /** The end of a circuit that is nearer to the battery that would feed a short on it; panels feed little. */
    public End batteryEnd(Circuit circuit) {
        return switch (side(circuit)) {
            case HOUSE -> isWay(circuit, circuit.from()) ? circuit.to() : circuit.from();
            case VEHICLE ->
                circuit.joins(Point.START_BATTERY) ? End.of(Point.START_BATTERY) : End.of(Point.FACTORY_ALTERNATOR);
            case PANELS -> End.of(Point.SOLAR_PANELS);
        };
    }

    private boolean isWay(Circuit circuit, End end) {
        Way way = ways.get(end);
        return way != null && way.circuit().filter(circuit::equals).isPresent();
    }

    /** The circuits between the bank and a circuit of the house, the nearest to the circuit first. */
    public List<Circuit> upstream(Circuit circuit) {
        List<Circuit> upstream = new ArrayList<>();
        if (side(circuit) == Side.HOUSE) {
            for (End at = batteryEnd(circuit);
                    at.point() != Point.BANK;
                    at = ways.get(at).to()) {
                ways.get(at).circuit().ifPresent(upstream::add);
            }
        }
        return upstream;
    }

    /** Whether what hangs on an end reaches the bank through a circuit of the house. */
    public boolean carries(Circuit circuit, End end) {
        End at = ways.containsKey(end) ? end : homeOf(end);
        while (at.point() != Point.BANK) {
            Way way = ways.get(at);
            if (way.circuit().filter(circuit::equals).isPresent()) {
                return true;
            }
            at = way.to();
        }
        return false;
    }

    /** Resistance between the bank and an end of the house at 20 °C, there and back, Ω. */
    public double ohmToBank(End end) {
        double ohm = 0;
        for (End at = ways.containsKey(end) ? end : homeOf(end);
                at.point() != Point.BANK;
                at = ways.get(at).to()) {
            ohm += ways.get(at).circuit().map(c -> c.loopOhm(20)).orElse(0.0);
        }
        return ohm;
    }
}
