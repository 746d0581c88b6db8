package ampdays.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Numbers in both unit systems. Factors: NIST Special Publication 811 (2008), appendix B.8. */
class UnitSystemTest {
    @Test
    void boilingWaterAGallonAndAHundredweight() {
        // 1 lb = 0.45359237 kg, 1 gal = 3.785411784 L, t/°F = 1.8 t/°C + 32: all exact
        assertThat(UnitSystem.BOTH.temperature(100)).isEqualTo("100 °C (212 °F)");
        assertThat(UnitSystem.BOTH.temperature(-40)).isEqualTo("-40 °C (-40 °F)");
        assertThat(UnitSystem.BOTH.liquid(3.785411784)).isEqualTo("3.8 L (1.0 gal)");
        assertThat(UnitSystem.BOTH.mass(45.359237)).isEqualTo("45 kg (100 lb)");
        assertThat(UnitSystem.US.mass(45.359237)).isEqualTo("100 lb");
        assertThat(UnitSystem.METRIC.liquid(11.7)).isEqualTo("12 L");
    }

    @Test
    void aRangeHasItsUnitOnce() {
        assertThat(UnitSystem.BOTH.range(Dimension.MASS, 51.2, 70.4, 2)).isEqualTo("51–70 kg (110–160 lb)");
        assertThat(UnitSystem.US.range(Dimension.MASS, 51.2, 70.4, 2)).isEqualTo("110–160 lb");
        assertThat(UnitSystem.BOTH.range(Dimension.CURRENT, 10, 20, 2)).isEqualTo("10–20 A");
    }

    @Test
    void whatAPersonWroteKeepsItsWordsInItsOwnSystem() {
        assertThat(UnitSystem.METRIC.written("26 °C", Dimension.TEMPERATURE, 26))
                .isEqualTo("26 °C");
        assertThat(UnitSystem.US.written("26 °C", Dimension.TEMPERATURE, 26)).isEqualTo("78.8 °F");
        assertThat(UnitSystem.BOTH.written("80 °F", Dimension.TEMPERATURE, 26.7))
                .isEqualTo("80 °F (26.7 °C)");
        assertThat(UnitSystem.METRIC.written("80 °F", Dimension.TEMPERATURE, 26.7))
                .isEqualTo("26.7 °C");
        assertThat(UnitSystem.BOTH.written("25 mm", Dimension.LENGTH, 0.0254)).isEqualTo("25 mm (1 in)");
        assertThat(UnitSystem.BOTH.written("400 Ah", Dimension.CHARGE, 400)).isEqualTo("400 Ah");
    }
}
