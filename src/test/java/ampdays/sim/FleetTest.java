package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Vans side by side come to what each comes to by itself, to the last bit. Source: the single run, which the other tests of
 * this package hold to their references.
 */
class FleetTest {
    /** The smallest run empty, shed loads and are cut off; the largest refuse the sun. */
    private static final List<String> BANKS =
            List.of("40 Ah", "100 Ah", "180 Ah", "320 Ah", "560 Ah", "1000 Ah", "1800 Ah", "9000 Ah");

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, 24);
    }

    private static List<RunPlan> plans(Stream<Van> vans, WeatherSeries weather) {
        RunPlan.Maker maker = new RunPlan.Maker(60);
        WeatherSeries complete = SkyCompletion.complete(weather);
        return vans.map(van -> maker.plan(van.variant(), complete)).toList();
    }

    private static void assertSame(List<RunPlan> plans) {
        List<RunResult> bySelf = plans.stream().map(Simulator::run).toList();
        List<RunResult> sideBySide = Fleet.run(plans, 2);
        assertThat(sideBySide).hasSameSizeAs(bySelf);
        for (int i = 0; i < bySelf.size(); i++) {
            assertThat(sideBySide.get(i)).as("van " + i).isEqualTo(bySelf.get(i));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyVanWithManyBanks(long seed) {
        assertSame(plans(
                BANKS.stream().map(bank -> RandomVan.any(seed).with("battery.capacity", bank)),
                RandomVan.weather(seed)));
    }

    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103, 104})
    void anyVanWithASecondAlternator(long seed) {
        assertSame(plans(
                BANKS.stream()
                        .map(bank -> RandomVan.withSecondAlternator(RandomVan.any(seed), seed)
                                .with("battery.capacity", bank)),
                RandomVan.weather(seed)));
    }

    /** Every component, fans with a wish of their own, loads that are shed, warm food once a day. */
    @Test
    void theFullVan() {
        assertSame(plans(
                IntStream.range(0, 12)
                        .mapToObj(i -> FullVan.variableSpeed()
                                .load("vent", "2 A", "always")
                                .with("loads.vent.airflow", "300 m³/h")
                                .with("cabin.airing", "24 °C")
                                .with("loads.monitors.shed", "first")
                                .with("refrigerator.shopping", "200 Wh")
                                .with("battery.capacity", 100 + 90 * i + " Ah")
                                .with("battery.start", 30 + 5 * i + " %")),
                FullVan.weather()));
    }

    /** What keeps a van from going beside others for a while, or for good. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "battery.charge-limit | 12 A",
                "battery.discharge-limit | 25 A",
                "battery.strings | 3",
                "battery.link | 3 mΩ",
                "battery.cut-out-voltage | 12.9 V",
                "battery.charge-limits | 0 °C 20 A, 10 °C 100 A, 30 °C 5 A, 45 °C 0 A",
                "battery.health-resistance | 400 %",
                "battery.taper-from | 60 %",
                "battery.tail | 0.3 C",
                "battery.charge-hot | 32 °C",
                "battery.charge-cold | 29 °C",
                "battery.discharge-hot | 34 °C",
                "battery.preset | lead-acid AGM 12 V",
                "cabin.airing | off",
                "refrigerator.shed | first",
                "cooling.shed-below | 80 %",
                "cooling.step-down-voltage | 13.1 V",
                "cooling.cut-out-voltage | 11.7 V",
                "cooling.curves | split",
                "solar.controller | 8 A",
                "solar.power | 2500 W",
                "shore-charger | none",
                "second-alternator | none"
            })
    void whatIsSpecial(String path, String text) {
        assertSame(plans(
                BANKS.stream()
                        .map(bank -> FullVan.variableSpeed()
                                .with("battery.capacity", bank)
                                .with(path, text)),
                FullVan.weather()));
    }

    /** Sun beyond the limit of charge opens the protection for a while. */
    @Test
    void overCurrentOpensTheProtection() {
        assertSame(plans(
                IntStream.range(0, 8)
                        .mapToObj(i -> FullVan.variableSpeed()
                                .with("solar.power", "2400 W")
                                .with("battery.over-current", "trips")
                                .with("battery.charge-limit", 8 + 8 * i + " A")
                                .with("battery.start", "50 %")),
                FullVan.weather()));
    }

    /** Those that cannot go side by side, or are not alike, are run by themselves; all come back in their order. */
    @Test
    void theOrderIsKept() {
        assertSame(plans(
                IntStream.range(0, 20)
                        .mapToObj(i -> (i % 3 == 0 ? FullVan.fixedSpeed() : FullVan.variableSpeed())
                                .with("trip.days", i % 2 == 0 ? "2" : "3")
                                .with("battery.capacity", 900 - 40 * i + " Ah")),
                FullVan.weather()));
    }

    /** The vans of the first test would come to the same if none went side by side; most must. */
    @Test
    void mostVansMayGoSideBySide() {
        long may = seeds().filter(seed -> {
                    List<RunPlan> two = plans(
                            Stream.of("300 Ah", "600 Ah")
                                    .map(bank -> RandomVan.any(seed).with("battery.capacity", bank)),
                            RandomVan.weather(seed));
                    return Fleet.may(two.get(0)) && Fleet.alike(two.get(0), two.get(1));
                })
                .count();
        assertThat(may).isGreaterThan(12);
    }
}
