package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.SweepTable.Column;
import ampdays.scenario.Kind;
import ampdays.scenario.Parameter;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
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
        assertThat(PlainNames.WORDS.keySet())
                .allSatisfy(path -> assertThat(Registry.parameter(path.replace("*-alternator", "second-alternator")))
                        .as(path)
                        .isPresent());
    }

    /** What a study of what matters may move, and what a sweep usually varies. */
    @Test
    void everyNumberOfTheVanHasWordsThatFitBesideABar() {
        List<String> numbers = Registry.sections().stream()
                .filter(Section::isVan)
                .flatMap(section -> section.parameters().stream())
                .filter(parameter -> parameter.kind() instanceof Kind.Measured)
                .map(Parameter::path)
                .toList();
        assertThat(numbers).hasSizeGreaterThan(150);
        assertThat(numbers)
                .allSatisfy(path ->
                        assertThat(PlainNames.of(path)).isNotEqualTo(path).hasSizeLessThan(51));
        assertThat(numbers.stream().map(PlainNames::of)).doesNotHaveDuplicates();
    }

    @Test
    void whatTheDesignerNamedKeepsItsName() {
        assertThat(PlainNames.of("loads.water pump.draw")).isEqualTo("water pump: draw");
        assertThat(PlainNames.of("loads.fan 2.5.airflow")).isEqualTo("fan 2.5: air moved");
        assertThat(PlainNames.of("loads.laptops.when")).isEqualTo("loads.laptops.when");
        assertThat(PlainNames.of("second-alternator.cap")).isEqualTo("current cap, second alternator");
        assertThat(PlainNames.of("bank wear")).isEqualTo("bank wear");
    }

    @Test
    void theUsualKnobsHavePlainWordsAndOthersTheirPath() {
        assertThat(KnobTitle.axis(column("trip.drive-hours (h/day)", "0", "2"))).isEqualTo("driving (h/day)");
        assertThat(KnobTitle.axis(column("trip.parked-days", "0", "2"))).isEqualTo("days parked in a row");
        assertThat(KnobTitle.axis(column("cabin.floor-transmittance (W/(m² K))", "0.8", "2")))
                .isEqualTo("heat through the floor (W/(m² K))");
        assertThat(KnobTitle.axis(column("prices.solar", "200", "400"))).isEqualTo("prices.solar");
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
