package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.chart.InventedComparison;
import ampdays.results.Account;
import ampdays.results.Channel;
import ampdays.results.Limit;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.study.Comparison;
import ampdays.trip.People;
import ampdays.trip.Vehicle;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is read back with the libraries' own readers (RFC 4180 tables, RFC 8259 JSON) and compared. */
class ResultFilesTest {
    private static final List<RunResult> RUNS = InventedComparison.five().options().stream()
            .map(Comparison.Option::result)
            .toList();

    @TempDir
    Path folder;

    @Test
    void optionsTableHasARowPerOptionInFullPrecision() throws IOException {
        List<CSVRecord> rows = read(new ResultFiles(folder).writeOptions(RUNS));
        assertThat(rows).hasSize(5);
        RunResult first = RUNS.get(0);
        CSVRecord row = rows.get(0);
        assertThat(row.get("option")).isEqualTo("as it is");
        assertThat(Double.parseDouble(row.get("days to empty (days)"))).isEqualTo(first.daysToEmpty());
        assertThat(Double.parseDouble(row.get("solar (Wh)")))
                .isEqualTo(first.energy().wh(Account.SOLAR));
        assertThat(row.get("hottest alternator case (°C)")).isEmpty();
        assertThat(row.get("limited by charger rating (h)")).isEqualTo("21.0");
        assertThat(row.get("limited by belt (h)")).isEqualTo("0.0");
        assertThat(row.get("served to laptops, two (Wh)")).isEqualTo("6160.0");
        assertThat(row.get("lowest state of charge at")).matches("2024-07-\\d\\dT\\d\\d:\\d\\d:00-07:00");
        assertThat(rows.get(3).get("days to empty (days)")).isEmpty();
        assertThat(rows.get(3).get("holds")).isEqualTo("yes");
    }

    @Test
    void daysTableAddsUpToTheOptions() throws IOException {
        List<CSVRecord> rows = read(new ResultFiles(folder).writeDays(RUNS));
        assertThat(rows).hasSize(5 * InventedComparison.DAYS);
        double solarWh = rows.stream()
                .filter(row -> row.get("option").equals("as it is"))
                .mapToDouble(row -> Double.parseDouble(row.get("solar (Wh)")))
                .sum();
        // a sum of fourteen doubles of this size is good to far better than 1e-6
        assertThat(solarWh).isCloseTo(RUNS.get(0).energy().wh(Account.SOLAR), within(1e-6));
        assertThat(rows.get(0).get("date")).isEqualTo("2024-07-08");
        assertThat(rows.get(0).get("kind of day")).isEqualTo("field days");
    }

    @Test
    void everyHeadingOfAQuantityHasItsUnit() throws IOException {
        ResultFiles files = new ResultFiles(folder);
        List<String> bare = List.of(
                "option",
                "holds",
                "lowest state of charge at",
                "comfortable nights",
                "nights",
                "cycles",
                "date",
                "kind of day",
                "start of step",
                "ruling limit",
                "vehicle",
                "people");
        for (Path file :
                List.of(files.writeOptions(RUNS), files.writeDays(RUNS), files.writeMinutes(RUNS.get(0), minutes()))) {
            try (CSVParser table = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.DEFAULT)) {
                for (String heading : table.iterator().next()) {
                    assertThat(bare.contains(heading) || heading.matches(".+ \\((days|% per day|%|Wh|h|l|°C|W|V|A)\\)"))
                            .as(heading)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void minutesTableHasStampsRoundedNumbersAndWords() throws IOException {
        List<CSVRecord> rows = read(new ResultFiles(folder).writeMinutes(RUNS.get(0), minutes()));
        assertThat(rows).hasSize(2);
        CSVRecord first = rows.get(0);
        assertThat(first.get("start of step")).isEqualTo("2024-07-09T00:00:00-07:00");
        assertThat(rows.get(1).get("start of step")).isEqualTo("2024-07-09T00:01:00-07:00");
        assertThat(first.get("state of charge (%)")).isEqualTo("98.77");
        assertThat(first.get("bank current (A)")).isEqualTo("-0.05");
        assertThat(first.get("solar (W)")).isEqualTo("0.0");
        assertThat(first.get("second alternator case (°C)")).isEmpty();
        assertThat(first.get("ruling limit")).isEqualTo("charger rating");
        assertThat(first.get("vehicle")).isEqualTo("highway");
        assertThat(first.get("people")).isEqualTo("aboard");
    }

    @Test
    void summaryCanBeReadBack() throws IOException {
        Path file = new ResultFiles(folder).writeSummary("desert-survey", "Desert \"survey\"", RUNS, Map.of());
        JsonNode root = new ObjectMapper().readTree(file.toFile());
        assertThat(root.get("schemaVersion").intValue()).isEqualTo(1);
        assertThat(root.get("title").textValue()).isEqualTo("Desert \"survey\"");
        assertThat(root.get("options")).hasSize(5);
        JsonNode first = root.get("options").get(0);
        RunResult run = RUNS.get(0);
        assertThat(first.get("daysToEmpty").doubleValue()).isEqualTo(run.daysToEmpty());
        assertThat(first.get("energyWh").get("solar").doubleValue())
                .isEqualTo(run.energy().wh(Account.SOLAR));
        assertThat(first.get("limitHours").get("engine off").doubleValue()).isEqualTo(315.0);
        assertThat(first.get("servedWh").get("laptops, two").doubleValue()).isEqualTo(6160.0);
        assertThat(first.get("alternatorPeakCaseC").isNull()).isTrue();
        assertThat(first.get("findings").get(0).get("severity").textValue()).isEqualTo("caution");
        JsonNode holding = root.get("options").get(3);
        assertThat(holding.get("daysToEmpty").isNull()).isTrue();
        assertThat(holding.get("holds").booleanValue()).isTrue();
        assertThat(holding.fieldNames())
                .toIterable()
                .containsExactly(
                        "name",
                        "daysToEmpty",
                        "holds",
                        "trendPerDay",
                        "tripDays",
                        "reserve",
                        "lowestSoc",
                        "lowestSocAt",
                        "comfortableNights",
                        "nights",
                        "energyWh",
                        "lossesWh",
                        "servedWh",
                        "unservedWh",
                        "limitHours",
                        "curtailedWh",
                        "fuelLitres",
                        "engineChargingHours",
                        "alternatorPeakCaseC",
                        "cycles",
                        "ageing",
                        "ledgerResidualWh",
                        "findings");
    }

    @Test
    void summaryLeavesTheWriterOpen() throws IOException {
        StringBuilder closed = new StringBuilder();
        Writer writer = new Writer() {
            @Override
            public void write(char[] buffer, int from, int length) {}

            @Override
            public void flush() {}

            @Override
            public void close() {
                closed.append("closed");
            }
        };
        SummaryJson.write(writer, "a", "b", RUNS, Map.of());
        assertThat(closed).isEmpty();
    }

    @Test
    void aSecondWriteGivesTheSameBytesAndUnixLineEnds() throws IOException {
        Map<String, byte[]> once = writeAll(folder.resolve("once"));
        Map<String, byte[]> twice = writeAll(folder.resolve("twice"));
        assertThat(once).hasSize(4);
        once.forEach((name, bytes) -> {
            assertThat(twice.get(name)).as(name).isEqualTo(bytes);
            assertThat(new String(bytes, StandardCharsets.UTF_8))
                    .doesNotContain("\r")
                    .endsWith("\n");
        });
    }

    @Test
    void aFolderThatIsAFileGetsAPlainMessageAndStaysUntouched() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("out"), "mine");
        assertThatThrownBy(() -> new ResultFiles(notAFolder).writeDays(RUNS))
                .isInstanceOf(IOException.class)
                .hasMessage("Cannot write " + notAFolder.resolve("days.csv") + ": " + notAFolder
                        + " is a file, not a folder.");
        assertThat(notAFolder).hasContent("mine");
    }

    private static Map<String, byte[]> writeAll(Path into) throws IOException {
        ResultFiles files = new ResultFiles(into);
        files.writeOptions(RUNS);
        files.writeDays(RUNS);
        files.writeMinutes(RUNS.get(0), minutes());
        files.writeSummary("desert-survey", "Desert survey", RUNS, Map.of());
        Map<String, byte[]> all = new TreeMap<>();
        try (Stream<Path> written = Files.list(into)) {
            for (Path file : written.toList()) {
                all.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return all;
    }

    private static MinuteLog minutes() {
        Map<Channel, float[]> columns = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            columns.put(channel, new float[2]);
        }
        columns.put(Channel.STATE_OF_CHARGE, new float[] {98.766f, 98.7f});
        columns.put(Channel.BANK_CURRENT, new float[] {-0.051f, 0});
        columns.put(Channel.SOLAR, new float[] {-0.01f, 0});
        columns.put(Channel.SECOND_CASE, new float[] {Float.NaN, Float.NaN});
        columns.put(Channel.RULING_LIMIT, new float[] {code(Limit.CHARGER_RATING), 0});
        columns.put(Channel.VEHICLE, new float[] {code(Vehicle.HIGHWAY), 0});
        columns.put(Channel.PEOPLE, new float[] {code(People.ABOARD), 0});
        return new MinuteLog(1440, columns);
    }

    private static <E extends Enum<E>> float code(E constant) {
        return List.of(constant.getDeclaringClass().getEnumConstants()).indexOf(constant);
    }

    private static List<CSVRecord> read(Path file) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser table = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            return table.getRecords();
        }
    }
}
