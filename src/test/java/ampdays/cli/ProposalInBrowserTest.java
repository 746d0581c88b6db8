package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import ampdays.browser.Browser;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The proposal's page in a real browser; what is checked, and after which source, stands in page-checks.js. */
class ProposalInBrowserTest {
    private static final Path PICTURES = Path.of("target/screenshots");

    @TempDir
    private static Path folder;

    private static Browser browser;

    @BeforeAll
    static void open() throws IOException, InterruptedException {
        assumeTrue(Browser.installed().isPresent(), "skipped: no Chromium on this machine (Debian: chromium)");
        StringWriter told = new StringWriter();
        String[] args = {"proposal", "scenarios/desert-survey.yaml", "--for", "quote 17", "--out", folder.toString()};
        assertThat(Main.run(new PrintWriter(told), new PrintWriter(told), args)).isZero();
        browser = Browser.start(Files.createDirectories(folder.resolve("profile")));
        Files.createDirectories(PICTURES);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static String checks() throws IOException {
        try (InputStream in = ProposalInBrowserTest.class.getResourceAsStream("/ampdays/browser/page-checks.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @ParameterizedTest
    @CsvSource({"390, 844", "1280, 900"})
    void thePageAsksForNothingSaysNothingAndShowsEverything(int width, int height) throws IOException {
        browser.open(folder.resolve("proposal.html"), width, height);
        JsonNode wrong = browser.evaluate(checks());
        Files.write(PICTURES.resolve("proposal-" + width + ".png"), browser.screenshot(true));
        assertThat(wrong).isEmpty();
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).hasSize(1);
        assertThat(browser.evaluate("document.querySelectorAll('.drawing svg').length")
                        .asInt())
                .isGreaterThan(8);
    }

    @Test
    void aPageWithFaultsIsFoundOut() throws IOException {
        Path bad = Files.writeString(
                folder.resolve("bad.html"),
                "<!DOCTYPE html><html><body><h1>A</h1><h3 style='color:#999'>B</h3><img src='x.png'>"
                        + "<div style='width:3000px'>wide</div></body></html>");
        browser.open(bad, 390, 844);
        String wrong = browser.evaluate(checks()).toString();
        assertThat(wrong).contains("skips a level", "contrast 2.85 of", "has no text", "3008 wide");
        assertThat(browser.requests()).hasSize(2);
    }

    @Test
    void printedSheetsBreakNoChartAndNoRow() throws IOException {
        browser.open(folder.resolve("proposal.html"), 1280, 900);
        List<String> sheets = new ArrayList<>();
        byte[] printed = browser.print();
        Files.write(PICTURES.resolve("printed.pdf"), printed);
        try (PDDocument pdf = Loader.loadPDF(printed)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int sheet = 1; sheet <= pdf.getNumberOfPages(); sheet++) {
                stripper.setStartPage(sheet);
                stripper.setEndPage(sheet);
                sheets.add(squeezed(stripper.getText(pdf)));
            }
        }
        JsonNode together = browser.evaluate(
                "[...document.querySelectorAll('tbody tr')].map(r => [...r.children].map(c => c.innerText))"
                        + ".concat([...document.querySelectorAll('figure')].map(f =>"
                        + " [...f.querySelectorAll('text')].map(t => t.textContent).concat(f.querySelector('figcaption').innerText)))");
        assertThat(together.size()).isGreaterThan(150);
        for (JsonNode group : together) {
            List<String> words = new ArrayList<>();
            group.forEach(word -> words.add(squeezed(word.asText())));
            assertThat(sheets)
                    .as(words.toString())
                    .anySatisfy(sheet -> assertThat(sheet).contains(words));
        }
    }

    /** Without blanks, which lines and columns of a sheet put elsewhere. */
    private static String squeezed(String text) {
        return text.replaceAll("[\\s\u00A0\u2010-]+", "");
    }
}
