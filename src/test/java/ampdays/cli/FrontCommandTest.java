package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Chances;
import ampdays.scenario.Grid;
import ampdays.scenario.KnobText;
import ampdays.scenario.ScenarioFile;
import ampdays.study.ManyTrips;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fronts as a user meets them, against chances of the same designs: no outside source. */
class FrontCommandTest extends CommandRun {
    private static final String NORMALS = "{normals: low-desert-normals.csv}";
    private static final String OPTIONS =
            "  more solar: {solar.power: 700 W}\n  small bank: {battery.capacity: 200 Ah}\n";

    @TempDir
    private Path folder;

    private int front(Path van, String results, String... more) {
        List<String> words = new ArrayList<>(List.of(
                "sweep",
                van.toString(),
                "--front",
                "--out",
                folder.resolve(results).toString()));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    private String screen() {
        return out.toString().replaceAll("\\s+", " ");
    }

    /** The same trips one by one, and the same shares of them, for an option and for a knob that says what it says. */
    @Test
    void theTripsAreThoseOfChancesToTheLastBit() throws Exception {
        Path van = StudiedVan.in(folder, NORMALS, OPTIONS);
        Loaded loaded = Loaded.read(van);
        Chances chances = new ManyTrips(loaded.file(), new DrawnWeather(loaded, 3), 12, 3).run(2, () -> {});
        Grid grid = new Grid(
                List.of(
                        KnobText.read("option=as it is, small bank", loaded.file()),
                        KnobText.read("solar.power=400, 700 W", loaded.file())),
                false);
        ScenarioFile designs = grid.only(loaded.file(), List.of(0, 1, 2));
        Loaded swept = loaded.with(designs);
        List<Chances.Option> tried = new ManyTrips(designs, new DrawnWeather(swept, 3), 12, 3)
                .run(1, () -> {})
                .options();
        assertThat(loaded.file().base().word("solar.power")).isEqualTo("400 W");
        assertThat(tried.get(0).trips()).isEqualTo(chances.options().get(0).trips());
        assertThat(tried.get(1).trips()).isEqualTo(chances.options().get(1).trips());
        assertThat(tried.get(2).trips()).isEqualTo(chances.options().get(2).trips());
        assertThat(tried.get(1).comfortable())
                .isEqualTo(chances.options().get(1).comfortable());
        assertThat(tried.get(1).name()).isEqualTo("option as it is, solar.power 700 W");
    }

    @Test
    void theFilesHaveTheSharesOfChancesForAnyNumberOfWorkers() throws IOException {
        Path van = StudiedVan.in(folder, NORMALS, OPTIONS);
        for (String workers : List.of("1", "2")) {
            assertThat(front(
                            van,
                            "by-" + workers,
                            "--vary",
                            "option=all",
                            "--trips",
                            "12",
                            "--seed",
                            "3",
                            "-j",
                            workers))
                    .as(err.toString())
                    .isZero();
        }
        for (String file : List.of("front.csv", "front.svg", "sweep.csv")) {
            assertThat(folder.resolve("by-2").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("by-1").resolve(file));
        }
        assertThat(run(
                        "chances",
                        van.toString(),
                        "--samples",
                        "12",
                        "--seed",
                        "3",
                        "--out",
                        folder.resolve("chances").toString()))
                .isZero();
        List<Map<String, String>> trips = rows(folder.resolve("chances/chances.csv"));
        List<Map<String, String>> front = rows(folder.resolve("by-1/front.csv"));
        assertThat(front).isNotEmpty();
        for (Map<String, String> design : front) {
            List<Map<String, String>> its = trips.stream()
                    .filter(trip -> trip.get("option").equals(design.get("option")))
                    .toList();
            long never = its.stream()
                    .filter(trip -> trip.get("days to empty (days)").isEmpty())
                    .count();
            long good = its.stream()
                    .filter(trip -> trip.get("all nights comfortable").equals("yes"))
                    .count();
            assertThat(design.get("trips")).isEqualTo("12");
            assertThat(design.get("never empty (% of trips)")).isEqualTo(Double.toString(100 * (never / 12.0)));
            assertThat(design.get("all nights comfortable (% of trips)"))
                    .isEqualTo(Double.toString(100 * (good / 12.0)));
        }
        assertThat(front.stream().map(design -> design.get("never empty (% of trips)")))
                .as("the study tells something")
                .anyMatch(share -> !share.equals("0.0"));
        assertThat(screen()).contains("3 designs were tried on 12 trips each, the same for all.");
    }

    /** A set point of 14 °C may be 13 °C on a trip: then the upper end of comfort, 1.5 K above, lies below the lower one of 15 °C. */
    @Test
    void aDesignThatCannotBeOnSomeTripLeavesTheTableWhole() throws IOException {
        Path van = StudiedVan.in(folder, NORMALS, OPTIONS);
        String knob = "cabin.set.asleep=14, 26 °C";
        assertThat(front(van, "cold", "--vary", knob, "--trips", "10")).isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString().strip())
                .isEqualTo(
                        "With set point at -1 K, \"cabin.set.asleep 14 °C\" is a design that cannot be: The comfort band is"
                                + " empty: cabin.comfort.low is 15 °C and high is 14.5 °C. The table of the sweep is"
                                + " whole; with --resume --trips 0 its front is that of the one trip.");
        assertThat(out.toString()).isEmpty();
        byte[] table = Files.readAllBytes(folder.resolve("cold/sweep.csv"));
        assertThat(rows(folder.resolve("cold/sweep.csv"))).hasSize(2);
        assertThat(folder.resolve("cold/front.csv")).doesNotExist();
        assertThat(front(van, "cold", "--vary", knob, "--trips", "0", "--resume"))
                .as(err.toString())
                .isZero();
        assertThat(folder.resolve("cold/sweep.csv")).hasBinaryContent(table);
        assertThat(rows(folder.resolve("cold/front.csv"))).isNotEmpty();
    }

    @Test
    void withoutTripsTheFrontIsThatOfTheOneTrip() throws IOException {
        Path van = StudiedVan.in(folder, NORMALS, OPTIONS);
        assertThat(front(van, "one", "--vary", "option=all", "--trips", "0")).isZero();
        assertThat(rows(folder.resolve("one/front.csv")).get(0).keySet())
                .isEqualTo(rows(folder.resolve("one/sweep.csv")).get(0).keySet());
        assertThat(screen())
                .contains("are beaten by no other in price, mass, comfortable nights and days to empty:")
                .doesNotContain("tried on");
    }

    @Test
    void withNothingWithinTheLimitsTheScreenSaysWhyAndWhatIsNearest() throws IOException {
        Path van = StudiedVan.in(folder, NORMALS, OPTIONS);
        Files.writeString(van, Files.readString(van) + "prices: {budget: 8000}\nmasses: {payload: 130 kg}\n");
        assertThat(front(van, "none", "--vary", "battery.capacity=300, 400 Ah")).isEqualTo(Exit.TARGET_NOT_MET);
        assertThat(screen())
                .contains(
                        "No design is within the limits. Of 2 designs, 2 are beyond 8,000 USD (prices.budget), 2 beyond 130"
                                + " kg (masses.payload). The nearest is battery.capacity 300 Ah, with 8,400 USD, 5.0 % beyond its"
                                + " 8,000 USD (prices.budget), which rules, and 134 kg, 3.4 % beyond its 130 kg (masses.payload)."
                                + " Written to")
                .doesNotContain("all nights good");
        assertThat(rows(folder.resolve("none/front.csv"))).isEmpty();
        assertThat(folder.resolve("none/front.svg")).doesNotExist();
    }

    /** Panels of 400 W cover 1.9 m² at the usual 21 %: only the van that says it has more roof can carry them. */
    @Test
    void anOptionOrAKnobThatChangesTheRoofIsJudgedByItsOwn() throws IOException {
        Path van = StudiedVan.in(folder, NORMALS, "  large roof: {cabin.roof: 8 m²}\n");
        Files.writeString(van, Files.readString(van).replace("cabin:\n", "cabin:\n  roof: 1.5 m²\n"));
        assertThat(front(van, "option", "--vary", "option=all", "--trips", "0"))
                .as(err.toString())
                .isZero();
        assertThat(screen())
                .contains("Of 2 designs the limits leave out 1: 1 is beyond 1.5 m² of panels (cabin.roof).");
        assertThat(rows(folder.resolve("option/front.csv")))
                .singleElement()
                .satisfies(row -> assertThat(row.get("option")).isEqualTo("large roof"));
        assertThat(front(van, "knob", "--vary", "cabin.roof=1.5, 1.8, 8 m²", "--trips", "0"))
                .as(err.toString())
                .isZero();
        assertThat(screen()).contains("2 are beyond their own limit of 1.5 to 1.8 m² of panels (cabin.roof)");
        assertThat(rows(folder.resolve("knob/front.csv")))
                .singleElement()
                .satisfies(row -> assertThat(row.get("cabin.roof (m²)")).isEqualTo("8"));
    }
}
