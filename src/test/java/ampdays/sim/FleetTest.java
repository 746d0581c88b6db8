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
        long may = seeds().filter(
                        seed -> Fleet.may(RandomVan.any(seed).plan(SkyCompletion.complete(RandomVan.weather(seed)))))
                .count();
        assertThat(may).isGreaterThan(12);
    }
}
