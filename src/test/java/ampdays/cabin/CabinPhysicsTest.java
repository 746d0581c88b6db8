package ampdays.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CabinPhysicsTest {
    /**
     * Source: ASHRAE Handbook of Fundamentals, sol-air temperature (as reproduced): 1,000 W/m² on a roof at the standard
     * film of 17 W/(m² K) and 4 K of sky loss: +49 K at absorptance 0.9, +14 K at 0.3, whole kelvins.
     */
    @Test
    void solAirOnARoof() {
        double sky = CabinPhysics.SKY_LOSS_WM2;
        assertThat(CabinPhysics.solAirExcessK(0.9, 1000, sky, 17)).isCloseTo(49, within(0.5));
        assertThat(CabinPhysics.solAirExcessK(0.3, 1000, sky, 17)).isCloseTo(14, within(0.5));
    }

    /** Source: common practice, no source: bare steel 4 to 6, 25 to 30 mm of foam 1.0 to 1.3 W/(m² K) with bridges. */
    @Test
    void transmittanceOfVanWalls() {
        assertThat(CabinPhysics.transmittanceWm2K(0, 0.035, 0)).isBetween(4.0, 6.0);
        assertThat(CabinPhysics.transmittanceWm2K(0.025, 0.035, 0.2)).isBetween(1.0, 1.35);
    }

    /** Source: ASHRAE Handbook of Fundamentals 2013, chapter 18, table 1: 70 + 45 W and 70 + 35 W; at 27 °C 20 % over. */
    @Test
    void peopleGiveHeatAndMoisture() {
        assertThat(PeopleHeat.sensibleW(PeopleHeat.shiftShare(24))).isEqualTo(70);
        assertThat(PeopleHeat.latentW(PeopleHeat.shiftShare(24), false)).isEqualTo(45);
        assertThat(PeopleHeat.latentW(PeopleHeat.shiftShare(24), true)).isEqualTo(35);
        assertThat(PeopleHeat.sensibleW(PeopleHeat.shiftShare(27))).isCloseTo(56, within(1e-9));
        assertThat(PeopleHeat.latentW(PeopleHeat.shiftShare(27), false)).isCloseTo(59, within(1e-9));
    }

    /** Air of 1.2 kg/m³ and 1,000 J/(kg K): 13 m³ once an hour is 4.3 W/K. */
    @Test
    void airChanges() {
        assertThat(CabinPhysics.airChangesWK(13, 1, 1)).isCloseTo(4.33, within(0.01));
    }

    /**
     * Source: textbook orifice, Q = A √(2 Δp/ρ). Warm air of 2.5 m, half of it above the neutral level, presses with
     * ρ g (2.5 m/2) ΔT/T/2 on average over the gaps; wind presses with a quarter of ρ v²/2 at most behind obstructions.
     * The correlation must lie between a third of that flow and that flow.
     */
    @Test
    void leakLiesBelowTheOrificeFlow() {
        double warmthPa = 1.2 * 9.81 * 1.25 * 20 / 300;
        double byWarmth = 0.01 * Math.sqrt(2 * warmthPa / 1.2);
        assertThat(CabinPhysics.leakM3S(0.01, 20, 0)).isBetween(byWarmth / 3, byWarmth);
        assertThat(CabinPhysics.leakM3S(0.01, -20, 0)).isEqualTo(CabinPhysics.leakM3S(0.01, 20, 0));
        double byWind = 0.01 * Math.sqrt(0.25) * 4;
        assertThat(CabinPhysics.leakM3S(0.01, 0, 4)).isBetween(byWind / 4, byWind);
    }
}
