package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spreads by mark, counted by hand from the demo's numbers; how wide a mark is, is ours (no source). */
class InputsTest {
    private static ScenarioFile file;

    @BeforeAll
    static void read() throws Exception {
        file = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
    }

    private static Uncertain input(Values values, String name) {
        return Inputs.of(values).stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Datasheet 10 %, no mark as practice 20 %, measured 3 %, guess 35 %. */
    @ParameterizedTest
    @CsvSource({
        "battery.capacity, 500 Ah (datasheet), 450, 550",
        "battery.capacity, 500 Ah, 400, 600",
        "battery.capacity, 500 Ah (measured), 485, 515",
        "battery.capacity, 500 Ah (guess), 325, 675",
        "battery.capacity, 6 kWh (datasheet), 5400, 6600",
        "loads.lights.draw, 1.5 A (standard), 1.35, 1.65",
        "loads.water pump.heat, 20 % (practice), 0.16, 0.24",
        "inverter.linear-loss, 5 % (guess), 0.0325, 0.0675",
        "solar.conversion, 97 % (practice), 0.964, 0.976",
        "factory-alternator.cut-back-from, 105 °C (practice), 102, 108",
        "factory-alternator.set-point, 14 V (practice), 13.72, 14.28"
    })
    void aMarkStandsForASpread(String path, String text, double low, double high) {
        Uncertain input = input(file.base().with(path, text), path);
        assertThat(input.low()).isCloseTo(low, within(1e-9 * high));
        assertThat(input.high()).isCloseTo(high, within(1e-9 * high));
    }

    /** What a preset says keeps the range of its class, as ampdays presets lists it. */
    @Test
    void aPresetKeepsTheRangeOfItsClass() {
        Uncertain leak = input(file.base(), "refrigerator.leak");
        assertThat(leak.low()).isEqualTo(0.6);
        assertThat(leak.usual()).isEqualTo(0.82);
        assertThat(leak.high()).isEqualTo(1.1);
    }

    @Test
    void wishesPlacesAndMeasuresOfWhatIsGoodAreNoInputs() {
        List<String> names =
                Inputs.of(file.base()).stream().map(Uncertain::name).toList();
        assertThat(names)
                .startsWith("drives", "set point", "light through shade", "bank wear", "cabin.roof")
                .doesNotContain("trip.reserve", "place.latitude", "prices.battery", "cabin.set.asleep")
                .doesNotContain("cabin.comfort.high", "battery.cells", "cabin.people")
                .doesNotHaveDuplicates();
    }

    /** By the reference page: the sections of the van, without the circuits, which are checked by themselves. */
    @Test
    void onlySectionsThatMoveARunHaveInputs() throws Exception {
        ScenarioFile coast = ScenarioReader.read(Path.of("scenarios/coast-weekends.yaml"));
        assertThat(coast.base().names("circuits")).isNotEmpty();
        assertThat(Inputs.of(coast.base()).stream()
                        .map(Uncertain::name)
                        .filter(name -> name.contains("."))
                        .map(Values::section)
                        .distinct())
                .containsExactly(
                        "cabin",
                        "cooling",
                        "dash-cooling",
                        "refrigerator",
                        "loads",
                        "inverter",
                        "battery",
                        "solar",
                        "factory-alternator",
                        "engine",
                        "shore-charger");
    }

    /** Every input can be at both ends, and changes the design there or nothing but itself. */
    @Test
    void everyInputCanBeAtItsEnds() throws ScenarioException {
        for (ScenarioFile.Option option : file.options()) {
            for (Uncertain input : Inputs.of(option.values())) {
                Draft draft = Draft.of(option.values());
                assertThat(input.low()).as(input.name()).isLessThan(input.high());
                for (double end : List.of(input.low(), input.high())) {
                    assertThat(input.apply(draft, end)
                                    .variant("end", new VariantBuilder())
                                    .name())
                            .isEqualTo("end");
                }
            }
        }
    }

    /** A cut-back that ends 2 K above its beginning: 3 K more at the beginning cannot be, 1.5 K can. */
    @Test
    void aSpreadIsHalvedUntilTheDesignCanBe() {
        Values tight = file.base().with("factory-alternator.cut-back-to", "107 °C");
        assertThat(input(tight, "factory-alternator.cut-back-from").high()).isEqualTo(106.5);
        assertThat(input(tight, "factory-alternator.cut-back-from").low()).isEqualTo(102);
    }
}
