package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.cabin.CabinPhysics;
import ampdays.cabin.CabinSpec;
import ampdays.results.HeatAfterLoss;
import ampdays.scenario.Failure;
import ampdays.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources are named beside the checks. */
class CoolingLossTest {
    private static HeatAfterLoss heat(Van van, WeatherSeries weather, double keptC) {
        return CoolingLoss.worst(parked(van, weather), keptC);
    }

    private static RunPlan parked(Van van, WeatherSeries weather) {
        return new RunPlan.Maker(60).plan(Failure.parkedInTheSun(van.variant()), weather);
    }

    /** 900 W/m² from 11:00 on, in light wind. */
    private static WeatherSeries noon(double airC) {
        return Van.weather(hour -> airC, hour -> hour >= 11 && hour < 16 ? 900 : 0, 2);
    }

    /**
     * Closed form of one node that strives for rest, T = Tr - (Tr - Ts) exp(-k t / C): a van without sun, in air of 45 °C, whose
     * furniture is so heavy and so loosely coupled (1 W/K) that its temperature stays.
     */
    @Test
    void withoutSunItIsAnExponential() {
        Van van = new Van()
                .with("trip.days", "2")
                .with("cabin.air-to-mass", "1 W/K")
                .with("cabin.air-changes", "0 /h")
                .with("cabin.mass-capacity", "100000 kJ/K");
        CabinSpec spec = van.variant().design().cabin();
        double uaWK = CabinPhysics.envelopeWK(spec, true);
        HeatAfterLoss heat = heat(van, Van.dark(45), 25);
        double massC = heat.keptC();
        double restC = (uaWK * 45 + skyW(van, 45) + 1 * massC) / (uaWK + 1);
        for (int minute : new int[] {10, 60, 300}) {
            double expected = restC - (restC - heat.keptC()) * Math.exp(-(uaWK + 1) * minute * 60 / spec.airJK());
            assertThat(heat.cabinC(minute)).isCloseTo(expected, within(0.02));
        }
    }

    /** What the roof loses to the sky without sun, W, below 0. */
    private static double skyW(Van van, double outsideC) {
        return parked(van, Van.dark(outsideC)).cabin().faceGainW(0);
    }

    /**
     * Measured soaks of closed passenger cars in the sun: C. McLaren, J. Null and J. Quinn, 2005, Pediatrics 116, e109; A.
     * Grundstein, J. Dowd and V. Meentemeyer, 2010, BAMS 91, 1183. Band of both, from the outside air, whatever it is: 8 to 13,
     * 14 to 20, 19 to 27 K after 10, 30 and 60 min. Cooled until then, seats and linings are a little cooler than the air.
     */
    @ParameterizedTest
    @ValueSource(doubles = {22, 28, 36})
    void aGlazedCabFollowsTheMeasuredSoaks(double airC) {
        HeatAfterLoss heat = CoolingLoss.at(parked(CabinStudiesTest.car(85), noon(airC)), airC, 659);
        assertThat(heat.keptC()).isCloseTo(airC, within(1.0));
        assertThat(heat.cabinC(11) - heat.keptC()).isBetween(8.0, 13.0);
        assertThat(heat.cabinC(31) - heat.keptC()).isBetween(14.0, 20.0);
        assertThat(heat.cabinC(61) - heat.keptC()).isBetween(19.0, 27.0);
    }

    /** Identity: with all temperatures some kelvin higher the rise is the same; the first study found it so. */
    @Test
    void theOutsideAirDropsOutOfTheRise() {
        HeatAfterLoss cool = CoolingLoss.at(parked(CabinStudiesTest.car(85), noon(22)), 20, 700);
        HeatAfterLoss warm = CoolingLoss.at(parked(CabinStudiesTest.car(85), noon(34)), 32, 700);
        for (int minute = 0; minute <= 120; minute += 20) {
            assertThat(warm.cabinC(minute) - 34).isCloseTo(cool.cabinC(minute) - 22, within(0.01));
        }
    }

    /** Common sense of the same studies: a white, insulated van with more air in it warms more slowly than a car. */
    @Test
    void aVanIsSlower() {
        HeatAfterLoss car = heat(CabinStudiesTest.car(85), noon(30), 25);
        HeatAfterLoss van = heat(new Van().with("trip.days", "2").with("cabin.colour", "white"), noon(30), 25);
        assertThat(van.minutesTo35C() > car.minutesTo35C() || Double.isNaN(van.minutesTo35C()))
                .isTrue();
        assertThat(car.minutesTo32C()).isLessThan(car.minutesTo35C());
        assertThat(car.minutesTo35C()).isLessThan(car.minutesTo40C());
    }

    /** Definition: the curve passes the limits in the minutes that are told, and the van was kept at its temperature. */
    @Test
    void theMinutesAreThoseOfTheCurve() {
        HeatAfterLoss heat = heat(CabinStudiesTest.car(85), noon(35), 26);
        assertThat(heat.keptC()).isCloseTo(26, within(1e-9));
        assertThat(heat.cabinC((int) heat.minutesTo40C())).isGreaterThan(40);
        assertThat(heat.cabinC((int) heat.minutesTo40C() - 1)).isLessThanOrEqualTo(40);
        assertThat(heat.cabinC()).hasSize(HeatAfterLoss.WATCHED_H * 60 + 1);
    }

    /** Definition: a cool day passes no limit. */
    @Test
    void aCoolDayPassesNoLimit() {
        HeatAfterLoss heat = heat(new Van().with("trip.days", "2"), Van.dark(10), 20);
        assertThat(heat.minutesTo32C()).isNaN();
        assertThat(heat.minutesTo40C()).isNaN();
    }
}
