package ampdays.io;

import ampdays.audit.Reading;
import ampdays.audit.Readings;
import ampdays.audit.Use;
import ampdays.scenario.LoadTimes;
import ampdays.units.ClockTime;
import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads meter readings of a load audit, as {@code docs/READINGS.md} describes them. */
public final class ReadingsReader {
    private static final List<String> COLUMNS =
            List.of("step", "current", "waver", "surge", "voltage", "time", "use", "when", "note");
    private static final Map<String, Dimension> MEASURED = Map.of(
            "current", Dimension.CURRENT,
            "waver", Dimension.CURRENT,
            "surge", Dimension.CURRENT,
            "voltage", Dimension.VOLTAGE);
    private static final Pattern BARE_NUMBER = Pattern.compile("[+\\-\u2212]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)");
    private static final Pattern COMMA_NUMBER = Pattern.compile("([+\\-\u2212]?\\d+),(\\d+)(\\s*\\p{L}*)");
    private static final double LEAST_V = 8;
    private static final double MOST_V = 65;
    private static final double MOST_A = 2000;

    private final CsvText text;
    private final ReadingsHeading meter;
    private final Map<String, Integer> cellOf = new HashMap<>();
    private final Map<String, String> unitOf = new HashMap<>();
    private final Switching switching = new Switching();
    private final Map<String, Use> uses = new LinkedHashMap<>();
    private final List<Reading> rows = new ArrayList<>();
    private final List<Integer> minutes = new ArrayList<>();
    private boolean stepsFollowed = true;
    private int width;

    private ReadingsReader(CsvText text) {
        this.text = text;
        this.meter = new ReadingsHeading(text, MOST_A);
    }

    /**
     * Reads a list of readings.
     *
     * @throws IOException when the file cannot be read
     * @throws InputException when it can, but is not usable, with all that is wrong
     */
    public static Readings read(Path path) throws IOException, InputException {
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "this is a folder, not a list of readings");
        }
        CsvText text = CsvText.of(String.valueOf(path.getFileName()), Files.readAllBytes(path));
        if (text.size() == 0) {
            throw text.problem(0, 0, "the file is empty. \"ampdays audit --example FILE\" writes one to begin with.");
        }
        if (!text.isPlain()) {
            throw text.problem(0, 0, "the file is not plain text. Save it as CSV in UTF-8.");
        }
        int names = new ReadingsHeading(text, MOST_A).lines() + 1;
        String line = text.line(names);
        char separator = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
        return new ReadingsReader(text.separatedBy(separator)).read(names);
    }

    private Readings read(int names) throws InputException {
        meter.refuseMisspelt();
        columns(names);
        text.throwIfWrong();
        for (int line = names + 1; line <= text.size(); line++) {
            String written = text.line(line).strip();
            if (written.equals("#") || written.startsWith("# ")) {
                meter.refuseMisplaced(line);
            } else if (!written.isEmpty()) {
                row(line);
            }
        }
        if (rows.isEmpty()) {
            text.add(names, 0, "after the names of the columns comes no reading.");
        }
        double resolutionA = meter.resolutionA();
        double driftA = meter.driftA();
        Optional<Boolean> told = meter.dischargeIsPlus();
        text.throwIfWrong();
        boolean dischargeIsPlus = told.isPresent() ? told.get() : meter.dischargeIsPlus(rows);
        return new Readings(meter.title(), uses, placed(dischargeIsPlus), resolutionA, driftA, meter.notes());
    }

    private void columns(int line) throws InputException {
        List<String> names = text.cells(line);
        width = CsvText.width(names);
        if (names.isEmpty() || !names.get(0).equalsIgnoreCase("step")) {
            throw text.problem(
                    line,
                    1,
                    "after the heading must come the names of the columns, beginning with \"step\", such as"
                            + " step,current A,voltage V,note.");
        }
        for (int cell = 0; cell < names.size(); cell++) {
            String name = names.get(cell).strip();
            String word = name.split("\\s+", 2)[0].toLowerCase(Locale.ROOT);
            String unit =
                    name.substring(word.length()).replaceAll("[()\\[\\]]", "").strip();
            boolean measured = MEASURED.containsKey(word);
            if (!COLUMNS.contains(word) || (!unit.isEmpty() && !measured)) {
                if (!name.isEmpty()) {
                    text.add(
                            line,
                            text.column(line, cell),
                            "\"" + name + "\" is not a column; the columns are " + String.join(", ", COLUMNS)
                                    + ", and current, waver, surge and voltage may carry a unit, such as current A.");
                }
            } else if (measured
                    && !unit.isEmpty()
                    && !MEASURED.get(word).spellings().contains(unit)) {
                text.add(
                        line,
                        text.column(line, cell),
                        "the unit \"" + unit + "\" of column " + word + " is not known here; it may be "
                                + String.join(" or ", MEASURED.get(word).symbols()) + ".");
            } else if (cellOf.put(word, cell) != null) {
                text.add(line, text.column(line, cell), "column \"" + word + "\" is there twice.");
            } else {
                unitOf.put(word, unit);
            }
        }
        if (names.stream().noneMatch(name -> name.toLowerCase(Locale.ROOT).startsWith("current"))) {
            text.add(line, 0, "there is no column current; it is needed.");
        }
    }

    private void row(int line) throws InputException {
        List<String> cells = text.cells(line);
        if (CsvText.width(cells) == 0) {
            return;
        }
        if (cells.size() > width && cells.stream().skip(width).anyMatch(c -> !c.isBlank())) {
            text.add(
                    line,
                    0,
                    "cells in this row: " + cells.size() + "; names above: " + width + "."
                            + (text.separator() == ','
                                    ? " A comma separates cells: write numbers with a point, and steps with ; between"
                                            + " appliances."
                                    : " Put quotation marks around a cell that has the separator in it."));
            return;
        }
        Set<String> switchedOn = stepsFollowed ? step(line, cells) : Set.of();
        String written = cell(cells, "current");
        if (written.isEmpty()) {
            text.add(line, 0, "there is no current. Write what the meter said, or leave the row out.");
            return;
        }
        meter.noteDigit(written, unitOf.get("current"));
        double currentA = measured(line, cells, "current", -MOST_A, MOST_A);
        double waverA = measured(line, cells, "waver", 0, MOST_A);
        double surgeA = measured(line, cells, "surge", -MOST_A, MOST_A);
        double voltageV = measured(line, cells, "voltage", LEAST_V, MOST_V);
        if (Math.abs(surgeA) < Math.abs(currentA)) {
            text.add(
                    line,
                    place(line, "surge"),
                    "surge is " + cell(cells, "surge") + ", less than the settled current " + written
                            + ". The surge is the highest that the meter showed; exchange the two, or leave it empty.");
        }
        time(line, cell(cells, "time"));
        use(line, cells, switchedOn);
        rows.add(new Reading(
                line, switching.on(), switchedOn, currentA, Double.isNaN(waverA) ? 0 : waverA, surgeA, voltageV, 0));
    }

    /** What a step switches on; after one that cannot be, the later ones cannot be judged. */
    private Set<String> step(int line, List<String> cells) {
        try {
            return switching.step(line, cell(cells, "step"));
        } catch (Switching.StepException e) {
            text.add(line, 1, e.getMessage());
            stepsFollowed = false;
            return Set.of();
        }
    }

    private String cell(List<String> cells, String name) {
        Integer at = cellOf.get(name);
        String written = at == null || at >= cells.size() ? "" : cells.get(at).strip();
        Matcher comma = COMMA_NUMBER.matcher(written);
        boolean decimalComma = text.separator() != ',' && MEASURED.containsKey(name) && comma.matches();
        return decimalComma ? comma.group(1) + "." + comma.group(2) + comma.group(3) : written;
    }

    private int place(int line, String name) {
        return text.column(line, cellOf.get(name));
    }

    /** A quantity in its base unit; NaN when the cell is empty, or after noting what is wrong with it. */
    private double measured(int line, List<String> cells, String name, double least, double most) {
        String written = cell(cells, name);
        if (written.isEmpty()) {
            return Double.NaN;
        }
        Dimension dimension = MEASURED.get(name);
        String whole = BARE_NUMBER.matcher(written).matches() ? written + " " + unitOf.get(name) : written;
        try {
            double value = Quantity.parse(whole, dimension).value();
            if (value >= least && value <= most) {
                return value;
            }
            text.add(
                    line,
                    place(line, name),
                    name + " \"" + whole + "\" is out of range. It must lie from " + dimension.show(least) + " to "
                            + dimension.show(most) + ".");
        } catch (QuantityException e) {
            text.add(line, place(line, name), name + " " + e.getMessage());
        }
        return Double.NaN;
    }

    private void time(int line, String written) {
        if (written.isEmpty()) {
            return;
        }
        try {
            int minute = ClockTime.parse(written);
            int before = minutes.isEmpty() ? minute : minutes.get(minutes.size() - 1);
            if (minute < before) {
                text.add(
                        line,
                        place(line, "time"),
                        "time " + written + " lies before that of the reading above. Write the rows in the order in"
                                + " which they were taken, within one day.");
            }
            minutes.add(minute);
        } catch (QuantityException e) {
            text.add(line, place(line, "time"), "time " + e.getMessage());
        }
    }

    private void use(int line, List<String> cells, Set<String> switchedOn) {
        switching.on().forEach(name -> uses.putIfAbsent(name, Use.UNKNOWN));
        String hours = cell(cells, "use");
        String when = cell(cells, "when");
        if (hours.isEmpty() && when.isEmpty()) {
            return;
        }
        if (stepsFollowed && switchedOn.size() != 1) {
            text.add(
                    line,
                    place(line, hours.isEmpty() ? "when" : "use"),
                    "use and when belong into a row that switches one appliance on; this one switches on "
                            + (switchedOn.isEmpty() ? "none" : switchedOn.size()) + ".");
            return;
        }
        if (switchedOn.size() != 1) {
            return;
        }
        String name = switchedOn.iterator().next();
        try {
            double hoursPerDay = hours.isEmpty()
                    ? Double.NaN
                    : Quantity.parse(hours, Dimension.USE_PER_DAY).value();
            if (hoursPerDay < 0 || hoursPerDay > 24) {
                throw new QuantityException("\"" + hours + "\" is out of range. It must lie from 0 h/day to 24 h/day.");
            }
            LoadTimes times = LoadTimes.parse(when.isEmpty() ? "always" : when);
            uses.put(name, new Use(hoursPerDay, when, times.occasion(), times.windows()));
        } catch (QuantityException e) {
            text.add(line, place(line, hours.isEmpty() ? "when" : "use"), "use of \"" + name + "\": " + e.getMessage());
        }
    }

    /** The rows with discharge as plus, each placed between 0 and 1 by its time, or by its number when times lack. */
    private List<Reading> placed(boolean dischargeIsPlus) {
        boolean timed = minutes.size() == rows.size() && minutes.get(minutes.size() - 1) > minutes.get(0);
        List<Reading> placed = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Reading row = rows.get(i);
            double position = timed
                    ? (minutes.get(i) - minutes.get(0)) / (double) (minutes.get(minutes.size() - 1) - minutes.get(0))
                    : rows.size() == 1 ? 0 : i / (rows.size() - 1.0);
            placed.add(new Reading(
                    row.line(),
                    row.on(),
                    row.switchedOn(),
                    dischargeIsPlus ? row.currentA() : -row.currentA(),
                    row.waverA(),
                    Math.abs(row.surgeA()),
                    row.voltageV(),
                    position));
        }
        return placed;
    }
}
