package ampdays.report.page;

import ampdays.chart.jfree.ChartRenderer;
import ampdays.report.Block.Picture;
import ampdays.report.Proposal;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The proposal as one HTML file that needs nothing beside it: drawings, logo and style are in it. */
public final class HtmlPage {
    private static final String STYLE = "/ampdays/report/page.css";

    private HtmlPage() {}

    /**
     * Fills the page.
     *
     * @param logo of the shop, a PNG
     */
    public static String of(Proposal proposal, Paper paper, Optional<byte[]> logo, ChartRenderer charts)
            throws IOException {
        Map<String, String> drawings = new LinkedHashMap<>();
        for (Picture picture : proposal.pictures()) {
            String svg = charts.svg(picture.chart(), picture.name());
            drawings.put(picture.name(), svg.substring(svg.indexOf("<svg")));
        }
        String style = resource(STYLE) + "@page { size: " + paper.word() + "; margin: 16mm 15mm 18mm; }\n";
        return fill(new PageModel(proposal, logo.map(HtmlPage::address), style, drawings, false));
    }

    static String fill(PageModel page) {
        StringOutput written = new StringOutput(1 << 20);
        HtmlTemplateOutput output = new VisibleOutput(written);
        JteproposalGenerated.render(output, null, page);
        return written.toString();
    }

    static String address(byte[] png) {
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(png);
    }

    static String resource(String name) throws IOException {
        try (InputStream in = HtmlPage.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IOException("the program lacks its part " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
