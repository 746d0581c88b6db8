package ampdays.report.page;

import ampdays.commission.Item;
import ampdays.commission.Sheet;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;

/**
 * A commissioning sheet to print and fill in by hand, readable in black and white: one file of HTML that needs nothing beside
 * it, or a PDF laid out by the same template.
 *
 * @param style the style sheet
 * @param program its name and version
 * @param onPaper whether it is laid out as a PDF
 */
public record SheetPage(Sheet sheet, String style, String program, boolean onPaper) {
    private static final String STYLE = "/ampdays/report/sheet.css";

    /** What is written by hand at the head, row by row. */
    private static final List<List<String>> BLANKS =
            List.of(List.of("Date and time", "Van"), List.of("By", "Meters"), List.of("Place", "Software versions"));

    /** The whole page. */
    public static String html(Sheet sheet, Paper paper, String program) throws IOException {
        return page(sheet, paper, program, false);
    }

    /**
     * The sheets of paper.
     *
     * @param complaints takes what the layout did not understand
     */
    public static byte[] pdf(Sheet sheet, Paper paper, String program, Consumer<String> complaints) throws IOException {
        String page = page(sheet, paper, program, true);
        return PdfFile.of(page, program, PdfFile.UNDATED, new DefaultObjectDrawerFactory(), complaints);
    }

    private static String page(Sheet sheet, Paper paper, String program, boolean onPaper) throws IOException {
        String style = HtmlPage.resource(STYLE) + "@page { size: " + paper.word() + "; }\n";
        StringOutput written = new StringOutput(1 << 16);
        HtmlTemplateOutput output = new VisibleOutput(written);
        JtecommissionGenerated.render(output, null, new SheetPage(sheet, style, program, onPaper));
        return written.toString();
    }

    public List<List<String>> blanks() {
        return BLANKS;
    }

    /** What stands at the head of each sheet of paper. */
    public String runningHead() {
        return "Commissioning · " + sheet.title() + " · " + sheet.option();
    }

    /** A number is not parted from its unit at the end of a line. */
    public String tied(Item item, String quantity) {
        return item.isQuestion()
                ? quantity
                : quantity.replace(" " + item.unit(), "\u00A0" + item.unit()).replace(" °F", "\u00A0°F");
    }
}
