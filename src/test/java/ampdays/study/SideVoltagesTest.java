package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import ampdays.results.WiringRule;
import ampdays.scenario.CircuitOffer;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Van;
import ampdays.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A drop is a share of the nominal voltage of its own side, and a fuse interrupts what it does there: Ohm's law, and the
 * definition of the percentage in ABYC E-11 and ISO 13297 (named, not quoted). 12 V vehicles under banks of 24 and 48 V.
 */
class SideVoltagesTest {
    private static Van driving(String bank) {
        return new Van()
                .with("trip.timetable.all days", "00:00 drive highway, aboard")
                .with("trip.days", "1")
                .with("battery.preset", bank)
                .with("battery.start", "20 %")
                .with("solar.power", "400 W")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "30 A");
    }

    private static Van wired() {
        return circuit(
                circuit(
                        circuit(driving("lithium iron phosphate 48 V"), "in", "start battery", "DC-DC charger"),
                        "roof",
                        "solar panels",
                        "solar controller"),
                "out",
                "DC-DC charger",
                "bank");
    }

    private static Van circuit(Van van, String name, String from, String to) {
        String path = "circuits." + name + ".";
        return van.with(path + "from", from)
                .with(path + "to", to)
                .with(path + "length", "6.5 m")
                .with(path + "conductor", "25 mm²")
                .with(path + "protection", "post fuse")
                .with(path + "rating", "100 A");
    }

    private static WeatherSeries sunny() {
        return Van.weather(hour -> 20, hour -> 800);
    }

    private static WiringResult check(Values values, WeatherSeries weather, boolean offered) {
        try {
            Variant variant = VariantBuilder.build("test", values);
            return WiringCheck.of(new RunPlan.Maker(60).plan(variant, weather), offered)
                    .result();
        } catch (ScenarioException e) {
            throw new IllegalStateException(e.problems().toString(), e);
        }
    }

    private static WiringRow row(WiringResult result, String name) {
        return result.rows().stream()
                .filter(r -> r.circuit().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void assertDropOf(double nominalV, WiringRow row) {
        assertThat(row.dropV()).isPositive();
        assertThat(row.dropShare()).as(row.circuit()).isCloseTo(row.dropV() / nominalV, within(1e-12));
    }

    /** 1.3 V of a 12.8 V start battery is a tenth of it, whatever bank lies behind the charger. */
    @Test
    void dropsAreSharesOfTheirOwnSide() {
        WiringResult result = check(wired().with("solar.string-voltage", "36 V").values(), sunny(), false);
        assertDropOf(12.8, row(result, "in"));
        assertDropOf(36, row(result, "roof"));
        assertDropOf(51.2, row(result, "out"));
        assertThat(row(result, "in").dropShare()).isGreaterThan(0.03);
        assertThat(result.findings())
                .filteredOn(f -> f.rule() == WiringRule.DROP)
                .extracting(WiringFinding::where)
                .containsExactly("in");
        assertThat(result.findings())
                .filteredOn(f -> f.rule() == WiringRule.DROP)
                .allMatch(f -> f.measured().contains(" % of 12.8 V there and back"));
    }

    /** Ratings of trade articles: a post fuse interrupts 10 kA at 14 V, 2 kA at 58 V. */
    @Test
    void fusesInterruptWhatTheyDoAtTheVoltageOfTheirSide() {
        WiringResult result = check(wired().values(), Van.dark(20), false);
        assertThat(row(result, "in").interruptA()).isEqualTo(10_000);
        assertThat(row(result, "out").interruptA()).isBetween(2000.0, 4000.0);
    }

    /** A lorry's alternator holds 28 V, so its start battery is one of 24 V. */
    @Test
    void aVehicleOfTwentyFourVolts() {
        WiringResult result =
                check(wired().with("factory-alternator.set-point", "28 V").values(), Van.dark(20), false);
        assertDropOf(25.6, row(result, "in"));
    }

    /** A circuit of panels may stay in a design that has none; it is left out. */
    @Test
    void aRoofWithoutPanels() {
        Van van = circuit(new Van().with("trip.days", "1"), "roof", "solar panels", "solar controller");
        assertThat(check(van.values(), Van.dark(20), false).leftOut()).containsExactly("roof");
    }

    /** What is offered carries what flows: a charger takes as many times its output as the bank is above the vehicle. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "lithium iron phosphate 12 V",
                "lithium iron phosphate 24 V",
                "lithium iron phosphate 48 V",
                "lead-acid AGM 12 V",
                "lead-acid AGM 24 V"
            })
    void offeredCircuitsStandTheirOwnCheck(String bank) {
        Values values = driving(bank).values();
        Values offered = CircuitOffer.added(values, driving(bank).variant().design());
        WiringResult result = check(offered, sunny(), true);
        assertThat(row(result, "start battery to charger").mostA()).isGreaterThan(30);
        assertThat(result.findings())
                .filteredOn(f -> f.where().equals("start battery to charger")
                        || f.where().equals("panels to controller"))
                .isEmpty();
    }
}
