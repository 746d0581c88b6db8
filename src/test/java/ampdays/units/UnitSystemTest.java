package ampdays.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** Every spelling that is read is known for what it is; factors as above. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "90 F       | TEMPERATURE            | 32.2 °C  | 90 F       | 90 F (32.2 °C)",
                "9 degF     | TEMPERATURE_DIFFERENCE | 5 K      | 9 degF     | 9 degF (5 K)",
                "12 in      | LENGTH                 | 0.305 m  | 12 in      | 12 in (0.305 m)",
                "0.5 ft     | LENGTH                 | 0.152 m  | 0.5 ft     | 0.5 ft (0.152 m)",
                "6 feet     | LENGTH                 | 1.83 m   | 6 feet     | 6 feet (1.83 m)",
                "6'         | LENGTH                 | 1.83 m   | 6'         | 6' (1.83 m)",
                "1 in foam  | THICKNESS              | 25.4 mm  | 1 in foam  | 1 in foam (25.4 mm)",
                "100 lbs    | MASS                   | 45.4 kg  | 100 lbs    | 100 lbs (45.4 kg)",
                "100 cfm    | AIR_FLOW               | 170 m³/h | 100 cfm    | 100 cfm (170 m³/h)",
                "10 gal     | VOLUME                 | 0.0379 m³ | 10 gal    | 10 gal (0.0379 m³)",
                "90 C       | TEMPERATURE            | 90 C     | 194 °F     | 90 C (194 °F)",
                "30 cm      | LENGTH                 | 30 cm    | 0.984 ft   | 30 cm (0.984 ft)",
                "25 mm      | LENGTH                 | 25 mm    | 0.984 in   | 25 mm (0.984 in)",
                "500 W      | POWER                  | 500 W    | 500 W      | 500 W",
            })
    void aSpellingIsNoOtherUnit(String text, Dimension dimension, String metric, String us, String both)
            throws QuantityException {
        double base = Quantity.parse(text, dimension).value();
        assertThat(UnitSystem.METRIC.written(text, dimension, base)).isEqualTo(metric);
        assertThat(UnitSystem.US.written(text, dimension, base)).isEqualTo(us);
        assertThat(UnitSystem.BOTH.written(text, dimension, base)).isEqualTo(both);
    }
}
