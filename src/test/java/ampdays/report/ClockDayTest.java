package ampdays.report;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.trip.DayKind;
import ampdays.trip.People;
import ampdays.trip.Shade;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.trip.Vehicle;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Small timetables told by hand, by the rule that a line holds until the next one and the last one until the first of the
 * next day (docs/MODEL.md, section 2). There is no outside source.
 */
class ClockDayTest {
    private static final Shade PART = new Shade(0.5, 0.7);
    private static final Shade DEEP = new Shade(0.1, 0.5);

    private static Stretch park(int hour, Shade shade) {
        return new Stretch(hour * 60, Vehicle.PARKED, shade, false, People.AWAY);
    }

    private static Stretch hookUp(int hour) {
        return new Stretch(hour * 60, Vehicle.PARKED, Shade.NONE, true, People.AWAY);
    }

    private static Stretch drive(int hour) {
        return new Stretch(hour * 60, Vehicle.TOWN, Shade.NONE, false, People.ABOARD);
    }

    private static List<ClockDay> days(List<Integer> kindOfDay, DayKind... kinds) {
        return ClockDay.of(new Trip(LocalDate.of(2025, 7, 8), ZoneOffset.UTC, List.of(kinds), kindOfDay, 0.2));
    }

    private static List<String> parking(List<ClockDay> days) {
        return days.stream().map(Parking::of).toList();
    }

    @Test
    void theLastLineHoldsUntilTheFirstOfTheNextDayWhateverKindThatIs() {
        DayKind out = new DayKind("days out", List.of(drive(8), park(9, Shade.NONE), park(17, PART)));
        DayKind home = new DayKind("days at home", List.of(park(10, DEEP)));
        assertThat(parking(days(List.of(1, 0, 1), out, home)))
                .containsExactly(
                        "in full sun 09:00 to 17:00, in part shade 17:00 to 19:00, in shade 05:00 to 08:00",
                        "until 10:00 as the day before ended, in shade 10:00 to 19:00");
        assertThat(parking(days(List.of(0, 1), out, home)).get(1))
                .isEqualTo("in part shade 05:00 to 10:00, in shade 10:00 to 19:00");
    }

    @Test
    void aStayIsToldFromFiveToSevenWheneverItBegan() {
        DayKind still = new DayKind("days", List.of(park(0, PART)));
        DayKind moved = new DayKind("days", List.of(park(3, PART), park(6, PART), drive(12), park(20, DEEP)));
        assertThat(parking(days(List.of(0), still))).containsExactly("in part shade all day");
        assertThat(parking(days(List.of(0), moved))).containsExactly("in part shade 05:00 to 12:00");
        DayKind driven = new DayKind("days", List.of(drive(0)));
        assertThat(parking(days(List.of(0), driven))).containsExactly("");
    }

    @Test
    void kindsThatDoNotOccurAreLeftOut() {
        DayKind one = new DayKind("one", List.of(park(0, PART)));
        DayKind other = new DayKind("other", List.of(park(0, DEEP)));
        assertThat(days(List.of(1, 1), one, other)).extracting(ClockDay::name).containsExactly("other");
        assertThat(days(List.of(1, 1), one, other).get(0).count()).isEqualTo(2);
    }

    /** From 22:00 to midnight, and on until 7:00 or 9:00, by which kind of day comes next. */
    @Test
    void aDrivePastMidnightCountsOnTheDayOnWhichItIsDriven() {
        DayKind night = new DayKind("night", List.of(park(7, PART), drive(22)));
        DayKind rest = new DayKind("rest", List.of(park(9, PART)));
        List<ClockDay> days = days(List.of(1, 0, 1, 1), night, rest);
        assertThat(days.get(0).minutes(line -> line.vehicle().moves()).getSum()).isEqualTo(2 * 60);
        assertThat(days.get(1).minutes(line -> line.vehicle().moves()).getMin()).isZero();
        assertThat(days.get(1).minutes(line -> line.vehicle().moves()).getMax()).isEqualTo(9 * 60);
    }

    @Test
    void aHookUpByDayAloneCounts() {
        DayKind noon = new DayKind("noon", List.of(park(8, PART), hookUp(12), park(20, PART)));
        DayKind none = new DayKind("none", List.of(park(8, PART)));
        assertThat(days(List.of(0, 1), noon, none))
                .extracting(ClockDay::hasHookUp)
                .containsExactly(true, false);
    }
}
