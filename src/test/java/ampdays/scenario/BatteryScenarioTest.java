package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.battery.BankSpec;
import ampdays.battery.ChargeSteps;
import ampdays.io.PresetReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatteryScenarioTest {
    private final Values bank = Values.empty(PresetReader.presets()).with("battery.capacity", "200 Ah");

    private static BankSpec build(Values values) {
        return new BankBuilder(values, new ProblemList(values)).bank().orElseThrow();
    }

    @Test
    void ownChargeLimitsInAmpsAndC() {
        BankSpec spec = build(bank.with("battery.charge-limits", "0 °C 20 A, 50 °F 0.5 C, 45 °C 0 A"));
        BankSpec.Lithium cells = (BankSpec.Lithium) spec.chemistry();
        assertThat(cells.chargeSteps().steps()).hasSize(3);
        ChargeSteps.Step second = cells.chargeSteps().steps().get(1);
        assertThat(second.fromC()).isCloseTo(10, within(1e-9));
        assertThat(second.limit()).isCloseTo(100, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 °C 20 A, 10 °C | is not a temperature and a charge limit",
                "10 °C 20 A, 0 °C 50 A | is not warmer",
                "0 °C 20 W | 20 W",
                "0 K 20 A | 0 K",
                "cold none | is not a temperature and a charge limit"
            })
    void wrongChargeLimitsAreTold(String text, String told) {
        assertThatThrownBy(() -> bank.with("battery.charge-limits", text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("battery.charge-limits ")
                .hasMessageContaining(told);
    }

    /** Common practice, no source: a 12 V lead-acid block has six cells, 14.4 V of absorption and 10.5 V of cut-out. */
    @Test
    void defaultsFollowTheChemistry() {
        BankSpec spec = build(bank.with("battery.preset", "lead-acid AGM 12 V"));
        assertThat(spec.seriesCells()).isEqualTo(6);
        assertThat(spec.absorptionV()).isCloseTo(14.4, within(1e-9));
        assertThat(spec.cutOut().busV()).isCloseTo(10.5, within(1e-9));
        BankSpec.LeadAcid cells = (BankSpec.LeadAcid) spec.chemistry();
        assertThat(cells.compensationVK()).isCloseTo(-0.018, within(1e-12));
        assertThat(cells.ratedH()).isCloseTo(20, within(1e-12));
        assertThat(build(bank).chemistry()).isInstanceOf(BankSpec.Lithium.class);
    }

    @Test
    void leadAcidOfFourCellsIsTold() {
        Values values = bank.with("battery.chemistry", "lead-acid");
        ProblemList read = new ProblemList(values);
        assertThat(new BankBuilder(values, read).bank()).isEmpty();
        assertThat(read.problems()).hasSize(1);
        assertThat(read.problems().get(0).message()).contains("Write 6 for 12 V");
    }
}
