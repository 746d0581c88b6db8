package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The single changes on the demo's base design; expected values are sums of its own numbers. */
class SingleChangesTest {
    private static ScenarioFile file;
    private static Trip trip;

    @BeforeAll
    static void read() throws Exception {
        file = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
        trip = file.scenario().variants().get(0).trip();
    }

    private static List<SingleChange> kind(String words) {
        return SingleChanges.of(file.base(), trip).stream()
                .filter(steps -> steps.get(0).words().contains(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyStepCanBeBuiltAndCostsNoLessThanTheOneBefore() throws ScenarioException {
        List<List<SingleChange>> kinds = SingleChanges.of(file.base(), trip);
        assertThat(kinds).hasSize(9);
        for (List<SingleChange> steps : kinds) {
            assertThat(steps).isSortedAccordingTo(Comparator.comparingDouble(SingleChange::price));
            for (SingleChange step : steps) {
                assertThat(step.variant().name()).isEqualTo(step.words());
            }
        }
    }

    /** 100 Ah at 12.8 V is 1.28 kWh, at 500 a kWh 640; the roof of 9 m² carries 1,800 W at 20 %. */
    @Test
    void pricesAreStepsTimesThePriceInForce() throws ScenarioException {
        SingleChange bank = kind("more bank").get(0);
        assertThat(bank.words()).isEqualTo("100 Ah more bank");
        assertThat(bank.price()).isEqualTo(640, within(1e-9));
        assertThat(bank.priceFrom()).isEqualTo("practice");
        assertThat(bank.variant().design().bank().capacityAh()).isEqualTo(600);
        assertThat(kind("more solar")).hasSize(10);
        Values mine = file.base().with("prices.solar", "250").with("prices.currency", "EUR");
        SingleChange solar = SingleChanges.of(mine, trip).stream()
                .filter(steps -> steps.get(0).words().contains("solar"))
                .findFirst()
                .orElseThrow()
                .get(1);
        assertThat(List.of(solar.price(), solar.currency(), solar.priceFrom()))
                .containsExactly(500.0, "EUR", "your price");
        assertThat(solar.variant().design().solar().orElseThrow().ratedW()).isEqualTo(600);
    }

    /** The last drive of a field day ends at 17:30, of a rest day at 17:45. */
    @Test
    void theLastDriveOfADayEndsLater() {
        SingleChange longer = kind("driving").get(1);
        assertThat(longer.words()).contains("30 min");
        assertThat(longer.price()).isEqualTo(10 * 0.5 * 14);
        Trip changed = longer.trip().orElseThrow();
        assertThat(changed.kinds())
                .allSatisfy(kind -> assertThat(kind.stretches())
                        .extracting(Stretch::fromMinuteOfDay)
                        .contains(kind.name().equals("field days") ? 18 * 60 : 18 * 60 + 15));
        assertThat(changed.kindOfDay()).isEqualTo(trip.kindOfDay());
    }

    /** Every 5th of 14 nights are the 5th and the 10th: two nights at 40 and a charger of 50 A at 7. */
    @Test
    void hookUpOnSomeNights() {
        SingleChange hookUp = kind("hook-up").get(2 + 1);
        assertThat(hookUp.words()).isEqualTo("hook-up every 5th night, with a charger of 50 A");
        assertThat(hookUp.price()).isEqualTo(2 * 40 + 50 * 7);
        Trip changed = hookUp.trip().orElseThrow();
        for (int day = 0; day < 14; day++) {
            List<Stretch> stretches =
                    changed.kinds().get(changed.kindOfDay().get(day)).stretches();
            assertThat(stretches.get(stretches.size() - 1).hookUp()).isEqualTo(day == 4 || day == 9);
            assertThat(stretches.subList(0, stretches.size() - 1)).noneMatch(Stretch::hookUp);
        }
    }

    /** At the top of a key's range there is no room for a step. */
    @Test
    void noStepLeavesTheRangeOfItsKey() {
        Values large = file.base().with("battery.capacity", "99800 Ah").with("cabin.insulation", "450 mm");
        List<List<SingleChange>> kinds = SingleChanges.of(large, trip);
        assertThat(kinds)
                .filteredOn(steps -> steps.get(0).words().contains("bank"))
                .allSatisfy(steps -> assertThat(steps).hasSize(2));
        assertThat(kinds)
                .filteredOn(steps -> steps.get(0).words().contains("foam"))
                .allSatisfy(steps -> assertThat(steps).hasSize(2));
    }

    /** A design that cannot take a change is not offered it. */
    @Test
    void whatADesignCannotTakeIsLeftOut() {
        Values bare = file.base()
                .without("cooling")
                .without("factory-alternator")
                .with("second-alternator.preset", "medium frame")
                .with("cabin.covers", "insulated")
                .with("solar.power", "1700 W");
        assertThat(SingleChanges.of(bare, trip).stream()
                        .map(steps -> steps.get(0).words()))
                .containsExactly(
                        "25 mm more foam in roof and walls",
                        "100 Ah more bank",
                        "100 W more solar",
                        "a second alternator, large frame of 280 A",
                        "driving 15 min longer on each day with a drive",
                        "hook-up every 14th night, with a charger of 50 A");
    }
}
