package ampdays.commission.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.commission.Sunlight;
import ampdays.scenario.ScenarioException;
import ampdays.sim.Van;
import ampdays.units.QuantityException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Light on the panels by what was told of it, against geometry and identities. */
class PanelSunTest {
    private static Van van() {
        return new Van()
                .with("place.latitude", "33.4°")
                .with("place.longitude", "-112.0°")
                .with("place.zone", "America/Phoenix")
                .with("solar.preset", "framed panels")
                .with("solar.power", "400 W");
    }

    private static PanelSun sun(Van van, String light, String time) throws ScenarioException, QuantityException {
        return PanelSun.of(Sunlight.parse(Optional.ofNullable(light), Optional.ofNullable(time)), van.variant());
    }

    /** Geometry: at noon of the longest day the sun stands 90° - 33.4° + 23.44° high; noon is at 12:28 plus 2 min there. */
    @Test
    void theSunStandsAsHighAsGeometrySays() throws ScenarioException, QuantityException {
        assertThat(sun(van(), null, "2026-06-21 12:30").heightDeg()).isCloseTo(80.04, within(0.05));
        assertThat(sun(van(), null, "2026-12-21 12:26").heightDeg()).isCloseTo(33.16, within(0.05));
    }

    /** By definition: flat panels get what a level meter reads, whatever the split. */
    @Test
    void flatPanelsGetWhatALevelMeterReads() throws ScenarioException, QuantityException {
        assertThat(sun(van(), "650 W/m² horizontal", "2026-06-21 10:00").planeWm2())
                .isCloseTo(650, within(1e-9));
    }

    /** By definition: what was read in the plane stays as it is, with a time or without. */
    @Test
    void whatIsReadInThePlaneStays() throws ScenarioException, QuantityException {
        assertThat(sun(van(), "650 W/m²", null)).isEqualTo(sun(van(), "650 W/m²", "2026-06-21 23:00"));
        assertThat(sun(van(), "650 W/m²", null).planeWm2()).isEqualTo(650);
        assertThat(sun(van(), "650 W/m²", null).workingShare()).isEqualTo(1);
    }

    /**
     * Geometry: panels raised square to the winter noon's sun get more than level ones, at most 1/sin of its height times as
     * much; and what comes in square loses nothing to incidence, while flat panels at 33° lose 0.05·(1/sin 33.16° - 1) = 4.1 %
     * of the beam.
     */
    @Test
    void raisedPanelsGetMoreOfALowSun() throws ScenarioException, QuantityException {
        Van raised = van().with("solar.tilt", "56.84°").with("solar.azimuth", "180°");
        PanelSun square = sun(raised, "500 W/m² horizontal", "2026-12-21 12:26");
        assertThat(square.planeWm2()).isBetween(1.4 * 500, 500 / Math.sin(Math.toRadians(33.16)));
        assertThat(square.workingShare()).isCloseTo(1, within(1e-4));
        PanelSun flat = sun(van(), "500 W/m² horizontal", "2026-12-21 12:26");
        assertThat(flat.workingShare()).isBetween(1 - 0.041, 1 - 0.5 * 0.041);
    }

    /** Common practice, no source: a clear summer noon gives 950 to 1,100 W/m² on the level. */
    @Test
    void aClearNoonIsAsBrightAsUsual() throws ScenarioException, QuantityException {
        PanelSun clear = sun(van(), null, "2026-06-21 12:30");
        assertThat(clear.planeWm2()).isBetween(950.0, 1100.0);
        assertThat(clear.offShare())
                .isGreaterThan(
                        sun(van(), "900 W/m² horizontal", "2026-06-21 12:30").offShare());
    }

    @Test
    void timesAtWhichPanelsCannotBeJudgedAreSaid() {
        assertThatThrownBy(() -> sun(van(), null, "2026-06-21 03:00"))
                .isInstanceOf(ScenarioException.class)
                .hasMessage(
                        "at 2026-06-21 03:00 the sun stands 23° below the horizon there, too low to judge panels. Take a"
                                + " time with the sun at least 10° high.");
        assertThatThrownBy(() -> sun(van(), "900 W/m² horizontal", "2026-12-21 12:26"))
                .isInstanceOf(ScenarioException.class)
                .hasMessage(
                        "at 2026-12-21 12:26 the sun stands 33° high and gives 773 W/m² on the level above the air, less"
                                + " than the 900 W/m² that were told. Check the time, and that the meter lay level; light in the"
                                + " plane of the panels is told without the word horizontal.");
    }
}
