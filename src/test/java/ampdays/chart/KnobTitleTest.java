package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.SweepTable.Column;
import ampdays.scenario.Registry;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Words of our own; no outside source. */
class KnobTitleTest {
    private static Column column(String heading, String... values) {
        return new Column(heading, List.of(values), List.of());
    }

    /** A path that is renamed in the scenario and not here would lose its words unseen. */
    @Test
    void everyPathIsAParameterOfTheScenario() {
        assertThat(KnobTitle.PLAIN.keySet())
                .allMatch(path -> Registry.parameter(path).isPresent());
    }

    @Test
    void theUsualKnobsHavePlainWordsAndOthersTheirPath() {
        assertThat(KnobTitle.axis(column("trip.drive-hours (h/day)", "0", "2"))).isEqualTo("driving (h/day)");
        assertThat(KnobTitle.axis(column("trip.parked-days", "0", "2"))).isEqualTo("days parked in a row");
        assertThat(KnobTitle.axis(column("cabin.floor-transmittance (W/(m² K))", "0.8", "2")))
                .isEqualTo("cabin.floor-transmittance (W/(m² K))");
        assertThat(KnobTitle.of(column("second-alternator.rated (A)", "150")))
                .isEqualTo("rating of the second alternator");
    }

    @Test
    void heatIsToldAsASummer() {
        Column heat = column("weather-offset (K)", "-5", "0", "5");
        assertThat(KnobTitle.at(heat, 0)).isEqualTo("all air 5 K cooler");
        assertThat(KnobTitle.at(heat, 1)).isEqualTo("weather as in the file");
        assertThat(KnobTitle.at(heat, 2)).isEqualTo("all air 5 K hotter");
        assertThat(KnobTitle.at(column("battery.capacity (Ah)", "200", "400"), 1))
                .isEqualTo("size of the bank 400 Ah");
    }
}
