package ampdays.chart.jfree;

import ampdays.chart.VisibleText;
import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A picture as vectors: words stay words, in whatever sans-serif face the reader has. */
final class Svg {
    private static final String FACES = "'Liberation Sans', Arial, Helvetica, 'DejaVu Sans', sans-serif";
    /** In place of the header of the generator, which points readers to a document type on the network. */
    private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String GENERIC_DEFINITIONS = "genericDefs";
    private static final int DECIMALS = 2;

    private Svg() {}

    /** @param prefix begins every id, so that several pictures can stand in one page */
    static String of(Picture picture, Style style, String prefix, String description) throws IOException {
        Document document = emptyDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("");
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new SVGIDGenerator() {
            private int count;

            @Override
            public String generateID(String kind) {
                count++;
                return prefix + "-" + kind + count;
            }
        });
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
        picture.draw(new Pen(graphics, style));
        Element root = graphics.getRoot();
        root.setAttribute("viewBox", "0 0 " + picture.width() + " " + picture.height());
        root.setAttribute("role", "img");
        Element title = document.createElementNS(NAMESPACE, "title");
        title.setTextContent(VisibleText.of(description));
        root.insertBefore(title, root.getFirstChild());
        putRight(root, prefix);
        StringWriter written = new StringWriter(1 << 16);
        graphics.stream(root, written, false, false);
        String text = written.toString();
        return DECLARATION + text.substring(text.indexOf("<svg")).replace("\r\n", "\n");
    }

    private static Document emptyDocument() throws IOException {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(NAMESPACE, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IOException("Cannot draw charts: this Java runtime lacks its XML parts.", e);
        }
    }

    /** The generator names one face without a fallback, and gives its empty first definitions the same id always. */
    private static void putRight(Element root, String prefix) {
        root.setAttribute("font-family", FACES);
        NodeList elements = root.getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            Element element = (Element) elements.item(i);
            if (element.hasAttribute("font-family")) {
                element.setAttribute("font-family", FACES);
            }
            if (element.getAttribute("id").equals(GENERIC_DEFINITIONS)) {
                element.setAttribute("id", prefix + "-" + GENERIC_DEFINITIONS);
            }
        }
    }
}
