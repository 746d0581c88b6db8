package ampdays.cli;

import ampdays.commission.Judgement;
import ampdays.commission.Sheet;
import ampdays.io.JudgementCsv;
import ampdays.io.SheetCsv;
import ampdays.io.SheetJson;
import ampdays.report.page.Paper;
import ampdays.report.page.SheetPage;
import ampdays.results.WholeFile;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Files of a commissioning: the sheet, and what its readings say. Apart from the command, which does not load a layout. */
final class CommissionFiles {
    static final List<String> SHEET = List.of("sheet.csv", "sheet.html", "sheet.pdf", "sheet.json");
    static final List<String> JUDGEMENT = List.of("judgement.csv", "judgement.json");

    private CommissionFiles() {}

    /** All is made before the first file is written, so that nothing is written when something cannot be made. */
    static void writeSheet(Path folder, Sheet sheet, Paper paper) throws IOException {
        List<String> complaints = new ArrayList<>();
        byte[] pdf = SheetPage.pdf(sheet, paper, Main.version(), complaints::add);
        if (!complaints.isEmpty()) {
            throw new IllegalStateException("the layout did not understand: " + String.join("; ", complaints));
        }
        String html = SheetPage.html(sheet, paper, Main.version());
        StringWriter json = new StringWriter();
        SheetJson.write(json, sheet);
        write(folder.resolve("sheet.csv"), SheetCsv.text(sheet));
        write(folder.resolve("sheet.html"), html);
        WholeFile.write(folder.resolve("sheet.pdf"), to -> to.write(pdf));
        write(folder.resolve("sheet.json"), json.toString());
    }

    static void writeJudgement(Path folder, Sheet sheet, List<Judgement> judgements) throws IOException {
        StringWriter json = new StringWriter();
        SheetJson.write(json, sheet, judgements);
        write(folder.resolve("judgement.csv"), JudgementCsv.text(sheet, judgements));
        write(folder.resolve("judgement.json"), json.toString());
    }

    private static void write(Path target, String text) throws IOException {
        WholeFile.writeText(target, text);
    }
}
