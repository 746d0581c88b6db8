package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.weather.WeatherSeries;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Light that a file lacks. That global light is the beam on the level plus diffuse is a definition; the share of diffuse
 * light is that of Erbs, Klein and Duffie (1982), whose values are checked in the tests of {@code sun}.
 */
class SkyCompletionTest {
    private static final int DAYS = 3;
    private static final int SIZE = DAYS * 24;
    private static final double[] UNKNOWN = unknown();

    private final WeatherSeries whole = Sky.shifted(DAYS, 3600, 0, 5);

    private static double[] unknown() {
        double[] all = new double[SIZE];
        Arrays.fill(all, Double.NaN);
        return all;
    }

    @Test
    void aSeriesThatLacksNothingIsLeftAlone() {
        assertThat(SkyCompletion.complete(whole)).isSameAs(whole);
    }

    @Test
    void globalLightIsTheSumOfTheOthers() {
        WeatherSeries made = SkyCompletion.complete(Sky.light(whole.info(), UNKNOWN, dni(), dhi()));
        sameLight(made);
        assertThat(made.notes())
                .containsExactly(
                        "given",
                        "missing global, beam or diffuse light was made from the other two in 72 of 72 intervals");
    }

    @Test
    void diffuseLightIsWhatTheBeamLeaves() {
        WeatherSeries made = SkyCompletion.complete(Sky.light(whole.info(), ghi(), dni(), UNKNOWN));
        sameLight(made);
        assertThat(made.notes()).last().asString().startsWith("missing global, beam or diffuse light was made");
    }

    @Test
    void beamIsWhatDiffuseLightLeavesAndThatIsSaid() {
        WeatherSeries made = SkyCompletion.complete(Sky.light(whole.info(), ghi(), UNKNOWN, dhi()));
        sameLight(made);
        assertThat(made.notes()).last().asString().endsWith("was made from the other two in 72 of 72 intervals");
    }

    /** The invented sky was split by Erbs at the mean height of the sun, so the same split must come back. */
    @Test
    void globalLightAloneIsSplit() {
        WeatherSeries made = SkyCompletion.complete(Sky.light(whole.info(), ghi(), UNKNOWN, UNKNOWN));
        sameLight(made);
        assertThat(made.notes())
                .containsExactly(
                        "given",
                        "diffuse and beam light were derived from global light (Erbs, Klein and Duffie 1982) in 72 of 72"
                                + " intervals");
    }

    @Test
    void onlyIntervalsThatLackSomethingAreCounted() {
        double[] dniWm2 = dni();
        double[] dhiWm2 = dhi();
        dniWm2[36] = Double.NaN;
        dhiWm2[36] = Double.NaN;
        dhiWm2[37] = Double.NaN;
        WeatherSeries made = SkyCompletion.complete(Sky.light(whole.info(), ghi(), dniWm2, dhiWm2));
        sameLight(made);
        assertThat(made.notes())
                .containsExactly(
                        "given",
                        "missing global, beam or diffuse light was made from the other two in 1 of 72 intervals",
                        "diffuse and beam light were derived from global light (Erbs, Klein and Duffie 1982) in 1 of 72"
                                + " intervals");
    }

    /** A beam that does not fit is no reason for diffuse light below zero, nor for a beam beyond the sun's. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 50, 1200, 1590})
    void whatIsMadeStaysPossible(double given) {
        double[] many = new double[SIZE];
        Arrays.fill(many, given);
        double[] half = new double[SIZE];
        Arrays.fill(half, given / 2);
        IntervalSun sun = IntervalSun.of(whole.info(), SIZE);
        for (WeatherSeries lacking : new WeatherSeries[] {
            Sky.light(whole.info(), half, many, UNKNOWN),
            Sky.light(whole.info(), many, UNKNOWN, half),
            Sky.light(whole.info(), many, UNKNOWN, UNKNOWN)
        }) {
            WeatherSeries made = SkyCompletion.complete(lacking);
            for (int row = 0; row < SIZE; row++) {
                assertThat(made.dhiWm2(row)).isBetween(0.0, made.ghiWm2(row));
                if (Double.isNaN(lacking.dniWm2(row))) {
                    assertThat(made.dniWm2(row)).isBetween(0.0, sun.extraterrestrialWm2(row));
                }
            }
        }
    }

    @Test
    void lightThatCannotBeMadeIsRefused() {
        double[] ghiWm2 = ghi();
        double[] dniWm2 = dni();
        ghiWm2[36] = Double.NaN;
        dniWm2[36] = Double.NaN;
        assertThatThrownBy(() -> SkyCompletion.complete(Sky.light(whole.info(), ghiWm2, dniWm2, dhi())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The weather of invented has no global light at 2026-07-02T12:00, nor both beam and diffuse"
                        + " light to make it from.");
    }

    /** Rounding of a product and a quotient: 1e-9 W/m² is far above it. */
    private void sameLight(WeatherSeries made) {
        for (int row = 0; row < SIZE; row++) {
            assertThat(made.ghiWm2(row)).isCloseTo(whole.ghiWm2(row), within(1e-9));
            assertThat(made.dniWm2(row)).isCloseTo(whole.dniWm2(row), within(1e-9));
            assertThat(made.dhiWm2(row)).isCloseTo(whole.dhiWm2(row), within(1e-9));
        }
    }

    private double[] ghi() {
        double[] all = new double[SIZE];
        Arrays.setAll(all, whole::ghiWm2);
        return all;
    }

    private double[] dni() {
        double[] all = new double[SIZE];
        Arrays.setAll(all, whole::dniWm2);
        return all;
    }

    private double[] dhi() {
        double[] all = new double[SIZE];
        Arrays.setAll(all, whole::dhiWm2);
        return all;
    }
}
