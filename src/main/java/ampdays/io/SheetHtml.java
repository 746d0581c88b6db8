package ampdays.io;

import ampdays.commission.Item;
import ampdays.commission.Sheet;
import ampdays.commission.Step;

/**
 * Writes a commissioning sheet to print and fill in by hand: one page of XHTML with its style in it, no script, nothing
 * fetched. Readable in black and white.
 */
public final class SheetHtml {
    private static final String STYLE = """
            @page { size: A4; margin: 14mm }
            body { font-family: sans-serif; font-size: 9.5pt; line-height: 1.3; color: #000; max-width: 190mm; margin: auto }
            h1 { font-size: 15pt; margin: 0 0 2mm 0 }
            h2 { font-size: 11pt; margin: 5mm 0 1mm 0; page-break-after: avoid }
            p { margin: 0 0 1.5mm 0 }
            ul { margin: 1mm 0 2mm 0; padding-left: 5mm }
            table { border-collapse: collapse; width: 100%; table-layout: fixed; margin-top: 1mm }
            th, td { border: 0.3mm solid #666; padding: 1mm 1.5mm; text-align: left; vertical-align: top }
            th { font-weight: bold; border-bottom-width: 0.6mm }
            tr { page-break-inside: avoid }
            .what { width: 32% } .where { width: 19% } .number { width: 12% } .pass { width: 14% } .reading { width: 12% }
            .caution { border-left: 1.2mm solid #000; padding-left: 2mm; font-weight: bold }
            .write { border-bottom: 0.3mm solid #000; display: inline-block; min-width: 42mm }
            .small { font-size: 8pt }
            """;

    private final StringBuilder out = new StringBuilder();

    private SheetHtml() {}

    /** The whole page. */
    public static String text(Sheet sheet) {
        SheetHtml page = new SheetHtml();
        page.write(sheet);
        return page.out.toString();
    }

    private void write(Sheet sheet) {
        line("<!DOCTYPE html>");
        line("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\" xml:lang=\"en\">");
        line("<head>");
        line("<meta charset=\"UTF-8\" />");
        line("<title>" + escaped("Commissioning sheet: " + sheet.title()) + "</title>");
        line("<style>");
        out.append(STYLE);
        line("</style>");
        line("</head>");
        line("<body>");
        line("<h1>Commissioning sheet</h1>");
        line("<p><b>" + escaped(sheet.title()) + "</b><br />Option: " + escaped(sheet.option()) + "</p>");
        line("<p>" + escaped("Made for " + sheet.conditions().words() + ". On another day make another sheet.")
                + "</p>");
        line("<p>Date <span class=\"write\"></span> Van <span class=\"write\"></span> By <span"
                + " class=\"write\"></span></p>");
        line("<p>Meters <span class=\"write\"></span> Software versions <span class=\"write\"></span></p>");
        line("<ul>");
        Sheet.CAUTIONS.forEach(caution -> line("<li><b>" + escaped(caution) + "</b></li>"));
        line("</ul>");
        int number = 1;
        for (Step step : sheet.steps()) {
            step(number, step);
            number++;
        }
        line("<h2>Notes</h2>");
        line("<ul class=\"small\">");
        sheet.notes().forEach(note -> line("<li>" + escaped(note) + "</li>"));
        line("</ul>");
        line("<p>Signed <span class=\"write\"></span> <span class=\"write\"></span></p>");
        line("</body>");
        line("</html>");
    }

    private void step(int number, Step step) {
        line("<h2>" + number + ". " + escaped(step.title()) + "</h2>");
        line("<p>" + escaped(step.how()) + "</p>");
        if (!step.caution().isEmpty()) {
            line("<p class=\"caution\">" + escaped(step.caution()) + "</p>");
        }
        line("<table>");
        line(
                "<thead><tr><th class=\"what\">Read</th><th class=\"where\">Where</th><th class=\"number\">Predicted</th><th"
                        + " class=\"pass\">Pass</th><th class=\"pass\">Stop</th><th class=\"reading\">Reading</th></tr></thead>");
        line("<tbody>");
        step.items().forEach(this::item);
        line("</tbody>");
        line("</table>");
    }

    private void item(Item item) {
        String blank = item.isQuestion() ? "yes &#160; no" : "&#160;";
        line("<tr><td>" + escaped(item.what()) + "<br /><span class=\"small\">" + escaped(item.id())
                + "</span></td><td>"
                + escaped(item.where()) + "</td><td>"
                + (item.isQuestion() ? "" : quantity(item, item.show(item.predicted())))
                + "</td><td>" + quantity(item, item.passText()) + "</td><td>" + quantity(item, item.stopText())
                + "</td><td>" + blank
                + "</td></tr>");
    }

    /** A number is not parted from its unit at the end of a line. */
    private static String quantity(Item item, String text) {
        return item.isQuestion() ? escaped(text) : escaped(text).replace(" " + item.unit(), "&#160;" + item.unit());
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    /** Text as it may stand between tags; characters that no page may hold become spaces. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(Character.isISOControl(c) ? ' ' : c);
            }
        });
        return escaped.toString();
    }
}
