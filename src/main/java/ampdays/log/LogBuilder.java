package ampdays.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes a log of minutes from rows in the order of the file. */
public final class LogBuilder {
    private static final int MINUTE = 60;

    private final LogMap map;
    private final LogClock clock;
    private final Map<String, Device> devices = new LinkedHashMap<>();
    private final Map<String, Integer> unknownDevices = new HashMap<>();
    private final Faults noTime = new Faults();
    private final Faults missingTime = new Faults();
    private final Faults headings = new Faults();
    private final Faults shortRows = new Faults();
    private final Faults longRows = new Faults();
    private final long[] time = new long[2];
    private long rows;

    /**
     * @param usualSeconds time between rows by device, as far as the beginning of the file tells; "" stands for files without
     *     devices
     */
    public LogBuilder(LogMap map, Map<String, Double> usualSeconds) {
        this.map = map;
        this.clock = new LogClock(map.time().zone());
        Map<String, List<Gauge>> gauges = new LinkedHashMap<>();
        for (LogMap.Column column : map.columns()) {
            gauges.computeIfAbsent(column.device(), d -> new ArrayList<>()).add(new Gauge(column));
        }
        gauges.forEach((device, of) -> devices.put(
                device,
                new Device(of, map.time().zone(), map.time().stampsEnd(), usualSeconds.getOrDefault(device, (double)
                        MINUTE))));
    }

    /** Columns of the rows of a device, in the order in which values are given; empty for a device that the map does not read. */
    public List<LogMap.Column> columns(String device) {
        Device found = devices.get(device);
        return found == null
                ? List.of()
                : found.gauges().stream().map(Gauge::column).toList();
    }

    /** Notes a row of a device that the map does not read. */
    public void unknownDevice(String device) {
        unknownDevices.merge(device, 1, Integer::sum);
    }

    /** Notes a heading in the middle of the file. */
    public void headingAgain(int line) {
        headings.add(line, "");
    }

    /** Notes a row with too few cells. */
    public void shortRow(int line, int cells) {
        shortRows.add(line, Integer.toString(cells));
    }

    /** Notes a row with more cells than there are names. */
    public void longRow(int line, int cells) {
        longRows.add(line, Integer.toString(cells));
    }

    /** Notes a text where a number should be. */
    public void unread(String device, int column, int line, String text) {
        devices.get(device).gauges().get(column).unread(line, text);
    }

    /**
     * Takes the next row.
     *
     * @param written time as it stands in the file
     * @param values as written, one for each of {@link #columns}; NaN where there is none. Changed to base units.
     */
    public void row(String device, int line, String written, double[] values) {
        rows++;
        if (!map.time().form().read(written, time)) {
            noTime.add(line, '"' + written + '"');
            return;
        }
        Device of = devices.get(device);
        long at = time[1] == TimeForm.NONE ? clock.instant(time[0], of.last()) : time[0] - time[1];
        if (time[1] == TimeForm.NONE && clock.wasMissing()) {
            missingTime.add(line, '"' + written + '"');
        }
        List<Gauge> gauges = of.gauges();
        for (int i = 0; i < values.length; i++) {
            values[i] = Double.isNaN(values[i]) ? Double.NaN : gauges.get(i).checked(values[i], line);
        }
        of.row(at, line, values);
    }

    /**
     * The log; then nothing more may be given.
     *
     * @param file name of the file, for messages
     * @throws IllegalArgumentException when no row has a time and a value, with a sentence for the user
     */
    public MeteredLog log(String file) {
        devices.values().forEach(Device::end);
        List<Gauge> all =
                devices.values().stream().flatMap(d -> d.gauges().stream()).toList();
        all.forEach(gauge -> gauge.leaveOutStuck(all));
        List<Gauge> filled = all.stream().filter(g -> !g.track().isEmpty()).toList();
        List<Trap> traps = traps(all);
        if (filled.isEmpty()) {
            throw new IllegalArgumentException("no row has a time and a value of the columns in the map."
                    + traps.stream()
                            .findFirst()
                            .map(trap -> (trap.line() == 0 ? " First: " : " Line " + trap.line() + ": ") + trap.text())
                            .orElse(""));
        }
        long first =
                filled.stream().mapToLong(g -> g.track().firstMinute()).min().orElseThrow();
        long last = filled.stream().mapToLong(g -> g.track().lastMinute()).max().orElseThrow();
        Map<Signal, Track> tracks = new EnumMap<>(Signal.class);
        for (Gauge gauge : filled) {
            tracks.put(gauge.column().signal(), gauge.track());
        }
        Device main = devices.values().stream()
                .max(Comparator.comparingLong(
                        d -> d.last() == Long.MIN_VALUE ? 0 : d.last() - d.start() - d.gapSeconds()))
                .orElseThrow();
        MeteredLog.Facts facts = new MeteredLog.Facts(
                file,
                rows,
                first * MINUTE,
                Math.toIntExact(last - first + 1),
                main.usualSeconds(),
                main.gaps(),
                main.gapSeconds(),
                main.longestGap(),
                main.longestGapLine(),
                map.time().zone());
        return new MeteredLog(facts, tracks, traps);
    }

    private List<Trap> traps(List<Gauge> all) {
        List<Trap> traps = new ArrayList<>();
        noTime.tell(
                traps,
                f -> f.first() + " is not a time written as "
                        + map.time().form().label() + f.andMore() + "; those rows are left out.");
        missingTime.tell(
                traps,
                f -> "the time " + f.first() + " does not exist in "
                        + map.time().zone() + f.andMore()
                        + ": clocks are set forward over it. It is counted as if they were not.");
        headings.tell(
                traps, f -> "the names of the columns stand here again" + f.andMore() + ": the logger was restarted.");
        shortRows.tell(
                traps,
                f -> "the row has " + f.first() + " cells, fewer than the map needs" + f.andMore()
                        + "; those rows are left out.");
        longRows.tell(
                traps,
                f -> "the row has " + f.first() + " cells, more than there are names" + f.andMore()
                        + "; those rows are left out. Where numbers have decimal commas, cells must be separated by"
                        + " semicolons, or stand in quotation marks.");
        if (!unknownDevices.isEmpty()) {
            traps.add(new Trap(
                    0,
                    "rows of devices that the map does not read: "
                            + String.join(
                                    ", ",
                                    unknownDevices.entrySet().stream()
                                            .sorted(Map.Entry.comparingByKey())
                                            .map(e -> '"' + e.getKey() + "\" " + e.getValue())
                                            .toList())
                            + "."));
        }
        devices.values().forEach(device -> device.tell(traps));
        for (Gauge gauge : all) {
            if (gauge.track().isEmpty()) {
                traps.add(new Trap(
                        0,
                        gauge.column().signal().label() + " has no value anywhere in column \""
                                + gauge.column().name() + "\""
                                + (gauge.column().device().isEmpty()
                                        ? "."
                                        : " of device \"" + gauge.column().device() + "\".")));
            }
        }
        traps.sort(Comparator.comparingInt(Trap::line));
        return traps;
    }
}
