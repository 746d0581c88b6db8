package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Studies of many trips as a user meets them. What is compared are identities and orders of the program's own results. */
class ChancesCommandTest extends CommandRun {
    private static final String SURE =
            "{drives: 0 %, set-point: 0 K, shade: 0 %, loads: 0 %, alternator: 0 %, bank-wear: 0 %, ";

    @TempDir
    private Path folder;

    private int chances(Path scenario, String results, String... more) {
        List<String> words = new ArrayList<>(List.of(
                "chances", scenario.toString(), "--out", folder.resolve(results).toString()));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    private Path van(String chances, String options) throws IOException {
        return StudiedVan.in(folder, chances, options);
    }

    @Test
    void theNumberOfWorkersDoesNotShow() throws IOException {
        Path van = van("{normals: low-desert-normals.csv}", "  more solar: {solar.power: 700 W}\n");
        for (String workers : List.of("1", "2", "8")) {
            assertThat(chances(van, "by-" + workers, "--samples", "20", "-j", workers))
                    .as(err.toString())
                    .isZero();
        }
        for (String file : List.of("chances.csv", "chances.json", "not-yet-empty.svg")) {
            byte[] one = Files.readAllBytes(folder.resolve("by-1").resolve(file));
            assertThat(folder.resolve("by-2").resolve(file)).hasBinaryContent(one);
            assertThat(folder.resolve("by-8").resolve(file)).hasBinaryContent(one);
        }
    }

    @Test
    void anotherSeedDrawsOtherTrips() throws IOException {
        Path van = van("{normals: low-desert-normals.csv}", "  more solar: {solar.power: 700 W}\n");
        assertThat(chances(van, "a", "--samples", "10")).isZero();
        assertThat(chances(van, "b", "--samples", "10", "--seed", "2")).isZero();
        assertThat(rows(folder.resolve("a/chances.csv")).get(0).get("weather"))
                .isEqualTo("low-desert-normals.csv, seed 1000001");
        assertThat(rows(folder.resolve("b/chances.csv")).get(0).get("weather"))
                .isEqualTo("low-desert-normals.csv, seed 2000001");
        assertThat(starts("a/chances.csv")).isNotEqualTo(starts("b/chances.csv"));
    }

    private List<String> starts(String table) throws IOException {
        return rows(folder.resolve(table)).stream().map(row -> row.get("start")).toList();
    }

    /** With nothing drawn but the day, each trip is the run that begins on it, to the last digit. */
    @Test
    void aTripIsTheSingleRun() throws IOException {
        Path van = van(SURE + "first-start: 07-08, last-start: 07-10}", "  more solar: {solar.power: 700 W}\n");
        assertThat(chances(van, "many", "--samples", "10")).as(err.toString()).isZero();
        assertThat(out.toString().replace("\n", " "))
                .contains("on 3 days from 07-08 to 07-10")
                .contains("all in the one year of low-desert-summer.csv")
                .contains("only the day of the start changes the weather")
                .containsPattern("outlasts the first +– +\\d+ %");
        List<Map<String, String>> trips = rows(folder.resolve("many/chances.csv"));
        assertThat(trips).hasSize(20);
        assertThat(trips.stream().map(trip -> trip.get("start")).distinct())
                .containsExactlyInAnyOrder("2025-07-08", "2025-07-09", "2025-07-10");
        for (Map<String, String> trip : trips) {
            String start = trip.get("start");
            Path single = folder.resolve(start + trip.get("option"));
            if (!Files.exists(single)) {
                assertThat(run(
                                "run",
                                van.toString(),
                                "--option",
                                trip.get("option"),
                                "--set",
                                "trip.start=" + start,
                                "--out",
                                single.toString()))
                        .isZero();
            }
            Map<String, String> alone = rows(single.resolve("options.csv")).get(0);
            for (String column : List.of(
                    "days to empty (days)",
                    "holds",
                    "lowest state of charge (%)",
                    "comfortable nights",
                    "unserved (Wh)")) {
                assertThat(trip.get(column)).as(column).isEqualTo(alone.get(column));
            }
        }
    }

    /** The share of trips with every night comfortable, counted again from the trips; its bounds are Wilson's. */
    @Test
    void aComfortableTripHasNothingButGoodNights() throws IOException {
        Path van = van("{normals: low-desert-normals.csv}", "  more solar: {solar.power: 700 W}\n");
        assertThat(chances(van, "good", "--samples", "20")).as(err.toString()).isZero();
        JsonNode options = new ObjectMapper()
                .readTree(folder.resolve("good/chances.json").toFile())
                .get("options");
        for (JsonNode option : options) {
            List<Map<String, String>> trips = rows(folder.resolve("good/chances.csv")).stream()
                    .filter(trip -> trip.get("option").equals(option.get("name").asText()))
                    .toList();
            long good = trips.stream()
                    .filter(trip -> trip.get("comfortable nights").equals(trip.get("nights")))
                    .count();
            assertThat(trips.stream()
                            .filter(trip -> trip.get("all nights comfortable").equals("yes")))
                    .hasSize((int) good);
            JsonNode share = option.get("allNightsComfortable");
            assertThat(share.get("value").asDouble()).isEqualTo(good / 20.0);
            double p = good / 20.0;
            double z2 = 1.96 * 1.96;
            double reach = Math.sqrt(z2) * Math.sqrt(p * (1 - p) / 20 + z2 / 1600) / (1 + z2 / 20);
            assertThat(share.get("high").asDouble() - share.get("low").asDouble())
                    .isCloseTo(2 * reach, offset(1e-4));
        }
        assertThat(options.get(1).get("allNightsComfortable").get("value").asDouble())
                .as("the study tells something")
                .isBetween(0.01, 0.99);
        assertThat(out.toString()).contains("all nights comfortable ");
    }

    /**
     * Energies 18 (2025) 5174, abstract: the steeper the demand on reliability, the more panels and batteries; more of either
     * never raises the share. All sizes go on the same trips, so no luck is in the comparison.
     */
    @ParameterizedTest
    @ValueSource(strings = {"battery.capacity: 300 450 600 900 1400 Ah", "solar.power: 200 400 600 900 1400 W"})
    void moreNeverRaisesTheShareOfEmptyTrips(String knob) throws IOException {
        String path = knob.substring(0, knob.indexOf(':'));
        List<String> words = List.of(knob.substring(knob.indexOf(':') + 2).split(" ", -1));
        String unit = words.get(words.size() - 1);
        StringBuilder options = new StringBuilder();
        for (String value : words.subList(0, words.size() - 1)) {
            options.append("  \"")
                    .append(value)
                    .append("\": {")
                    .append(path)
                    .append(": ")
                    .append(value)
                    .append(' ');
            options.append(unit).append("}\n");
        }
        Path van = van("{normals: low-desert-normals.csv}", options.toString());
        assertThat(chances(van, "more", "--samples", "40")).as(err.toString()).isZero();
        List<Map<String, String>> rows = rows(folder.resolve("more/chances.csv"));
        long before = Long.MAX_VALUE;
        List<Long> counts = new ArrayList<>();
        for (String value : words.subList(0, words.size() - 1)) {
            long empty = rows.stream()
                    .filter(row -> row.get("option").equals(value))
                    .filter(row -> !row.get("days to empty (days)").isEmpty())
                    .count();
            counts.add(empty);
            assertThat(empty).as(path + " " + value).isLessThanOrEqualTo(before);
            before = empty;
        }
        assertThat(counts.get(0)).as("the study tells something").isGreaterThan(counts.get(4));
    }

    /** Two invented summers in one file: trips lie in both, and the screen says so. */
    @Test
    void eachYearOfAFileOfSeveralIsUsed() throws IOException {
        Path van = van("{first-start: 06-20, last-start: 07-05}", "  more solar: {solar.power: 700 W}\n");
        StringBuilder weather = new StringBuilder("# title: Two years\n# latitude: 33.4\n# longitude: -112\n");
        weather.append("# elevation: 340 m\n# utc-offset: -7\n# interval: 60 min\n# stamp: start\n");
        weather.append("time,ghi W/m2,air C,dew point C,wind m/s\n");
        LocalDate first = LocalDate.of(2021, 6, 1);
        for (int day = 0; day < 365 + 45; day++) {
            for (int hour = 0; hour < 24; hour++) {
                double height = Math.cos((hour + 0.5 - 12.5) / 12 * Math.PI);
                weather.append(String.format(
                        Locale.ROOT,
                        "%s %02d:00,%.0f,%.1f,10,3%n",
                        first.plusDays(day),
                        hour,
                        Math.max(0, 950 * height),
                        30 + 8 * height));
            }
        }
        Files.writeString(folder.resolve("low-desert-summer.csv"), weather);
        assertThat(chances(van, "years", "--samples", "16")).as(err.toString()).isZero();
        List<String> starts = rows(folder.resolve("years/chances.csv")).stream()
                .map(row -> row.get("start").substring(0, 4))
                .toList();
        assertThat(starts.stream().filter("2021"::equals)).hasSize(16);
        assertThat(starts.stream().filter("2022"::equals)).hasSize(16);
        assertThat(out.toString().replace("\n", " "))
                .contains("on 16 days from 06-20 to 07-05, in each of 2 years, in the weather of");
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void wrongInputGetsOneMessage(String words, String section, String message) throws IOException {
        Path van = van(section, "  more solar: {solar.power: 700 W}\n");
        assertThat(chances(van, "wrong", words.isEmpty() ? new String[0] : words.split("\\|", -1)))
                .isEqualTo(2);
        assertThat(err.toString().replace(folder + "/", "").strip()).isEqualTo(message);
        assertThat(out.toString()).isEmpty();
        assertThat(folder.resolve("wrong")).doesNotExist();
    }

    static Stream<Arguments> wrong() throws IOException {
        return StudiedVan.wrong("wrong-chances.txt");
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidPlainly() throws IOException {
        Path van = van("{normals: low-desert-normals.csv}", "  more solar: {solar.power: 700 W}\n");
        Files.writeString(folder.resolve("file"), "not a folder");
        assertThat(chances(van, "file/results", "--samples", "10")).isEqualTo(4);
        assertThat(err.toString()).startsWith("Cannot write ").doesNotContain("Exception");
    }
}
