package ampdays.report.page;

import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.SimpleTimeZone;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Lays a page out on sheets of paper: typefaces in the file, nothing fetched, the same page and date the same bytes. */
final class PdfFile {
    private static final String BOLD = "/liberation/LiberationSans-Bold.ttf";
    private static final String REGULAR = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String FAMILY = "Liberation Sans";
    private static final String DATA = "data:";

    /** The date of what has none. */
    static final LocalDate UNDATED = LocalDate.of(2000, 1, 1);

    private PdfFile() {}

    /**
     * Lays out.
     *
     * @param page as a template wrote it
     * @param program its name and version
     * @param date that the file says it was made on
     * @param drawers of what the page does not draw itself
     * @param complaints takes what the layout did not understand
     */
    static byte[] of(
            String page, String program, LocalDate date, FSObjectDrawerFactory drawers, Consumer<String> complaints)
            throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withHtmlContent(page.substring(page.indexOf("<html")), "");
        builder.useFont(() -> face(REGULAR), FAMILY, 400, FontStyle.NORMAL, true);
        builder.useFont(() -> face(BOLD), FAMILY, 700, FontStyle.NORMAL, true);
        builder.useUnicodeLineBreaker(new BreakAtBlanks());
        builder.useObjectDrawerFactory(drawers);
        builder.useUriResolver((base, address) -> address.startsWith(DATA) ? address : null);
        builder.useExternalResourceAccessControl(
                (address, kind) -> address.startsWith(DATA), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withDiagnosticConsumer(told -> complain(told, complaints));
        builder.withProducer(program);
        builder.usePdfUaAccessibility(true);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            return saved(renderer.getPdfDocument(), page, date);
        }
    }

    private static InputStream face(String resource) {
        return PdfFile.class.getResourceAsStream(resource);
    }

    private static void complain(Diagnostic told, Consumer<String> complaints) {
        if (told.getLevel().intValue() >= Level.WARNING.intValue()) {
            complaints.accept(told.getFormattedMessage());
        }
    }

    /** Dates and the document's number come from the input, so that the same input gives the same bytes. */
    private static byte[] saved(PDDocument document, String page, LocalDate date) throws IOException {
        Calendar midnight = new GregorianCalendar(new SimpleTimeZone(0, "UTC"), Locale.ROOT);
        midnight.setTimeInMillis(date.toEpochDay() * 86_400_000L);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setCreationDate(midnight);
        information.setModificationDate(midnight);
        CRC32 number = new CRC32();
        number.update(page.getBytes(StandardCharsets.UTF_8));
        document.setDocumentId(number.getValue());
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 19);
        document.save(out);
        return out.toByteArray();
    }
}
