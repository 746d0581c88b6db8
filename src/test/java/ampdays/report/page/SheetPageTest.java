package ampdays.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.commission.Band;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Sheet;
import ampdays.commission.SmallSheet;
import ampdays.commission.Step;
import ampdays.commission.Sunlight;
import ampdays.commission.Symptom;
import ampdays.units.Dimension;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The printed commissioning sheet: what somebody with a pen needs of it. There is no outside source. */
class SheetPageTest {
    private static final String PROGRAM = "ampdays test";

    /** The page is well-formed XML with a blank for every item, no script, and nothing fetched. */
    @Test
    void thePageIsCleanAndHasABlankForEveryItem() throws Exception {
        Sheet sheet = SmallSheet.sheet();
        String page = SheetPage.html(sheet, Paper.A4, PROGRAM);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page)));
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Commissioning sheet: Test <van>, \"small\" & plain");
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        long questions = sheet.items().filter(Item::isQuestion).count();
        assertThat(occurrences(page, "class=\"answer\"")).isEqualTo(questions);
        assertThat(occurrences(page, "class=\"blank\"")).isEqualTo(sheet.items().count() - questions);
        assertThat(page.replace("http://www.w3.org/1999/xhtml", ""))
                .doesNotContain("http:", "src=", "href=", "@import");
        assertThat(page).contains("Not a code check; have it inspected by a licensed person.");
    }

    private static long occurrences(String text, String part) {
        return text.split(part, -1).length - 1L;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void noStepIsBrokenAcrossSheetsAndEachSheetIsNumbered(Paper paper) throws IOException {
        Sheet sheet = longSheet();
        List<String> complaints = new ArrayList<>();
        byte[] bytes = SheetPage.pdf(sheet, paper, PROGRAM, complaints::add);
        assertThat(complaints).isEmpty();
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            List<String> pages = pages(pdf);
            assertThat(pages).hasSizeGreaterThan(3);
            for (int i = 0; i < pages.size(); i++) {
                assertThat(pages.get(i))
                        .contains("Page " + (i + 1) + " of " + pages.size())
                        .contains("Not a code check; have it inspected by a licensed person.");
                assertThat(pages.get(i).contains("Commissioning · " + sheet.title()))
                        .isEqualTo(i > 0);
            }
            for (Step step : sheet.steps()) {
                List<String> with =
                        pages.stream().filter(p -> p.contains(step.title())).toList();
                assertThat(with).as(step.title()).hasSize(1);
                assertThat(with.get(0))
                        .contains(step.items().stream().map(Item::id).toArray(String[]::new));
            }
            assertThat(pages.get(0)).contains("Date and time", "Meters", "Software versions");
            assertThat(pages.get(pages.size() - 1)).contains("Signed");
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isBetween(paper == Paper.A4 ? 595f : 612f, 612f);
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
        }
        assertThat(SheetPage.pdf(sheet, paper, PROGRAM, complaints::add)).isEqualTo(bytes);
    }

    private static List<String> pages(PDDocument pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper();
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            pages.add(stripper.getText(pdf));
        }
        return pages;
    }

    /** Steps of one to seven lines, so that some would fall on the end of a sheet. */
    private static Sheet longSheet() {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            List<Item> items = new ArrayList<>();
            for (int j = 0; j <= i % 7; j++) {
                items.add(new Item(
                        "step" + i + ".item" + j,
                        Symptom.CASE_HEAT,
                        "Case of the machine at the end of the run, a minute after the last reading",
                        "drive-end case, matt tape and infrared",
                        Optional.of(Dimension.TEMPERATURE),
                        "°C",
                        0,
                        94,
                        Band.atMost(108, 120),
                        ""));
            }
            steps.add(new Step("Invented step " + Character.toString('A' + i), "As said.", "Outdoors.", items));
        }
        return new Sheet(
                "A long sheet",
                "as it is",
                new Conditions(34, 60, 0.6, Sunlight.inPlane(800)),
                steps,
                List.of("Invented."));
    }
}
