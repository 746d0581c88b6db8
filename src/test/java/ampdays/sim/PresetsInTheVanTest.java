package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.PresetReader;
import ampdays.results.Account;
import ampdays.results.RunResult;
import ampdays.scenario.Presets;
import ampdays.weather.WeatherSeries;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every generic class builds into a van that lives through a day of sun, heat, driving and a hook-up. */
class PresetsInTheVanTest {
    private static final int HOT_C = 38;
    private static final double SUN_HOURS = 6;

    private static final String DAY = """
            00:00 park shade hook-up, asleep
            07:00 park sun, awake
            10:00 drive highway, aboard
            12:00 park sun, awake
            22:00 park shade hook-up, asleep""";

    static Stream<Arguments> all() {
        Presets presets = PresetReader.presets();
        return presets.bySection().keySet().stream()
                .flatMap(kind -> presets.of(kind).stream().map(p -> Arguments.of(kind, p.name())));
    }

    private static WeatherSeries hot() {
        return Van.weather(hour -> HOT_C, hour -> hour >= 9 && hour < 15 ? 1000 : 0);
    }

    /** A van with every part, the part in question from its preset. */
    private static Van van(String kind, String name) {
        Van van = new Van()
                .with("trip.days", "1")
                .with("trip.timetable.all days", DAY)
                .with("cabin.set.asleep", "24 °C")
                .with("battery.capacity", "2000 Ah") // takes what all sources give together, lead-acid too
                .with("battery.start", "50 %")
                .with("cooling.preset", "variable-speed roof unit")
                .with("refrigerator.preset", "90 L compressor")
                .with("inverter.preset", "3,000 W class")
                .with("solar.power", "400 W")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "40 A")
                .with("second-alternator.preset", "medium frame")
                .with("shore-charger.preset", "50 A class")
                .with("loads.laptop.draw", "60 W")
                .with("loads.laptop.on", "inverter");
        return van.with(kind + ".preset", name);
    }

    /** Identity: energy in is energy out, losses and change of store; every part has done something. */
    @ParameterizedTest
    @MethodSource("all")
    void livesThroughADay(String kind, String name) {
        RunResult result = van(kind, name).run(hot());
        double throughputWh = result.energy().servedWh() + result.energy().lossesWh();
        assertThat(result.ledgerResidualWh()).isCloseTo(0, within(1e-9 * throughputWh));
        assertThat(List.of(
                        Account.SOLAR,
                        Account.SHORE,
                        Account.FACTORY_ALTERNATOR,
                        Account.SECOND_ALTERNATOR,
                        Account.COOLING,
                        Account.REFRIGERATOR))
                .allSatisfy(account -> assertThat(result.energy().wh(account)).isPositive());
        assertThat(result.energy().wh(Account.SOLAR)).isLessThan(400 * SUN_HOURS);
    }

    /** What the scenario says goes before what the preset says: half the rating gives less than the whole. */
    @ParameterizedTest
    @CsvSource({
        "second-alternator, large frame, rated, 60 A, SECOND_ALTERNATOR",
        "shore-charger, 80 A class, rated, 5 A, SHORE",
        "refrigerator, 130 L upright, leak, 0.3 W/K, REFRIGERATOR",
        "solar, bonded panels, dirt, 60 %, SOLAR",
        "cooling, mains roof unit, cop, 9, COOLING"
    })
    void anOverriddenValueWins(String kind, String name, String key, String own, Account account) {
        double asPreset = van(kind, name).run(hot()).energy().wh(account);
        double overridden =
                van(kind, name).with(kind + "." + key, own).run(hot()).energy().wh(account);
        assertThat(overridden).isLessThan(0.8 * asPreset);
    }

    /**
     * Source: common practice, no source: a compressor refrigerator of 50 to 130 L takes 20 to 35 Ah a day when it is
     * mild (21 °C) and 40 to 75 Ah at 38 °C, and a freezer box 25 to 60 Ah; a small box less.
     */
    @ParameterizedTest
    @CsvSource({
        "50 L compressor, 21, 10, 35",
        "50 L compressor, 38, 20, 75",
        "90 L compressor, 21, 20, 35",
        "90 L compressor, 38, 40, 75",
        "80 L chest, 21, 15, 35",
        "80 L chest, 38, 30, 75",
        "130 L upright, 21, 20, 45",
        "130 L upright, 38, 40, 90",
        "40 L chest freezer, 21, 25, 60",
        "40 L chest freezer, 30, 25, 60",
        "30 L compact, 21, 5, 35"
    })
    void refrigeratorsTakeTheAmpHoursOfTheTrade(String name, double airC, double leastAh, double mostAh) {
        double days = 5;
        RunResult result = new Van()
                .with("trip.days", "5")
                .with("trip.timetable.all days", "07:00 park open, awake\n23:00 park open, asleep")
                .with("cabin.people", "0")
                .with("refrigerator.preset", name)
                .with("battery.capacity", "800 Ah")
                .run(Van.dark(airC));
        double ampHours = result.energy().wh(Account.REFRIGERATOR) / 13.2 / days;
        assertThat(ampHours).isBetween(leastAh, mostAh);
    }
}
