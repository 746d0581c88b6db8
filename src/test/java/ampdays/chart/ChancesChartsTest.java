package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.chart.TornadoChart.Bar;
import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Matters;
import ampdays.results.Survival;
import ampdays.results.Survival.Step;
import ampdays.results.ThreeDays;
import ampdays.results.TripOutcome;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the charts of many trips say; all numbers invented. */
class ChancesChartsTest {
    private static Chances.Option option(String name, Survival survival) {
        Bounded any = new Bounded(0, 0, 0);
        Chances.Tenths tenths = new Chances.Tenths(any, any, any);
        ThreeDays worst = new ThreeDays(LocalDate.of(2025, Month.JULY, 8), 0, 0);
        TripOutcome trip = new TripOutcome(1, worst.first(), "", List.of(), 14, Double.NaN, true, 0, 0, 0, 1, 0, worst);
        return new Chances.Option(name, "", "", any, any, tenths, tenths, survival, trip, 0, 0, List.of(trip));
    }

    /** Two falls, at day 2 to three quarters and at day 5 to half: straight between, upright at them. */
    @Test
    void survivalIsAStaircaseFromAllTripsToTheEnd() {
        Chances chances = new Chances(
                "van",
                "Van",
                4,
                1,
                0.2,
                List.of(),
                List.of(
                        option("as it is", new Survival(List.of(new Step(2, 0.75), new Step(5, 0.5)))),
                        option("more solar", new Survival(List.of()))));
        LinesChart chart = SurvivalChart.of(chances);
        assertThat(chart.subtitle()).isEqualTo("Van (4 trips of each option; empty: at the reserve of 20 %)");
        assertThat(chart.x().to()).isEqualTo(14);
        LinesChart.Line stairs = chart.panels().get(0).lines().get(0);
        assertThat(stairs.label()).isEqualTo("as it is, 50 %");
        assertThat(stairs.x()).containsExactly(0.0, 2.0, 2.0, 5.0, 5.0, 14.0);
        assertThat(stairs.y()).containsExactly(100.0, 100.0, 75.0, 75.0, 50.0, 50.0);
        assertThat(chart.panels().get(0).lines().get(1).y()).containsExactly(100.0, 100.0);
    }

    @Test
    void barsKeepTheOrderOfTheInputsAndTheirEndsInWords() {
        Matters matters = new Matters(
                "van",
                "Van",
                "as it is",
                "lowest charge",
                "%",
                40,
                Double.POSITIVE_INFINITY,
                5,
                List.of(
                        new Matters.Input("cooling.cop", "guess", "2", "3", "4", 20, 55, 4, 6),
                        new Matters.Input("solar.power", "datasheet", "360 W", "400 W", "440 W", 35, 44, 5, 5)),
                10,
                1,
                List.of());
        TornadoChart chart = TornadoChart.of(matters);
        assertThat(chart.xLabel()).isEqualTo("lowest charge, %");
        assertThat(chart.usual()).isEqualTo(40);
        assertThat(chart.bars())
                .containsExactly(
                        new Bar("efficiency (COP) of the air conditioner", "2", "4", 20, 55),
                        new Bar("power of the panels", "360 W", "440 W", 35, 44));
        assertThat(matters.inputs().get(0).swing(40)).isEqualTo(35);
    }

    /** A bar that ends because the trip does says so; what is not in days has no such end. */
    @Test
    void anEndThatOnlyTheTripSetsIsTold() {
        Bar bar = new Bar("cooling.cop", "2", "4", 9.5, 14);
        TornadoChart days = new TornadoChart("", "", "days to empty", 11, 14, List.of(bar));
        assertThat(days.lowWords(bar)).isEqualTo("2");
        assertThat(days.highWords(bar)).isEqualTo("4, over 14 days");
        TornadoChart percent = new TornadoChart("", "", "lowest charge, %", 11, Double.POSITIVE_INFINITY, List.of(bar));
        assertThat(percent.highWords(bar)).isEqualTo("4");
    }
}
