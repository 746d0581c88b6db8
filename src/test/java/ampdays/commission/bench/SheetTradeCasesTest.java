package ampdays.commission.bench;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Judge;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import ampdays.commission.Sunlight;
import ampdays.commission.Symptom;
import ampdays.scenario.ScenarioException;
import ampdays.sim.Van;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A usual van on a hot day against what the trade expects to read: common practice, no source. */
class SheetTradeCasesTest {
    private static final double RATED_A = 280;
    private static final double SOLAR_W = 400;

    private static Van van() {
        return new Van()
                .with("battery.capacity", "600 Ah (datasheet)")
                .with("second-alternator.preset", "large frame")
                .with("second-alternator.rated", "280 A (datasheet)")
                .with("factory-alternator.preset", "factory 220 A class")
                .with("factory-alternator.charger", "50 A (datasheet)")
                .with("solar.preset", "framed panels")
                .with("solar.power", "400 W (datasheet)")
                .with("inverter.preset", "2,000 W class")
                .with("cooling.preset", "variable-speed roof unit")
                .with("refrigerator.preset", "90 L compressor")
                .load("alarms", "0.3 A (measured)", "always")
                .load("pump", "8 A (datasheet)", "awake");
    }

    private static Sheet sheet() throws ScenarioException {
        return SheetMaker.sheet("test", "test", van().values(), new Conditions(35, 65, 0.4, Sunlight.inPlane(1000)));
    }

    private static Map<String, Item> items(Sheet sheet) {
        return sheet.items().collect(Collectors.toMap(Item::id, Function.identity()));
    }

    @Test
    void predictionsLieWhereTheTradeExpectsThem() throws ScenarioException {
        Map<String, Item> items = items(sheet());
        // lithium iron phosphate at rest in its middle: 13.2 to 13.4 V overlaps what passes
        Item rest = items.get("rest.voltage");
        assertThat(rest.band().passFrom()).isLessThan(13.4);
        assertThat(rest.band().passTo()).isGreaterThan(13.2);
        // base draw up to 0.3 to 0.6 A, more than 1 A is to be found
        assertThat(items.get("rest.current").predicted()).isBetween(0.3, 0.6);
        assertThat(items.get("rest.current").band().passTo()).isBetween(0.6, 1.0);
        // an inverter of 2 kW without load 1 to 4 A
        assertThat(items.get("inverter.idle").predicted()).isBetween(1.0, 4.5);
        // a drop of at most 3 % (0.4 V)
        assertThat(items.get("load-2.drop").band().passTo()).isBetween(0.37, 0.40);
        // large-frame alternator, cold idle: 40 to 65 % of the nameplate; cold at speed up to 100 %
        assertThat(items.get("second.idle").predicted() / RATED_A).isBetween(0.40, 0.65);
        assertThat(items.get("second.raised").predicted() / RATED_A).isBetween(0.60, 1.0);
        // hot at a fast idle of 1,100 to 1,300 rpm: 50 to 70 %
        assertThat(items.get("hot.current").predicted() / RATED_A).isBetween(0.50, 0.70);
        // case below 105 to 110 °C
        assertThat(items.get("hot.case").predicted()).isLessThan(110);
        // DC-DC charger: input at least 13.0 V, at most 0.4 V lost, at least 90 % of its setting
        assertThat(items.get("charger.raised-input").predicted()).isGreaterThan(13.0);
        assertThat(items.get("charger.raised-drop").predicted()).isLessThan(0.45);
        assertThat(items.get("charger.raised-output").predicted()).isGreaterThan(45);
        // panels in clear high sun, hot: 65 to 80 % of the rating
        assertThat(items.get("solar.power").predicted() / SOLAR_W).isBetween(0.65, 0.80);
    }

    /** 50 mV a joint and 150 mV a breaker at 100 A. */
    @Test
    void limitsOfJointsFollowTheCurrent() throws ScenarioException {
        Map<String, Item> items = items(sheet());
        double hundreds = items.get("hot.current").predicted() / 100;
        assertThat(items.get("joint.worst").band().passTo()).isBetween(50 * hundreds, 50 * hundreds + 1);
        assertThat(items.get("joint.breaker").band().passTo()).isBetween(150 * hundreds, 150 * hundreds + 1);
        assertThat(items.get("joint.lug").band().passTo()).isEqualTo(30);
        assertThat(items.get("joint.twin").band().passTo()).isEqualTo(15);
    }

    /** Nothing runs before it was looked at; the warning path is proven before large currents flow for long. */
    @Test
    void theOrderIsSafe() throws ScenarioException {
        List<String> titles = sheet().steps().stream().map(Step::title).toList();
        assertThat(titles)
                .containsExactly(
                        "Look before anything runs",
                        "At rest",
                        "Inverter without load",
                        "Alone: pump",
                        "Factory alternator and DC-DC charger, cold",
                        "Second alternator, cold",
                        "Protection warning path",
                        "Hot soak at fast idle",
                        "Joints and breaker under load",
                        "Carbon monoxide",
                        "Road run",
                        "Panels",
                        "Air conditioner's pull-down",
                        "Refrigerator's day",
                        "Low-voltage path",
                        "Meter set-up",
                        "Hand-over");
    }

    @Test
    void stepsOfPartsThatAreNotThereAreLeftOut() throws ScenarioException {
        Sheet sheet =
                SheetMaker.sheet("test", "test", new Van().values(), new Conditions(15, 15, 0.5, Sunlight.NOT_TOLD));
        assertThat(sheet.steps().stream().map(Step::title))
                .containsExactly(
                        "Look before anything runs", "At rest", "Low-voltage path", "Meter set-up", "Hand-over");
    }

    /** Whatever side a reading can leave its band on, there is something to look for. */
    @Test
    void everyDeviationHasACause() throws ScenarioException {
        sheet().items().filter(item -> item.symptom() != Symptom.CHECK).forEach(item -> {
            if (Double.isFinite(item.band().passTo())) {
                assertThat(causes(item, item.band().passTo() + 1))
                        .as(item.id() + " too much")
                        .isNotEmpty();
            }
            if (Double.isFinite(item.band().passFrom())) {
                assertThat(causes(item, item.band().passFrom() - 1))
                        .as(item.id() + " too little")
                        .isNotEmpty();
            }
        });
    }

    private static List<?> causes(Item item, double reading) {
        Sheet one = new Sheet(
                "test",
                "test",
                new Conditions(35, 65, 0.4, Sunlight.inPlane(1000)),
                List.of(new Step("", "", "", List.of(item))),
                List.of());
        return Judge.of(one, Map.of(item.id(), reading)).get(0).causes();
    }

    /** Common practice, no source: a lead-acid bank gives off gas, rests for hours, and has no protection that opens. */
    @Test
    void aLeadAcidBankIsAskedForItsGasAndNotForAProtection() throws ScenarioException {
        Van lead = van().with("battery.preset", "lead-acid AGM 12 V");
        Sheet sheet =
                SheetMaker.sheet("test", "test", lead.values(), new Conditions(35, 65, 0.4, Sunlight.inPlane(1000)));
        assertThat(sheet.items().map(Item::id)).contains("look.gas").noneMatch(id -> id.startsWith("warning."));
        assertThat(sheet.steps().get(1).how()).contains("at least four hours after the last charge");
    }
}
