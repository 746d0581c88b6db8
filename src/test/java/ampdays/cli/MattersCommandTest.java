package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What matters, as a user meets it. What is compared are identities of the program with itself: no outside source. */
class MattersCommandTest extends CommandRun {
    private static final String OPTIONS = "  more solar: {solar.power: 1400 W}\n";

    @TempDir
    private Path folder;

    private int matters(Path scenario, String results, String... more) {
        List<String> words = new ArrayList<>(List.of(
                "matters", scenario.toString(), "--out", folder.resolve(results).toString()));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    @Test
    void theNumberOfWorkersDoesNotShow() throws IOException {
        Path van = StudiedVan.in(folder, "{normals: low-desert-normals.csv}", OPTIONS);
        for (String workers : List.of("1", "2", "8")) {
            assertThat(matters(van, "by-" + workers, "--samples", "10", "-j", workers))
                    .as(err.toString())
                    .isZero();
        }
        for (String file : List.of("matters.csv", "matters.json", "one-at-a-time.svg")) {
            byte[] one = Files.readAllBytes(folder.resolve("by-1").resolve(file));
            assertThat(folder.resolve("by-2").resolve(file)).hasBinaryContent(one);
            assertThat(folder.resolve("by-8").resolve(file)).hasBinaryContent(one);
        }
        assertThat(out.toString()).contains("Measure this first:\n1. ");
    }

    /** Ends of spreads are texts that a scenario could say: the run with one of them has the answer of the row. */
    @Test
    void anInputAloneIsTheSingleRun() throws IOException {
        Path van = StudiedVan.in(folder, "{}", OPTIONS);
        assertThat(matters(van, "m", "--samples", "10")).as(err.toString()).isZero();
        List<Map<String, String>> inputs = rows(folder.resolve("m/matters.csv"));
        for (String path : List.of("cooling.cop", "battery.capacity", "refrigerator.leak")) {
            Map<String, String> row = inputs.stream()
                    .filter(r -> r.get("input").equals(path))
                    .findFirst()
                    .orElseThrow();
            for (String end : List.of("low", "high")) {
                Path single = folder.resolve(path + end);
                assertThat(run(
                                "run",
                                van.toString(),
                                "--set",
                                path + "=" + row.get(end + " end"),
                                "--out",
                                single.toString()))
                        .isZero();
                Map<String, String> alone = rows(single.resolve("options.csv")).get(0);
                String days = alone.get("days to empty (days)");
                assertThat(row.get("days to empty at " + end + " end (days)"))
                        .as(path)
                        .isEqualTo(days.isEmpty() ? alone.get("trip (days)") : days);
                assertThat(row.get("comfortable nights at " + end + " end")).isEqualTo(alone.get("comfortable nights"));
            }
        }
    }

    /** A design that is never empty has its lowest charge for an answer; inputs stand in the order of what they move. */
    @Test
    void aDesignThatIsNeverEmptyIsAskedForItsLowestCharge() throws IOException {
        Path van = StudiedVan.in(folder, "{}", OPTIONS);
        assertThat(matters(van, "m", "--samples", "10", "--option", "more solar"))
                .as(err.toString())
                .isZero();
        JsonNode json =
                new ObjectMapper().readTree(folder.resolve("m/matters.json").toFile());
        assertThat(json.get("answer").asText()).isEqualTo("lowest charge");
        double usual = json.get("usual").asDouble();
        double before = Double.POSITIVE_INFINITY;
        for (JsonNode input : json.get("inputs")) {
            double low = input.get("answerAtLow").asDouble();
            double high = input.get("answerAtHigh").asDouble();
            double swing = Math.max(usual, Math.max(low, high)) - Math.min(usual, Math.min(low, high));
            assertThat(swing).isLessThanOrEqualTo(before);
            before = swing;
        }
        assertThat(out.toString()).contains("lowest charge, %");
    }

    /** The weather, eight inputs and all others as one: ten shares, the largest total first. */
    @Test
    void sharesLieBetweenTheirBounds() throws IOException {
        Path van = StudiedVan.in(folder, "{normals: low-desert-normals.csv}", OPTIONS);
        assertThat(matters(van, "m", "--samples", "16", "--json"))
                .as(err.toString())
                .isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.get("varianceShares")).hasSize(10);
        double before = Double.POSITIVE_INFINITY;
        for (JsonNode share : json.get("varianceShares")) {
            for (String kind : List.of("alone", "inAll")) {
                JsonNode of = share.get(kind);
                assertThat(of.get("value").asDouble())
                        .isBetween(of.get("low").asDouble(), of.get("high").asDouble());
            }
            double total = share.get("inAll").get("value").asDouble();
            assertThat(total).isBetween(0.0, before + 1e-12);
            before = total;
        }
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void wrongInputGetsOneMessage(String words, String section, String message) throws IOException {
        Path van = StudiedVan.in(folder, section, "  more solar: {solar.power: 700 W}\n");
        assertThat(matters(van, "wrong", words.isEmpty() ? new String[0] : words.split("\\|", -1)))
                .isEqualTo(2);
        assertThat(err.toString().replace(folder + "/", "").strip()).isEqualTo(message);
        assertThat(out.toString()).isEmpty();
        assertThat(folder.resolve("wrong")).doesNotExist();
    }

    static Stream<Arguments> wrong() throws IOException {
        return StudiedVan.wrong("wrong-matters.txt");
    }
}
