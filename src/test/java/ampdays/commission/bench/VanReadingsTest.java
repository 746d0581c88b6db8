package ampdays.commission.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.commission.Conditions;
import ampdays.commission.Sunlight;
import ampdays.scenario.ScenarioException;
import ampdays.sim.Van;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What meters read, against closed forms and the cell maker's table. */
class VanReadingsTest {
    private static final Conditions MILD = new Conditions(25, 60, 0.6, Sunlight.inPlane(1000));

    private static VanReadings read(Van van, Conditions told) throws ScenarioException {
        var variant = van.with("battery.start", "60 %").variant();
        Day day = Day.supposed(told, PanelSun.of(told.sun(), variant));
        return new VanReadings(variant, day, VanReadings.Plan.of(variant, day));
    }

    private static Map<String, Double> values(Van van) throws ScenarioException {
        return read(van, MILD).values();
    }

    /** The cell maker's table (OpenCircuit): 3.310 V at 60 % and 25 °C; four cells in series. */
    @Test
    void restingVoltageIsThatOfTheTable() throws ScenarioException {
        assertThat(values(new Van().lossless()).get("rest.voltage")).isCloseTo(4 * 3.310, within(1e-4));
        assertThat(values(new Van().lossless().with("battery.preset", "lithium iron phosphate 24 V"))
                        .get("rest.voltage"))
                .isCloseTo(8 * 3.310, within(1e-4));
    }

    /** Ohm's law: 100 A more through 4 mΩ lower the bank by 0.4 V; resistance at 25 °C. A step's drift of the table adds 0.04 %. */
    @Test
    void aLoadLowersTheBankByCurrentTimesResistance() throws ScenarioException {
        Map<String, Double> read =
                values(new Van().lossless().with("battery.resistance", "4 mΩ").load("heater", "100 A", "awake"));
        double baseA = read.get("rest.current");
        assertThat(read.get("load-1.current") - baseA).isCloseTo(100, within(1e-9));
        assertThat(read.get("rest.voltage") - read.get("load-1.voltage")).isCloseTo(0.4, within(0.002));
    }

    /** Power divided by the bank's own voltage under load; an inverter adds its idle draw and its losses. */
    @Test
    void wattsCountAtTheVoltageUnderLoad() throws ScenarioException {
        Map<String, Double> read = values(new Van()
                .with("inverter.preset", "2,000 W class")
                .with("inverter.idle", "12 W")
                .with("inverter.linear-loss", "5 %")
                .with("inverter.square-loss", "0 %")
                .load("kettle", "1000 W", "awake")
                .with("loads.kettle.on", "inverter"));
        double currentA = read.get("load-1.current") - read.get("rest.current");
        assertThat(currentA * read.get("load-1.voltage")).isCloseTo(1000 * 1.05 + 12, within(1e-6));
    }

    /** Ohm's law along both runs of cable, both ways. */
    @Test
    void dropsAreCurrentTimesCable() throws ScenarioException {
        Van van = new Van()
                .with("second-alternator.preset", "large frame")
                .with("second-alternator.cable", "3 mΩ")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "40 A")
                .with("factory-alternator.charger-efficiency", "95 %")
                .with("factory-alternator.cable", "8 mΩ");
        Map<String, Double> read = values(van);
        assertThat(read.get("hot.cable")).isCloseTo(3 * read.get("hot.current"), within(1e-9));
        double dropV = read.get("charger.raised-drop");
        assertThat(read.get("charger.raised-input")).isCloseTo(14.0 - dropV, within(1e-9));
        double inputW = dropV / 0.008 * read.get("charger.raised-input");
        double bankV = 13.29;
        assertThat(inputW * 0.95 / read.get("charger.raised-output")).isCloseTo(bankV, within(0.15));
    }

    /**
     * Sandia's equation with a bonded panel in calm air of 2 m/s: 1000 exp(-2.81 - 0.0455·2) = 55.0 K over 25 °C; then
     * -0.40 %/K and losses by hand: 400·(1 - 0.004·55.0)·0.98·0.97·0.98·0.96.
     */
    @Test
    void panelsFollowTheirTemperature() throws ScenarioException {
        Map<String, Double> read = values(new Van()
                .with("solar.preset", "bonded panels")
                .with("solar.power", "400 W")
                .with("solar.temperature-coefficient", "-0.40 %/K")
                .with("solar.mismatch", "2 %")
                .with("solar.wiring", "3 %")
                .with("solar.tracking", "98 %")
                .with("solar.conversion", "96 %")
                .with("solar.dirt", "0 %"));
        double riseK = 1000 * Math.exp(-2.81 - 0.0455 * 2);
        double expectedW = 400 * (1 - 0.004 * riseK) * 0.98 * 0.97 * 0.98 * 0.96;
        assertThat(read.get("solar.power")).isCloseTo(expectedW, within(0.01));
    }

    /** By definition of a regulator's cap; a bank that takes all. */
    @Test
    void theRegulatorsCapIsReadAndNamed() throws ScenarioException {
        VanReadings read = read(
                new Van()
                        .with("battery.capacity", "2000 Ah")
                        .with("second-alternator.preset", "large frame")
                        .with("second-alternator.cap", "60 A"),
                MILD);
        assertThat(read.values().get("second.raised")).isCloseTo(60, within(1e-9));
        assertThat(read.heldBy()).containsEntry("second.raised", "the regulator's cap");
    }

    /** A bank of 100 Ah at 50 A would be full long before three quarters of an hour are over. */
    @Test
    void theRoadRunEndsBeforeTheBankIsFull() throws ScenarioException {
        assertThat(read(
                                new Van()
                                        .with("battery.capacity", "2000 Ah")
                                        .with("second-alternator.preset", "small frame"),
                                MILD)
                        .roadMinutes())
                .isEqualTo(45);
        assertThat(read(
                                new Van()
                                        .with("battery.capacity", "100 Ah")
                                        .with("second-alternator.preset", "small frame"),
                                MILD)
                        .roadMinutes())
                .isEqualTo(10);
    }

    @Test
    void whatTheVanDoesNotHaveIsNotRead() throws ScenarioException {
        assertThat(values(new Van())).containsOnlyKeys("rest.voltage", "rest.current");
    }
}
