package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.chart.FrontChart.Measured;
import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Fate;
import ampdays.results.Survival;
import ampdays.results.SweepTable;
import ampdays.results.ThreeDays;
import ampdays.results.TripOutcome;
import ampdays.study.Front;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the chart of a front says; no outside source. */
class FrontChartTest {
    private static final SweepTable TABLE = new SweepTable(
            List.of(),
            List.of(3.0, Double.NaN, Double.NaN),
            List.of(Fate.EMPTY, Fate.HOLDS, Fate.HOLDS),
            List.of(20.0, 40.0, 40.0),
            List.of(4.0, 7.0, 7.0),
            List.of(100.0, 200.0, 300.0),
            List.of(10.0, 20.0, 30.0),
            List.of(1.0, 1.0, 1.0),
            "EUR");

    private static Chances.Option chances(double neverEmpty) {
        Bounded share = new Bounded(neverEmpty, neverEmpty - 0.125, neverEmpty + 0.125);
        Chances.Tenths tenths = new Chances.Tenths(share, share, share);
        LocalDate day = LocalDate.of(2025, 7, 1);
        TripOutcome trip =
                new TripOutcome(1, day, "", List.of(), 7, Double.NaN, true, 0.5, 7, 7, 0, 0, new ThreeDays(day, 0, 0));
        return new Chances.Option(
                "", "", "", share, share, tenths, tenths, new Survival(List.of()), trip, 0, 0, List.of(trip));
    }

    @Test
    void overManyTripsItHasBothSharesInPercentWithTheirBounds() {
        Front front = Front.ofManyTrips(TABLE, List.of(0, 1, 2), List.of(chances(0.25), chances(0.5), chances(0.5)));
        FrontChart chart = FrontChart.of(front, "Van");
        assertThat(chart.subtitle()).isEqualTo("Van; 1 trips, bars: 95 % sure; numbers: rows of front.csv");
        assertThat(chart.measures())
                .containsExactly(
                        "trips on which the bank is never empty, %",
                        "trips with all nights comfortable, %", "mass of the parts, kg");
        assertThat(chart.front()).hasSize(2);
        assertThat(chart.front().get(0).measured())
                .containsExactly(new Measured(25, 12.5, 37.5), new Measured(25, 12.5, 37.5), new Measured(10, 10, 10));
        assertThat(chart.front()).extracting(FrontChart.Point::holds).containsExactly(false, true);
        assertThat(chart.others()).extracting(FrontChart.Point::price).containsExactly(300.0);
    }

    @Test
    void onTheOneTripItHasItsNights() {
        FrontChart chart = FrontChart.of(Front.ofOneTrip(TABLE, List.of(0, 1, 2)), "Van");
        assertThat(chart.measures()).containsExactly("comfortable nights", "mass of the parts, kg");
        assertThat(chart.front().get(1).measured()).containsExactly(new Measured(7, 7, 7), new Measured(20, 20, 20));
        assertThatThrownBy(() -> FrontChart.of(Front.ofOneTrip(TABLE, List.of()), "Van"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
