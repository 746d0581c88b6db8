package ampdays.io;

import ampdays.commission.Band;
import ampdays.commission.Item;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/** Writes a commissioning sheet to type into. Format: docs/OUTPUT.md. */
public final class SheetCsv {
    /** What is printed of every item. */
    static final List<String> PRINTED = List.of(
            "id", "step", "what", "where", "unit", "predicted", "pass from", "pass to", "stop below", "stop above");

    static final List<String> COLUMNS =
            Stream.concat(PRINTED.stream(), Stream.of("reading", "note")).toList();

    private SheetCsv() {}

    /** The whole file. */
    public static String text(Sheet sheet) {
        StringWriter out = new StringWriter();
        out.write("# title: " + oneLine(sheet.title()) + "\n");
        out.write("# option: " + oneLine(sheet.option()) + "\n");
        for (Map.Entry<String, String> told : sheet.conditions().spelled().entrySet()) {
            out.write("# " + told.getKey() + ": " + told.getValue() + "\n");
        }
        out.write(
                "# Type what you read into the column reading: numbers in the unit of the line, or with a unit of their own;"
                        + " yes or no.\n");
        CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();
        out.write(format.format(COLUMNS.toArray()));
        for (Step step : sheet.steps()) {
            for (Item item : step.items()) {
                out.write("\n" + format.format(withBlanks(printed(step, item, item))));
            }
        }
        out.write("\n");
        return out.toString();
    }

    private static Object[] withBlanks(List<String> printed) {
        return Stream.concat(printed.stream(), Stream.of("", "")).toArray();
    }

    /**
     * What is printed of an item.
     *
     * @param judgedBy the item with the band that holds
     */
    static List<String> printed(Step step, Item item, Item judgedBy) {
        String unit = item.isQuestion() ? "yes or no" : item.unit();
        return Stream.concat(
                        Stream.of(item.id(), step.title(), item.what(), item.where(), unit), printed(judgedBy).stream())
                .toList();
    }

    /** Prediction and band as printed: predicted, pass from, pass to, stop below, stop above. */
    static List<String> printed(Item item) {
        if (item.isQuestion()) {
            return List.of("yes", "yes", "yes", item.stopText().isEmpty() ? "" : "yes", "");
        }
        Band band = item.band();
        return List.of(
                item.number(item.predicted()),
                item.number(band.passFrom()),
                item.number(band.passTo()),
                item.number(band.stopBelow()),
                item.number(band.stopAbove()));
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
