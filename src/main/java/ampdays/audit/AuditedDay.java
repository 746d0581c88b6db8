package ampdays.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the bank gives in a day by the readings and by what was told about use.
 *
 * @param hourAh charge in each hour of the clock, Ah, of what has told hours
 * @param elsewhereAh charge a day of what has a told use but no told hours, Ah
 * @param counted draws in these sums
 * @param asked draws that are not, for want of a told use
 * @param leastAskedAh what those usually take at least, Ah a day
 * @param mostAskedAh and at most, Ah a day
 * @param unusual those among them for which practice has no range
 */
public record AuditedDay(
        List<Double> hourAh,
        double elsewhereAh,
        List<Draw> counted,
        List<Draw> asked,
        double leastAskedAh,
        double mostAskedAh,
        List<Draw> unusual) {
    public static final int HOURS = 24;

    public AuditedDay {
        hourAh = List.copyOf(hourAh);
        counted = List.copyOf(counted);
        asked = List.copyOf(asked);
        unusual = List.copyOf(unusual);
    }

    public static AuditedDay of(Readings readings, Audit audit) {
        double[] hourAh = new double[HOURS];
        double elsewhereAh = 0;
        double leastAh = 0;
        double mostAh = 0;
        List<Draw> counted = new ArrayList<>();
        List<Draw> asked = new ArrayList<>();
        List<Draw> unusual = new ArrayList<>();
        for (Draw draw : audit.draws()) {
            if (!draw.known()
                    || draw.isImpossible()
                    || usual(draw).filter(UsualUse::hasSection).isPresent()) {
                continue;
            }
            Use use = use(readings, draw);
            Optional<UsualUse> usual = usual(draw);
            if (use.hasHours()) {
                counted.add(draw);
                for (int hour = 0; hour < HOURS; hour++) {
                    hourAh[hour] += draw.amps() * use.shareOf(hour);
                }
            } else if (use.isKnown()) {
                counted.add(draw);
                elsewhereAh += draw.amps() * use.knownHoursPerDay();
            } else {
                asked.add(draw);
                if (usual.isEmpty()) {
                    unusual.add(draw);
                }
                leastAh += usual.map(u -> draw.amps() * u.fromHours()).orElse(0.0);
                mostAh += usual.map(u -> draw.amps() * u.toHours()).orElse(0.0);
            }
        }
        List<Double> hours = Arrays.stream(hourAh).boxed().toList();
        return new AuditedDay(hours, elsewhereAh, counted, asked, leastAh, mostAh, unusual);
    }

    /** Charge a day of all that is counted, Ah. */
    public double dayAh() {
        return elsewhereAh + hourAh.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What was told about a draw: the base is always on; of several appliances in one, what was told of each alike. */
    public static Use use(Readings readings, Draw draw) {
        if (draw.isBase()) {
            return Use.ALWAYS;
        }
        List<Use> uses =
                draw.names().stream().map(readings.uses()::get).distinct().toList();
        return uses.size() == 1 ? uses.get(0) : Use.UNKNOWN;
    }

    /** What is usual for a draw of one appliance. */
    public static Optional<UsualUse> usual(Draw draw) {
        return draw.isSingle() && !draw.isBase() ? UsualUse.of(draw.names().get(0)) : Optional.empty();
    }
}
