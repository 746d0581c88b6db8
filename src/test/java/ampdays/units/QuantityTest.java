package ampdays.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityTest {
    /**
     * A. Thompson and B. N. Taylor, NIST Special Publication 811 (2008), appendix B.8: bold factors there are exact,
     * the others are printed to seven digits, hence the tolerance of 1e-6 of the value.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 BTU/h | POWER | 0.2930711",
                "1 hp | POWER | 745.6999",
                "1 kWh | ENERGY | 1000",
                "3.6 MJ | ENERGY | 1000",
                "1 ft | LENGTH | 0.3048",
                "1 in | LENGTH | 0.0254",
                "1 sq ft | AREA | 0.09290304",
                "1 ft³ | VOLUME | 0.02831685",
                "1 gal | VOLUME | 0.003785412",
                "1 lb | MASS | 0.45359237",
                "1 mph | SPEED | 0.44704",
                "3.6 km/h | SPEED | 1",
                "32 °F | TEMPERATURE | 0",
                "212 °F | TEMPERATURE | 100",
                "95 F | TEMPERATURE | 35",
                "-40 °F | TEMPERATURE | -40",
                "9 °F | TEMPERATURE_DIFFERENCE | 5",
                "1 BTU/(h ft² °F) | TRANSMITTANCE | 5.678263",
                "1 h ft² °F/BTU | THERMAL_RESISTANCE | 0.1761102",
                "1 BTU/(h °F) | CONDUCTANCE | 0.5275279",
                "1 BTU/°F | HEAT_CAPACITY | 1899.101"
            })
    void factorsAreThoseOfTheGuideToTheInternationalSystem(String text, Dimension dimension, double base)
            throws QuantityException {
        assertThat(Quantity.parse(text, dimension).value())
                .isCloseTo(base, within(Math.max(1e-6 * Math.abs(base), 1e-12)));
    }

    /** What the units mean is by definition (metric prefixes, per cent, minutes), so only rounding is let through. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "400 Ah | CHARGE | 400",
                "400Ah | CHARGE | 400",
                "15 mA | CURRENT | 0.015",
                "6 mohm | RESISTANCE | 0.006",
                "6 mΩ | RESISTANCE | 0.006",
                "70 % | SHARE | 0.7",
                "8 min | DURATION | 480",
                "3 h/day | USE_PER_DAY | 3",
                "12 min/day | USE_PER_DAY | 0.2",
                "112° W | LONGITUDE | -112",
                "33.4 °S | LATITUDE | -33.4",
                "50 mm foam | THICKNESS | 0.05",
                "2 in | THICKNESS | 0.0508",
                "-0.35 %/K | TEMPERATURE_COEFFICIENT | -0.0035",
                "\u22125 °C | TEMPERATURE | -5",
                "60 kJ/K | HEAT_CAPACITY | 60000",
                "1.2 W/(m2 K) | TRANSMITTANCE | 1.2",
                "1.2 W/m²K | TRANSMITTANCE | 1.2",
                "0.5 C | CHARGE_RATE | 0.5",
                "1e3 W | POWER | 1000",
                "2.6 | NUMBER | 2.6"
            })
    void unitsAreReadAsPeopleWriteThem(String text, Dimension dimension, double base) throws QuantityException {
        assertThat(Quantity.parse(text, dimension).value()).isCloseTo(base, within(1e-15 * Math.abs(base)));
    }

    /** The forms are those of the message guide of this program. */
    @ParameterizedTest
    @MethodSource("refusals")
    void aRefusalSaysWhatIsAccepted(String text, String message, Dimension... accepted) {
        assertThatThrownBy(() -> Quantity.parse(text, accepted))
                .isInstanceOf(QuantityException.class)
                .hasMessage(message);
    }

    static Stream<Arguments> refusals() {
        Dimension[] capacity = {Dimension.CHARGE, Dimension.ENERGY};
        Dimension[] draw = {Dimension.CURRENT, Dimension.POWER};
        Dimension[] power = {Dimension.POWER};
        Dimension[] temperature = {Dimension.TEMPERATURE};
        Dimension[] number = {Dimension.NUMBER};
        return Stream.of(
                Arguments.of("400", "\"400\" has no unit. Write 400 Ah, or 5.1 kWh.", capacity),
                Arguments.of("0.075", "\"0.075\" has no unit. Write 7.5 %.", new Dimension[] {Dimension.SHARE}),
                Arguments.of("7.5", "\"7.5\" has no unit. Write 7.5 %.", new Dimension[] {Dimension.SHARE}),
                Arguments.of("3", "\"3\" has no unit. Write 3 A, or 38 W.", draw),
                Arguments.of("30", "\"30\" has no unit. Write 30 °C, or 86 °F.", temperature),
                Arguments.of("2 V", "\"2 V\" is a voltage. Write a power such as 500 W, or 0.5 kW.", power),
                Arguments.of(
                        "1,200 W",
                        "\"1,200 W\" has a comma in its number, which people read in two ways. "
                                + "Write 1200 W, or 1.200 W.",
                        power),
                Arguments.of(
                        "1,250,000 W",
                        "\"1,250,000 W\" has a comma in its number, which people read in two ways. "
                                + "Write 1250000 W.",
                        power),
                Arguments.of(
                        "5,1 kW",
                        "\"5,1 kW\" has a comma in its number; the decimal sign is a point. " + "Write 5.1 kW.",
                        power),
                Arguments.of(
                        "5 kw",
                        "\"5 kw\" has the unit \"kw\", which is not known here. "
                                + "Units: W, kW, BTU/h, hp. Did you mean kW?",
                        power),
                Arguments.of(
                        "plenty",
                        "\"plenty\" is not a number with a unit. Write a power such as 500 W, or 0.5 kW.",
                        power),
                Arguments.of(
                        "NaN W",
                        "\"NaN W\" is not a number with a unit. Write a power such as 500 W, or 0.5 kW.",
                        power),
                Arguments.of("1e999 W", "\"1e999 W\" is too large for a number.", power),
                Arguments.of("2.6 W", "\"2.6 W\" has a unit, but this is a plain number. Write 2.6.", number),
                Arguments.of("good", "\"good\" is not a number. Write a plain number such as 2.6.", number));
    }

    /** Shown with four significant digits, a value comes back within half a unit of the last one (5e-4). */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyUnitIsShownInTheUsualOneAndReadBack(Dimension dimension) throws QuantityException {
        Random random = new Random(811);
        for (String symbol : dimension.symbols()) {
            for (int i = 0; i < 50; i++) {
                String text = (1 + random.nextInt(2000)) / 8.0 + " " + symbol;
                double base = Quantity.parse(text, dimension).value();
                double again = Quantity.parse(dimension.show(base), dimension).value();
                assertThat(again).as(text).isCloseTo(base, within(5e-4 * Math.abs(base)));
            }
        }
    }

    @Test
    void clockTimes() throws QuantityException {
        assertThat(ClockTime.parse("06:30")).isEqualTo(390);
        assertThat(ClockTime.parse("24:00")).isEqualTo(1440);
        assertThatThrownBy(() -> ClockTime.parse("6.30"))
                .hasMessage("\"6.30\" is not a time of day. Write hours and minutes from 00:00 to 24:00, like 06:30.");
        assertThatThrownBy(() -> ClockTime.parse("24:01")).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> ClockTime.parse("12:60")).isInstanceOf(QuantityException.class);
    }

    @Test
    void theNearestWordIsSuggestedOnlyWhenItIsNear() {
        var keys = List.of("capacity", "cells", "charge-rate");
        assertThat(Nearest.of("capasity", keys)).contains("capacity");
        assertThat(Nearest.of("acpacity", keys)).contains("capacity");
        assertThat(Nearest.of("colour", keys)).isEmpty();
    }
}
