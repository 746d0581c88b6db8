package ampdays.io;

import ampdays.results.Account;
import ampdays.results.Channel;
import ampdays.results.DayTotals;
import ampdays.results.Limit;
import ampdays.results.MinuteLog;
import ampdays.results.Reasons;
import ampdays.results.RunResult;
import ampdays.results.WholeFile;
import ampdays.trip.People;
import ampdays.trip.Vehicle;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;

/** The tables of results in one folder. What stands in them is told in docs/OUTPUT.md. */
public final class ResultFiles {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private static final List<Limit> LIMITS = List.of(Limit.values());
    private static final List<Vehicle> VEHICLES = List.of(Vehicle.values());
    private static final List<People> PEOPLE = List.of(People.values());

    private final Path folder;

    /** @param folder where the files go; it is made when the first one is written */
    public ResultFiles(Path folder) {
        this.folder = folder;
    }

    /** Writes {@code options.csv}: a row per option. */
    public Path writeOptions(List<RunResult> options) throws IOException {
        SortedSet<String> uses = new TreeSet<>();
        for (RunResult run : options) {
            uses.addAll(run.servedWhByUse().keySet());
            uses.addAll(run.unservedWhByUse().keySet());
        }
        return text("options.csv", table -> {
            OptionColumns columns = new OptionColumns(uses);
            row(table, prefixed("option", columns.headings()));
            for (RunResult run : options) {
                row(table, prefixed(run.option(), columns.cells(run)));
            }
        });
    }

    /** Writes {@code days.csv}: a row per option and day. */
    public Path writeDays(List<RunResult> options) throws IOException {
        return text("days.csv", table -> {
            row(table, dayHeadings());
            for (RunResult run : options) {
                for (DayTotals day : run.days()) {
                    row(table, dayRow(run.option(), day));
                }
            }
        });
    }

    /** Writes {@code summary.json}, with the reasons of options by name where they were asked for. */
    public Path writeSummary(String scenario, String title, List<RunResult> options, Map<String, Reasons> reasons)
            throws IOException {
        return text("summary.json", writer -> SummaryJson.write(writer, scenario, title, options, reasons));
    }

    /** Writes {@code minutes.csv}: a row per step of one option. */
    public Path writeMinutes(RunResult run, MinuteLog log) throws IOException {
        Channel[] channels = Channel.values();
        return text("minutes.csv", table -> {
            List<String> headings = new ArrayList<>(List.of("start of step"));
            for (Channel channel : channels) {
                headings.add(heading(channel.label(), channel.unit()));
            }
            row(table, headings);
            Object[] row = new Object[channels.length + 1];
            for (int i = 0; i < log.rows(); i++) {
                long step = (long) log.firstStep() + i;
                row[0] = Numbers.localStamp(run.startEpochSecond() + step * run.stepSeconds(), run.zone());
                for (int c = 0; c < channels.length; c++) {
                    row[c + 1] = cell(channels[c], log.get(channels[c], i));
                }
                FORMAT.printRecord(table, row);
            }
        });
    }

    private static List<String> dayHeadings() {
        List<String> headings = new ArrayList<>(List.of("option", "date", "kind of day"));
        for (Account account : Account.values()) {
            headings.add(heading(account.label(), "Wh"));
        }
        headings.addAll(List.of(
                "lowest state of charge (%)",
                "state of charge at the end (%)", "warmest outside air (°C)", "coolest outside air (°C)"));
        return headings;
    }

    private static List<String> dayRow(String option, DayTotals day) {
        List<String> row = new ArrayList<>(List.of(option, day.date().toString(), day.kind()));
        for (Account account : Account.values()) {
            row.add(Numbers.full(day.energy().wh(account)));
        }
        row.addAll(List.of(
                Numbers.percent(day.lowestSoc()),
                Numbers.percent(day.endSoc()),
                Numbers.full(day.warmestOutsideC()),
                Numbers.full(day.coolestOutsideC())));
        return row;
    }

    private static String cell(Channel channel, double value) {
        return switch (channel) {
            case RULING_LIMIT -> isCode(value) ? LIMITS.get((int) value).label() : "";
            case VEHICLE -> isCode(value) ? word(VEHICLES.get((int) value)) : "";
            case PEOPLE -> isCode(value) ? word(PEOPLE.get((int) value)) : "";
            default -> Numbers.fixed(value, channel.decimals());
        };
    }

    /** Below zero or not a number where nothing applies. */
    private static boolean isCode(double value) {
        return value >= 0;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static String heading(String label, String unit) {
        return unit.isEmpty() ? label : label + " (" + unit + ")";
    }

    private static List<String> prefixed(String first, List<String> others) {
        List<String> row = new ArrayList<>(List.of(first));
        row.addAll(others);
        return row;
    }

    private static void row(Writer table, List<String> cells) throws IOException {
        FORMAT.printRecord(table, cells.toArray());
    }

    private Path text(String name, WholeFile.TextBody body) throws IOException {
        Path file = folder.resolve(name);
        WholeFile.writeText(file, body);
        return file;
    }
}
