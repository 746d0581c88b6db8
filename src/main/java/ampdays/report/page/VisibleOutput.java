package ampdays.report.page;

import ampdays.chart.VisibleText;
import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;

/** Escapes what users wrote for its place in the page, and leaves out of it what cannot be seen. */
final class VisibleOutput extends OwaspHtmlTemplateOutput {
    VisibleOutput(TemplateOutput target) {
        super(target);
    }

    @Override
    public void writeUserContent(String text) {
        super.writeUserContent(text == null ? null : VisibleText.of(text));
    }
}
