package ampdays.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.load.ClockWindow;
import ampdays.load.Occasion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A day by the hour, by hand. */
class AuditedDayTest {
    private static AuditedDay day(Map<String, Use> uses, Draw... draws) {
        Reading row = new Reading(1, Set.of(), Set.of(), 1, 0, Double.NaN, Double.NaN, 0);
        Readings readings = new Readings("", uses, List.of(row), 0.1, 0.2, List.of());
        return AuditedDay.of(readings, new Audit(List.of(draws), 0, 0, 1, 0, List.of(), List.of()));
    }

    private static Draw draw(String name, double amps) {
        return new Draw(List.of(name), true, amps, 0.1, Double.NaN, List.of());
    }

    private static Use use(double hoursPerDay, String when, ClockWindow... windows) {
        return new Use(hoursPerDay, when, Occasion.ALWAYS, List.of(windows));
    }

    /** 0.5 A always; 2 A from 19:00 to 22:30; 6 A for a quarter of an hour spread over two hours; 3 A for 4 h at no told hour. */
    @Test
    void chargeIsCountedByTheHourWhereHoursAreTold() {
        Map<String, Use> uses = new LinkedHashMap<>();
        uses.put("lamp", use(Double.NaN, "19:00-22:30", new ClockWindow(19 * 60, 22 * 60 + 30)));
        uses.put("pump", use(0.25, "07:00-09:00", new ClockWindow(7 * 60, 9 * 60)));
        uses.put("blower", new Use(4, "asleep", Occasion.ASLEEP, List.of()));
        AuditedDay day = day(uses, draw(Draw.BASE, 0.5), draw("lamp", 2), draw("pump", 6), draw("blower", 3));
        assertThat(day.hourAh().get(0)).isCloseTo(0.5, within(1e-12));
        assertThat(day.hourAh().get(7)).isCloseTo(0.5 + 0.75, within(1e-12));
        assertThat(day.hourAh().get(21)).isCloseTo(2.5, within(1e-12));
        assertThat(day.hourAh().get(22)).isCloseTo(0.5 + 1, within(1e-12));
        assertThat(day.elsewhereAh()).isCloseTo(12, within(1e-12));
        assertThat(day.dayAh()).isCloseTo(12 + 7 + 1.5 + 12, within(1e-12));
        assertThat(day.asked()).isEmpty();
    }

    /** Windows that run past midnight belong to both days. */
    @Test
    void timesPastMidnightAreCounted() {
        AuditedDay day =
                day(Map.of("fan", use(Double.NaN, "23:00-01:00", new ClockWindow(23 * 60, 60))), draw("fan", 3));
        assertThat(day.hourAh().get(23)).isCloseTo(3, within(1e-12));
        assertThat(day.hourAh().get(0)).isCloseTo(3, within(1e-12));
        assertThat(day.dayAh()).isCloseTo(6, within(1e-12));
    }

    /** The range that is asked for is that of practice; what no practice is known of is named, and sections stay out. */
    @Test
    void whatIsNotToldIsAskedForWithItsUsualRange() {
        Map<String, Use> uses = new LinkedHashMap<>();
        for (String name : List.of("ceiling lights", "gadget", "refrigerator")) {
            uses.put(name, Use.UNKNOWN);
        }
        AuditedDay day = day(uses, draw("ceiling lights", 2), draw("gadget", 1), draw("refrigerator", 4));
        assertThat(day.asked().stream().map(Draw::label)).containsExactly("ceiling lights", "gadget");
        assertThat(day.unusual().stream().map(Draw::label)).containsExactly("gadget");
        assertThat(day.leastAskedAh()).isCloseTo(2 * 2, within(1e-12));
        assertThat(day.mostAskedAh()).isCloseTo(2 * 4, within(1e-12));
        assertThat(day.dayAh()).isZero();
    }

    /** A draw that cannot be, and one that is not told, count for nothing. */
    @Test
    void whatIsImpossibleOrNotToldIsNotCounted() {
        Map<String, Use> uses = new LinkedHashMap<>();
        uses.put("a", Use.ALWAYS);
        uses.put("b", Use.ALWAYS);
        Draw unknown = new Draw(List.of("b"), false, Double.NaN, Double.NaN, Double.NaN, List.of());
        AuditedDay day = day(uses, draw("a", -2), unknown);
        assertThat(day.counted()).isEmpty();
        assertThat(day.dayAh()).isZero();
    }
}
