package ampdays.io;

import ampdays.commission.Band;
import ampdays.commission.Item;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;

/** Writes a commissioning sheet to type into. Format: docs/OUTPUT.md. */
public final class SheetCsv {
    static final List<String> COLUMNS = List.of(
            "id",
            "step",
            "what",
            "where",
            "unit",
            "predicted",
            "pass from",
            "pass to",
            "stop below",
            "stop above",
            "reading",
            "note");

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
                out.write("\n" + format.format(row(step, item).toArray()));
            }
        }
        out.write("\n");
        return out.toString();
    }

    private static List<String> row(Step step, Item item) {
        List<String> printed = printed(item);
        return List.of(
                item.id(),
                step.title(),
                item.what(),
                item.where(),
                item.isQuestion() ? "yes or no" : item.unit(),
                printed.get(0),
                printed.get(1),
                printed.get(2),
                printed.get(3),
                printed.get(4),
                "",
                "");
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
