package ampdays.io;

import ampdays.log.LogBuilder;
import ampdays.log.LogMap;
import ampdays.log.MeteredLog;
import ampdays.units.Nearest;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads a log line by line, so that its length does not matter; the file stays as it is. */
public final class LogReader {
    private static final int HEADING_WITHIN = 30;

    private final LogText text;
    private final LogMap map;
    private final List<InputProblem> problems = new ArrayList<>();
    private List<String> names = List.of();
    private int heading;
    private int timeCell;
    private int dateCell = -1;
    private int deviceCell = -1;

    private LogReader(LogText text, LogMap map) {
        this.text = text;
        this.map = map;
    }

    /**
     * Reads a log.
     *
     * @throws IOException when the file cannot be read
     * @throws InputException when it is no log, or has not the columns of the map
     */
    public static MeteredLog read(Path path, LogMap map) throws IOException, InputException {
        return new LogReader(LogText.of(path), map).read();
    }

    private MeteredLog read() throws IOException, InputException {
        findHeading();
        timeCell = cell(map.time().column());
        dateCell = map.time().date().isEmpty() ? -1 : cell(map.time().date());
        deviceCell = map.device().isEmpty() ? -1 : cell(map.device());
        LogBuilder builder = new LogBuilder(map, usualSeconds());
        Map<String, Wanted> wanted = new HashMap<>();
        for (LogMap.Column column : map.columns()) {
            wanted.computeIfAbsent(column.device(), device -> wanted(builder.columns(device)));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        rows(builder, wanted);
        try {
            return builder.log(text.file());
        } catch (IllegalArgumentException e) {
            throw LogText.problem(text.file(), 0, e.getMessage());
        }
    }

    /** What is read of the rows of one device; the values are those of the last row. */
    private static final class Wanted {
        private final List<LogMap.Column> columns;
        private final int[] cells;
        private final int last;
        private final double[] values;

        Wanted(List<LogMap.Column> columns, int[] cells, int last) {
            this.columns = columns;
            this.cells = cells;
            this.last = last;
            this.values = new double[cells.length];
        }
    }

    private Wanted wanted(List<LogMap.Column> columns) {
        int[] cells = columns.stream().mapToInt(c -> cell(c.name())).toArray();
        int last = Arrays.stream(cells).max().orElse(0);
        return new Wanted(columns, cells, Math.max(needed(), last));
    }

    private void rows(LogBuilder builder, Map<String, Wanted> wanted) throws IOException {
        String names = map.header() ? text.beginning().get(heading - 1) : null;
        try (BufferedReader lines = text.open()) {
            LogCells cells = text.cells();
            int number = 0;
            String line;
            while ((line = lines.readLine()) != null) {
                number++;
                if (number <= heading || line.isBlank()) {
                    continue;
                }
                if (line.equals(names)) {
                    builder.headingAgain(number);
                } else {
                    cells.take(line);
                    row(builder, wanted, number, cells);
                }
            }
        }
    }

    private void row(LogBuilder builder, Map<String, Wanted> wanted, int line, LogCells cells) {
        if (cells.size() <= needed()) {
            builder.shortRow(line, cells.size());
            return;
        }
        if (isLong(cells)) {
            builder.longRow(line, cells.size());
            return;
        }
        String device = deviceCell < 0 ? "" : cells.text(deviceCell);
        Wanted of = wanted.get(device);
        if (of == null) {
            builder.unknownDevice(device);
            return;
        }
        if (cells.size() <= of.last) {
            builder.shortRow(line, cells.size());
            return;
        }
        for (int i = 0; i < of.cells.length; i++) {
            double value = cells.number(
                    of.cells[i], text.commaIsDecimal(), of.columns.get(i).unit());
            if (value == LogNumber.UNREADABLE) {
                builder.unread(device, i, line, cells.text(of.cells[i]));
                value = Double.NaN;
            }
            of.values[i] = value;
        }
        builder.row(device, line, time(cells), of.values);
    }

    private boolean isLong(LogCells cells) {
        for (int cell = names.size(); map.header() && cell < cells.size(); cell++) {
            if (!cells.isEmpty(cell)) {
                return true;
            }
        }
        return false;
    }

    private int needed() {
        return Math.max(timeCell, Math.max(dateCell, deviceCell));
    }

    private String time(LogCells cells) {
        return dateCell < 0 ? cells.text(timeCell) : cells.text(dateCell) + ' ' + cells.text(timeCell);
    }

    /** The line of the names is the first one that has that of the time; notes of the logger may stand above it. */
    private void findHeading() throws InputException {
        if (!map.header()) {
            return;
        }
        List<String> lines = text.beginning();
        for (int i = 0; i < Math.min(HEADING_WITHIN, lines.size()); i++) {
            List<String> cells = text.cells(lines.get(i));
            if (cells.contains(map.time().column())) {
                names = cells;
                heading = i + 1;
                return;
            }
        }
        List<String> first = text.cells(lines.get(0));
        throw LogText.problem(
                text.file(),
                1,
                "the time is to be in column \"" + map.time().column() + "\", but the columns are "
                        + String.join(", ", first) + "."
                        + Nearest.of(map.time().column(), first)
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse(" If the file has no line of names, write header: no in the map and number the"
                                        + " columns from 1."));
    }

    /** Place of a column by its name, or by its number from 1 where no column has that name. */
    private int cell(String name) {
        int at = names.indexOf(name);
        if (at >= 0) {
            if (names.lastIndexOf(name) != at) {
                problems.add(new InputProblem(
                        text.file(),
                        heading,
                        0,
                        "column \"" + name + "\" is there twice. Write its number in the map instead, such as "
                                + (at + 1) + "."));
            }
            return at;
        }
        int count = map.header()
                ? names.size()
                : text.cells(text.beginning().get(0)).size();
        if (name.matches("\\d{1,4}") && Integer.parseInt(name) >= 1 && Integer.parseInt(name) <= count) {
            return Integer.parseInt(name) - 1;
        }
        problems.add(new InputProblem(
                text.file(),
                map.header() ? heading : 1,
                0,
                map.header()
                        ? "there is no column \"" + name + "\"; the columns are " + String.join(", ", names) + "."
                                + Nearest.of(name, names)
                                        .map(near -> " Did you mean \"" + near + "\"?")
                                        .orElse("")
                        : "the map says header: no, so \"" + name + "\" must be the number of a column, 1 to " + count
                                + "."));
        return 0;
    }

    /** The median of the times between rows at the beginning, for each device. */
    private Map<String, Double> usualSeconds() {
        Map<String, List<Long>> between = new HashMap<>();
        Map<String, Long> before = new HashMap<>();
        long[] read = new long[2];
        LogCells cells = text.cells();
        List<String> lines = text.beginning();
        for (int i = heading; i < lines.size(); i++) {
            cells.take(lines.get(i));
            if (cells.size() > needed() && map.time().form().read(time(cells), read)) {
                String device = deviceCell < 0 ? "" : cells.text(deviceCell);
                Long last = before.put(device, read[0]);
                if (last != null && read[0] > last) {
                    between.computeIfAbsent(device, d -> new ArrayList<>()).add(read[0] - last);
                }
            }
        }
        Map<String, Double> usual = new HashMap<>();
        between.forEach((device, list) -> {
            Collections.sort(list);
            usual.put(device, (double) list.get(list.size() / 2));
        });
        return usual;
    }
}
