package ampdays.report.page;

import ampdays.chart.ChartModel;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.report.Block.Picture;
import ampdays.report.Proposal;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.io.IOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.w3c.dom.Element;

/** The proposal as a PDF: the same template laid out on sheets, with its charts drawn straight onto them. */
public final class PdfPage {
    private static final String STYLE = "/ampdays/report/pdf.css";
    private static final double TEXT_WIDTH_MM = 176;

    private final Proposal proposal;
    private final Paper paper;
    private final ChartRenderer charts;
    private final Map<String, ChartModel> models = new HashMap<>();

    private PdfPage(Proposal proposal, Paper paper, ChartRenderer charts) {
        this.proposal = proposal;
        this.paper = paper;
        this.charts = charts;
        proposal.pictures().forEach(picture -> models.put(picture.name(), picture.chart()));
    }

    /**
     * Lays the proposal out.
     *
     * @param logo of the shop, a PNG
     * @param date that the file says it was made on; the first day of 2000 without it
     * @param complaints takes what the layout did not understand
     */
    public static byte[] of(
            Proposal proposal,
            Paper paper,
            Optional<byte[]> logo,
            Optional<LocalDate> date,
            ChartRenderer charts,
            Consumer<String> complaints)
            throws IOException {
        return new PdfPage(proposal, paper, charts).write(logo, date.orElse(PdfFile.UNDATED), complaints);
    }

    private byte[] write(Optional<byte[]> logo, LocalDate date, Consumer<String> complaints) throws IOException {
        String style = HtmlPage.resource(STYLE) + sheet() + sizes();
        String page = HtmlPage.fill(new PageModel(proposal, logo.map(HtmlPage::address), style, Map.of(), true));
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        drawers.registerDrawer("chart", this::drawChart);
        return PdfFile.of(page, proposal.program(), date, drawers, complaints);
    }

    private String sheet() {
        return "@page { size: " + paper.word() + "; }\n";
    }

    /** Charts have the width of the narrower text. */
    private String sizes() {
        StringBuilder rules = new StringBuilder();
        for (Picture picture : proposal.pictures()) {
            double heightMm = TEXT_WIDTH_MM * charts.height(picture.chart()) / charts.width(picture.chart());
            rules.append(String.format(
                    Locale.ROOT,
                    "#figure-%s object { width: %.1fmm; height: %.1fmm; }%n",
                    picture.name(),
                    TEXT_WIDTH_MM,
                    heightMm));
        }
        return rules.toString().replace(System.lineSeparator(), "\n");
    }

    private Map<Shape, String> drawChart(
            Element element,
            double x,
            double y,
            double width,
            double height,
            OutputDevice device,
            RenderingContext context,
            int dotsPerPixel) {
        ChartModel model = models.get(element.getAttribute("data"));
        double points = width / dotsPerPixel;
        device.drawWithGraphics((float) x, (float) y, (float) points, (float) (height / dotsPerPixel), graphics -> {
            double scale = points / charts.width(model);
            graphics.scale(scale, scale);
            charts.draw(model, graphics);
        });
        return Map.of();
    }
}
