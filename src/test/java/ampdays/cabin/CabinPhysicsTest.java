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
        assertThat(PeopleHeat.sensibleW(24)).isEqualTo(70);
        assertThat(PeopleHeat.latentW(24, false)).isEqualTo(45);
        assertThat(PeopleHeat.latentW(24, true)).isEqualTo(35);
        assertThat(PeopleHeat.sensibleW(27)).isCloseTo(56, within(1e-9));
        assertThat(PeopleHeat.latentW(27, false)).isCloseTo(59, within(1e-9));
    }

    /** Air of 1.2 kg/m³ and 1,000 J/(kg K): 13 m³ once an hour is 4.3 W/K. */
    @Test
    void airChanges() {
        assertThat(CabinPhysics.airChangesWK(13, 1, 1)).isCloseTo(4.33, within(0.01));
    }
}
