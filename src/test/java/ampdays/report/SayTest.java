package ampdays.report;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.scenario.PricedPart;
import ampdays.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** Temperatures by hand: 77 °F are 25 °C, 20 K are 36 °F; identities of the scales. */
class SayTest {
    private static final String WORDS = "12 A in air of 25 °C; a joint of 0.20 mΩ is 20 K warmer; at -5 °C it stops";

    @Test
    void theWordsOfOthersHaveTheUnitsOfTheDocument() {
        assertThat(new Say(UnitSystem.METRIC).sentence(WORDS)).isEqualTo(WORDS);
        assertThat(new Say(UnitSystem.US).sentence(WORDS))
                .isEqualTo("12 A in air of 77 °F; a joint of 0.20 mΩ is 36 °F warmer; at 23 °F it stops");
        assertThat(new Say(UnitSystem.BOTH).sentence(WORDS))
                .isEqualTo("12 A in air of 25 °C (77 °F); a joint of 0.20 mΩ is 20 K (36 °F) warmer; at -5 °C (23 °F)"
                        + " it stops");
    }

    /** By hand: 15 °C are 59 °F and 26.5 °C are 79.7 °F. */
    @Test
    void bothEndsOfARangeAndHalvesOfDegreesAreTold() {
        String words = "a band of 15 to 25 °C, a coil at 15–25 °C, asleep 26.5 °C";
        assertThat(new Say(UnitSystem.US).sentence(words))
                .isEqualTo("a band of 59 to 77 °F, a coil at 59–77 °F, asleep 80 °F");
        assertThat(new Say(UnitSystem.BOTH).sentence(words))
                .isEqualTo(
                        "a band of 15 to 25 °C (59 to 77 °F), a coil at 15–25 °C (59–77 °F), asleep 26.5 °C (80 °F)");
    }

    /** 1.28 kWh at 650 are 832 to a person, whatever the last bit says. */
    @Test
    void moneyHasCentsOnlyWhereThereAreAny() {
        double bank = 100 * 12.8 / 1000 * 650 + 1e-10;
        assertThat(Say.money(bank, "USD")).isEqualTo("832 USD");
        assertThat(Say.money(3800, "USD")).isEqualTo("3,800 USD");
        assertThat(Say.money(12.5, "USD")).isEqualTo("12.50 USD");
        assertThat(Say.money(9.99, "USD")).isEqualTo("9.99 USD");
        assertThat(Say.count(3 * 1.1 - 0.3)).isEqualTo("3");
        assertThat(Say.count(1.28)).isEqualTo("1.28");
    }

    /** By hand: 1 kg are 2.2046 lb, 25 mm are 0.98 in, 0.5 m² K/W are 2.8 h ft² °F/BTU. */
    @Test
    void massesAndSizesOfOthersToo() {
        String words = "10 kg; lead-acid 25 to 32 kg; 25 mm of foam on 16 mm² of cable; 0.5 m² K/W; 180 mm (7 in)";
        assertThat(new Say(UnitSystem.METRIC).sentence(words)).isEqualTo(words);
        assertThat(new Say(UnitSystem.US).sentence(words))
                .isEqualTo("22 lb; lead-acid 55–71 lb; 0.98 in of foam on 16 mm² of cable; 2.8 h ft² °F/BTU; 180 mm (7"
                        + " in)");
        assertThat(PricedPart.INSULATION.unit(UnitSystem.METRIC)).isEqualTo("25 mm of foam in roof and walls");
        assertThat(PricedPart.INSULATION.unit(UnitSystem.BOTH)).isEqualTo("25 mm (0.98 in) of foam in roof and walls");
    }
}
