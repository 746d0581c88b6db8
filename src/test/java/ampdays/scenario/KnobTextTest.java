package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.io.ScenarioReader;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Values of knobs as texts, counted by hand; wrong ones are in wrong-sweeps.txt. */
class KnobTextTest {
    private ScenarioFile file;

    @BeforeEach
    void readTheDemo() throws Exception {
        file = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
    }

    private Knob read(String assignment) {
        return KnobText.read(assignment, file);
    }

    @Test
    void aRangeTakesItsUnitFromItsEnd() {
        Knob knob = read("battery.capacity=200..500 Ah step 100");
        assertThat(knob.values()).containsExactly("200 Ah", "300 Ah", "400 Ah", "500 Ah");
        assertThat(knob.unit()).isEqualTo("Ah");
        assertThat(knob.cell(1)).isEqualTo("300");
    }

    /** Ten steps of a tenth are one: in binary numbers they would not be. */
    @Test
    void decimalStepsDoNotDrift() {
        Knob knob = read("battery.capacity=0.5..1.5 kWh step 0.1 kWh");
        assertThat(knob.values()).hasSize(11).startsWith("0.5 kWh", "0.6 kWh").endsWith("1.5 kWh");
    }

    @Test
    void aRangeEndsAtItsLastWholeStep() {
        assertThat(read("cabin.set.asleep=20..25 °C step 2 °C").values()).containsExactly("20 °C", "22 °C", "24 °C");
        assertThat(read("trip.days=3..7 step 2").values()).containsExactly("3", "5", "7");
    }

    @Test
    void aListMayHaveOneUnitOrSeveralOrWords() {
        assertThat(read("solar.power=400, 700 W").values()).containsExactly("400 W", "700 W");
        Knob mixed = read("battery.capacity=400 Ah, 5.1 kWh");
        assertThat(mixed.unit()).isEmpty();
        assertThat(mixed.cell(1)).isEqualTo("5.1 kWh");
        assertThat(read("cabin.set.away=off, 30 °C").cell(0)).isEqualTo("off");
    }

    @Test
    void aPriceMayHaveItsCurrency() {
        Knob budget = read("prices.budget=8000..9000 USD step 500");
        assertThat(budget.values()).containsExactly("8000 USD", "8500 USD", "9000 USD");
        assertThat(budget.unit()).isEqualTo("USD");
        assertThat(file.base().with("prices.budget", "8500 USD").number("prices.budget"))
                .isEqualTo(8500);
    }

    @Test
    void semicolonsSetValuesWithCommasApart() {
        assertThat(read("cabin.preset=high-roof van, bare; high-roof van, insulated")
                        .values())
                .containsExactly("high-roof van, bare", "high-roof van, insulated");
    }

    @Test
    void allOptionsStandInTheOrderOfTheFile() {
        assertThat(read("option=all").values())
                .containsExactly("as it is", "more solar", "bigger bank", "second alternator", "less heat");
    }

    @Test
    void moreThanAMillionValuesAreRefused() {
        assertThatThrownBy(() -> read("battery.capacity=1..1000 Ah step 0.0001 Ah"))
                .hasMessage("battery.capacity would have 9990001 values; at most 1000000 are possible."
                        + " Write a larger step.");
    }
}
