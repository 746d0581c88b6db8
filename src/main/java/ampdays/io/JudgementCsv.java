package ampdays.io;

import ampdays.commission.Item;
import ampdays.commission.Judgement;
import ampdays.commission.Judgement.Support;
import ampdays.commission.Judgement.Suspect;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/** What the readings of a commissioning sheet say, as a table. Format: docs/OUTPUT.md. */
public final class JudgementCsv {
    private static final List<String> COLUMNS = Stream.concat(
                    SheetCsv.PRINTED.stream(), Stream.of("reading", "outcome", "likely causes", "next reading"))
            .toList();

    private JudgementCsv() {}

    /** The whole file: every line of the sheet, in its order. */
    public static String text(Sheet sheet, List<Judgement> judgements) {
        Map<String, Judgement> byId = new HashMap<>();
        judgements.forEach(judgement -> byId.put(judgement.item().id(), judgement));
        StringWriter out = new StringWriter();
        CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();
        out.write(format.format(COLUMNS.toArray()) + "\n");
        for (Step step : sheet.steps()) {
            for (Item item : step.items()) {
                out.write(format.format(row(step, item, byId.get(item.id())).toArray()) + "\n");
            }
        }
        return out.toString();
    }

    private static List<String> row(Step step, Item item, Judgement judgement) {
        if (judgement == null) {
            List<String> blank = new ArrayList<>(SheetCsv.printed(step, item, item));
            blank.addAll(List.of("", "not read", "", ""));
            return blank;
        }
        List<String> row = new ArrayList<>(SheetCsv.printed(step, item, item.judgedBy(judgement.band())));
        row.add(item.isQuestion() ? item.show(judgement.reading()) : item.typed(judgement.reading()));
        row.add(judgement.outcome().label());
        row.add(String.join(
                "; ", judgement.causes().stream().map(JudgementCsv::cause).toList()));
        row.add(judgement.next());
        return row;
    }

    private static String cause(Suspect suspect) {
        String text = suspect.cause().text();
        return suspect.support() == Support.UNTOLD
                ? text
                : text + (suspect.support() == Support.FOR ? " (supported)" : " (spoken against)");
    }
}
