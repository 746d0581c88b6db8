package ampdays.io;

import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Sheet;
import ampdays.commission.Sunlight;
import ampdays.units.Dimension;
import ampdays.units.Nearest;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a filled commissioning sheet: first the conditions in its heading, by which the sheet can be made again, then the
 * readings, line by line against that sheet. Takes what spreadsheets do to a file: other separators, decimal commas, quoted
 * headings, cells without their last zeros.
 */
public final class SheetReader {
    private static final Set<String> HEADING = Set.of("title", "option", "ambient", "under-bonnet", "soc", "sun", "at");
    private static final Pattern COMMA_NUMBER = Pattern.compile("([+\\-\u2212]?\\d+),(\\d+)(\\s*\\S*)");
    private static final Pattern BARE_NUMBER = Pattern.compile("[+\\-\u2212]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)");
    private static final double LEAST_READING = -1e6;
    private static final double MOST_READING = 1e6;

    private final CsvText text;
    private final PlainHeading heading;
    private final Map<String, Integer> cellOf = new HashMap<>();
    private int names;
    private int width;

    private SheetReader(CsvText text) {
        this.text = text;
        this.heading = PlainHeading.of(text, HEADING);
    }

    /**
     * Opens a sheet.
     *
     * @throws IOException when the file cannot be read
     * @throws InputException when it is no commissioning sheet
     */
    public static SheetReader open(Path path) throws IOException, InputException {
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "this is a folder, not a commissioning sheet");
        }
        CsvText text = CsvText.of(String.valueOf(path.getFileName()), Files.readAllBytes(path));
        if (text.size() == 0) {
            throw text.problem(0, 0, "the file is empty. \"ampdays commission FILE\" makes a sheet.");
        }
        if (!text.isPlain()) {
            throw text.problem(0, 0, "the file is not plain text. Save it as CSV in UTF-8.");
        }
        int names = 1;
        while (names < text.size() && !isNames(text.line(names))) {
            names++;
        }
        String line = text.line(names);
        char separator = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
        SheetReader reader = new SheetReader(text.separatedBy(separator));
        reader.columns(names);
        return reader;
    }

    private static boolean isNames(String line) {
        return line.replace("\"", "").matches("(?i)\\s*id\\s*[,;\t].*");
    }

    private void columns(int line) throws InputException {
        names = line;
        if (!isNames(text.line(line))) {
            throw text.problem(
                    0,
                    0,
                    "there is no line of column names that begins with \"id\". Fill in a sheet that \"ampdays commission"
                            + " FILE\" made.");
        }
        List<String> cells = text.cells(line);
        width = CsvText.width(cells);
        for (int cell = 0; cell < cells.size(); cell++) {
            String name = cells.get(cell).strip().toLowerCase(Locale.ROOT);
            if (SheetCsv.COLUMNS.contains(name) && cellOf.put(name, cell) != null) {
                text.add(line, text.column(line, cell), "column \"" + name + "\" is there twice.");
            }
        }
        for (String needed : List.of("unit", "pass from", "pass to", "stop below", "stop above", "reading")) {
            if (!cellOf.containsKey(needed)) {
                text.add(line, 0, "column \"" + needed + "\" is missing; put it back as the sheet had it.");
            }
        }
        text.throwIfWrong();
    }

    /** The option that the sheet was made for. */
    public String option() throws InputException {
        String option = headingText("option").orElse("");
        text.throwIfWrong();
        return option;
    }

    /** The conditions that the sheet was made for. */
    public Conditions conditions() throws InputException {
        double ambientC = told("ambient", Dimension.TEMPERATURE);
        double underBonnetC = told("under-bonnet", Dimension.TEMPERATURE);
        double soc = told("soc", Dimension.SHARE);
        Sunlight sun = sun();
        text.throwIfWrong();
        try {
            return new Conditions(ambientC, underBonnetC, soc, sun);
        } catch (IllegalArgumentException e) {
            throw text.problem(0, 0, "the heading's conditions: " + e.getMessage() + ".");
        }
    }

    private Sunlight sun() {
        Optional<PlainHeading.Entry> light = heading.optional("sun");
        Optional<PlainHeading.Entry> time = heading.optional("at");
        try {
            return Sunlight.parse(light.map(entry -> plain(entry.value())), time.map(entry -> plain(entry.value())));
        } catch (QuantityException e) {
            PlainHeading.Entry wrong = (e.getMessage().startsWith("at ") ? time : light).orElseThrow();
            text.add(wrong.line(), wrong.column(), e.getMessage());
            return Sunlight.NOT_TOLD;
        }
    }

    private Optional<String> headingText(String key) {
        PlainHeading.Entry entry = heading.entry(key, "as the sheet was made");
        return Optional.ofNullable(entry).map(e -> plain(e.value()));
    }

    /** A spreadsheet may leave separators of empty cells, and quotation marks, behind a heading line. */
    private static String plain(String value) {
        return value.replaceAll("[,;\\t\"]+$", "").strip();
    }

    private double told(String key, Dimension dimension) {
        PlainHeading.Entry entry = heading.entry(key, "as the sheet was made");
        if (entry == null) {
            return Double.NaN;
        }
        try {
            return Quantity.parse(plain(entry.value()), dimension).value();
        } catch (QuantityException e) {
            text.add(entry.line(), entry.column(), key + " " + e.getMessage());
            return Double.NaN;
        }
    }

    /**
     * The readings by the ids of the sheet's items, each in its item's unit.
     *
     * @param sheet made again from the scenario and {@link #conditions}
     * @throws InputException when a line is unknown, was changed, or cannot be read, with all that is wrong
     */
    public Map<String, Double> readings(Sheet sheet) throws InputException {
        Map<String, Item> items = new LinkedHashMap<>();
        sheet.items().forEach(item -> items.put(item.id(), item));
        Map<String, Integer> lineOf = new HashMap<>();
        Map<String, Double> readings = new HashMap<>();
        for (int line = names + 1; line <= text.size(); line++) {
            if (!text.line(line).isBlank() && !text.line(line).startsWith("#")) {
                row(line, items, lineOf, readings);
            }
        }
        text.throwIfWrong();
        return readings;
    }

    private void row(int line, Map<String, Item> items, Map<String, Integer> lineOf, Map<String, Double> readings)
            throws InputException {
        List<String> cells = text.cells(line);
        if (CsvText.width(cells) == 0) {
            return;
        }
        String id = cell(cells, "id");
        Item item = items.get(id);
        if (item == null) {
            text.add(
                    line,
                    1,
                    "\"" + id + "\" is not on the sheet of this van and day."
                            + Nearest.of(id, items.keySet())
                                    .map(near -> " Did you mean \"" + near + "\"?")
                                    .orElse(" Make a new sheet if the design was changed, and copy the readings."));
            return;
        }
        Integer before = lineOf.putIfAbsent(id, line);
        if (before != null) {
            text.add(line, 1, "\"" + id + "\" stands in line " + before + " already. Keep one of the two.");
            return;
        }
        if (cells.size() > width && isSplit(cells)) {
            text.add(
                    line,
                    0,
                    "cells in this row: " + cells.size() + "; names above: " + width
                            + ". Write numbers with a point, or put quotation marks around the cell.");
            return;
        }
        String written = cell(cells, "reading");
        if (unchanged(line, cells, item) && !written.isEmpty()) {
            double reading = item.isQuestion() ? answer(line, written) : measured(line, item, written);
            if (Double.isFinite(reading)) {
                readings.put(id, reading);
            }
        }
    }

    /** Whether a comma within a number may have made two cells of it: something stands too far right, or a bare number as note. */
    private boolean isSplit(List<String> cells) {
        return cells.stream().skip(width).anyMatch(c -> !c.isBlank())
                || BARE_NUMBER.matcher(cell(cells, "note")).matches();
    }

    /** Whether prediction and band are those of the scenario as it is now; a reading's worth depends on it. */
    private boolean unchanged(int line, List<String> cells, Item item) {
        List<String> printed = SheetCsv.printed(item);
        List<String> columns = List.of("predicted", "pass from", "pass to", "stop below", "stop above");
        for (int i = 0; i < columns.size(); i++) {
            String column = columns.get(i);
            if (cellOf.containsKey(column) && !same(cell(cells, column), printed.get(i))) {
                text.add(
                        line,
                        text.column(line, cellOf.get(column)),
                        column + " is \"" + cell(cells, column) + "\", but the scenario now gives "
                                + (printed.get(i).isEmpty() ? "none" : printed.get(i))
                                + ": the scenario or the sheet was changed. Make a new sheet, and copy the readings.");
                return false;
            }
        }
        return true;
    }

    private static boolean same(String written, String printed) {
        if (BARE_NUMBER.matcher(written).matches()
                && BARE_NUMBER.matcher(printed).matches()) {
            return Double.parseDouble(written.replace('\u2212', '-')) == Double.parseDouble(printed);
        }
        return written.equalsIgnoreCase(printed);
    }

    private String cell(List<String> cells, String column) {
        Integer at = cellOf.get(column);
        String written = at == null || at >= cells.size() ? "" : cells.get(at).strip();
        Matcher comma = COMMA_NUMBER.matcher(written);
        boolean decimalComma = text.separator() != ',' && comma.matches();
        return decimalComma ? comma.group(1) + "." + comma.group(2) + comma.group(3) : written;
    }

    private int place(int line) {
        return text.column(line, cellOf.get("reading"));
    }

    private double answer(int line, String written) {
        switch (written.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "ok", "1" -> {
                return 1;
            }
            case "no", "n", "0" -> {
                return 0;
            }
            default -> {
                text.add(line, place(line), "reading is \"" + written + "\". Write yes or no.");
                return Double.NaN;
            }
        }
    }

    private double measured(int line, Item item, String written) {
        boolean bare = BARE_NUMBER.matcher(written).matches();
        try {
            double value = item.dimension().isPresent()
                    ? inUnit(bare ? written + " " + item.unit() : written, item)
                    : counted(written, item);
            if (value >= LEAST_READING && value <= MOST_READING) {
                return value;
            }
            text.add(line, place(line), "reading \"" + written + "\" is out of range.");
        } catch (QuantityException e) {
            text.add(line, place(line), "reading " + e.getMessage());
        }
        return Double.NaN;
    }

    private static double inUnit(String written, Item item) throws QuantityException {
        Dimension dimension = item.dimension().orElseThrow();
        double value = Quantity.parse(written, dimension).value();
        boolean offset = dimension == Dimension.TEMPERATURE;
        return offset
                ? value
                : value / Quantity.parse("1 " + item.unit(), dimension).value();
    }

    /** What has no dimension of ours: the sheet's own unit may stand behind the number. */
    private static double counted(String written, Item item) throws QuantityException {
        String number = written.endsWith(item.unit())
                ? written.substring(0, written.length() - item.unit().length()).strip()
                : written;
        if (!BARE_NUMBER.matcher(number).matches()) {
            throw new QuantityException("\"" + written + "\" is not a number of " + item.unit() + ". Write it like: 10 "
                    + item.unit() + ".");
        }
        return Double.parseDouble(number.replace('\u2212', '-'));
    }
}
