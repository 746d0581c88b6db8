package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import ampdays.io.ScenarioReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps worked out by hand from an invented scenario; no outside source. */
class UpgradeStepTest {
    private static final String OPTIONS = """
            options:
              more solar: {solar.power: 700 W}
              everything:
                battery.preset: lead-acid AGM 12 V
                solar.power: 900 W
                trip.days: 13
              no panels: {solar: none}
              a cooler month: {weather-offset: -5 K}
              nothing to buy: {shade.shade.beam: 5 %, tolerances.guess: 20 %, chances.bank-wear: 5 %, masses.solar: 8 kg}
            """;

    @TempDir
    private Path folder;

    private ScenarioFile file(String options) throws Exception {
        for (String weather : List.of("low-desert-summer.csv", "low-desert-normals.csv")) {
            Files.copy(Path.of("weather-profiles", weather), folder.resolve(weather));
        }
        String demo = Files.readString(Path.of("scenarios/desert-survey.yaml"));
        Path file = folder.resolve("van.yaml");
        Files.writeString(
                file, demo.substring(0, demo.indexOf("options:")).replace("../weather-profiles/", "") + options);
        return ScenarioReader.read(file);
    }

    @Test
    void anOptionIsAStepForEachPartOfTheVanThatItChanges() throws Exception {
        ScenarioFile file = file(OPTIONS);
        assertThat(UpgradeStep.of(file, Set.of()))
                .extracting(UpgradeStep::name)
                .containsExactly("more solar", "everything: battery", "everything: solar", "no panels");
        assertThat(UpgradeStep.of(file, Set.of("everything")))
                .extracting(UpgradeStep::name)
                .containsExactly("more solar", "everything", "no panels");
    }

    @Test
    void aStepChangesItsOwnPartAlone() throws Exception {
        ScenarioFile file = file(OPTIONS);
        List<UpgradeStep> steps = UpgradeStep.of(file, Set.of());
        Values lead = steps.get(1).on(file.base());
        assertThat(lead.isLeadAcid()).isTrue();
        assertThat(lead.number("solar.power")).isEqualTo(400);
        assertThat(lead.number("trip.days")).isEqualTo(14);
        Values both = steps.get(2).on(lead);
        assertThat(both.isLeadAcid()).isTrue();
        assertThat(both.number("solar.power")).isEqualTo(900);
        assertThat(steps.get(3).on(both).has("solar")).isFalse();
    }

    @Test
    void whatIsSaidAgainIsNoStep() throws Exception {
        ScenarioFile file = file("""
                options:
                  restated: {solar.power: 0.4 kW, battery.capacity: 500 Ah, battery.charge-rate: 0.5 C, solar.conversion: 96 %}
                  white as it is: {cabin.colour: white, solar.power: 600 W}
                """);
        assertThat(UpgradeStep.of(file, Set.of()))
                .extracting(UpgradeStep::name, UpgradeStep::isWhole)
                .containsExactly(tuple("white as it is", true));
    }

    @Test
    void anotherUnitIsNoChange() throws Exception {
        Values base = file("options: {}\n").base();
        Values inches = base.with("cabin.insulation", "1.5 in");
        assertThat(inches.pathsChanged(base.with("cabin.insulation", "38.1 mm")))
                .isEmpty();
        assertThat(inches.pathsChanged(base.with("cabin.insulation", "38.2 mm")))
                .containsExactly("cabin.insulation");
        assertThat(base.with("battery.capacity", "500 Ah").pathsChanged(base.with("battery.capacity", "6.4 kWh")))
                .containsExactly("battery.capacity");
    }

    /** The charge rate of the base's preset, kept on a bank whose preset says 0.2 C; the capacity said again is none of it. */
    @Test
    void whatIsKeptFromAnotherPresetIsPartOfTheStep() throws Exception {
        ScenarioFile file = file("""
                options:
                  lead: {battery.preset: lead-acid AGM 12 V, battery.charge-rate: 0.5 C, battery.capacity: 500 Ah}
                """);
        Values lead = UpgradeStep.of(file, Set.of()).get(0).on(file.base().with("battery.capacity", "800 Ah"));
        assertThat(lead.isLeadAcid()).isTrue();
        assertThat(lead.number("battery.charge-rate")).isEqualTo(0.5);
        assertThat(lead.number("battery.capacity")).isEqualTo(800);
    }

    /** A fan and a coat of paint are in no price list, and yet they are bought. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{cabin.set.asleep: 27 °C, cabin.airing: 22 °C} | true",
                "{cabin.set.asleep: 27 °C, cabin.insulation: 25 mm, cabin.colour: white (measured)} | true",
                "{loads.laptops.use: 1 h/day} | true",
                "{loads.laptops.use: 1 h/day, solar.power: 0.4 kW (datasheet)} | true",
                "{loads.laptops.use: 1 h/day, loads.laptops.draw: 30 W} | false",
                "{loads.another fan: {draw: 20 W, use: 2 h/day}} | false",
                "{cabin.set.asleep: 27 °C, cabin.colour: silver} | false",
            })
    void habitsAreNotBought(String changes, boolean isHabit) throws Exception {
        List<UpgradeStep> steps = UpgradeStep.of(file("options:\n  changed: " + changes + "\n"), Set.of());
        assertThat(steps).extracting(UpgradeStep::isHabit).containsExactly(isHabit);
    }
}
