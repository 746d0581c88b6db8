package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The proposal as a client gets it. Where no source is named, the requirement is the program's own: practice, no source. */
class ProposalCommandTest extends CommandRun {
    private static final String DEMO = "scenarios/desert-survey.yaml";
    private static final Path README_PICTURE = Path.of("docs/pictures/proposal.png");
    private static final Pattern ROW = Pattern.compile("<tr class=\"(?:chosen|other)\">(.*?)</tr>", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("<t[hd][^>]*><bdi>(.*?)</bdi></t[hd]>", Pattern.DOTALL);

    @TempDir
    private static Path folder;

    private static String page;

    @TempDir
    private Path own;

    @BeforeAll
    static void theDemoForNobody() throws IOException {
        StringWriter told = new StringWriter();
        String[] args = {"proposal", DEMO, "--units", "metric", "--date", "2026-03-31", "--out", folder.toString()};
        assertThat(Main.run(new PrintWriter(told), new PrintWriter(told), args))
                .as(told.toString())
                .isZero();
        page = Files.readString(folder.resolve("proposal.html"));
    }

    /** The rows of the first table, by the name in their first cell. */
    private static Map<String, List<String>> options(String html) {
        String table = html.substring(html.indexOf("<table"), html.indexOf("</table>"));
        Map<String, List<String>> rows = new LinkedHashMap<>();
        Matcher row = ROW.matcher(table);
        while (row.find()) {
            List<String> cells = new ArrayList<>();
            Matcher cell = CELL.matcher(row.group(1));
            while (cell.find()) {
                cells.add(cell.group(1));
            }
            rows.put(cells.get(0), cells);
        }
        return rows;
    }

    @Test
    void tableCellsEqualTheSummaryOfCompare() throws IOException {
        assertThat(run("compare", DEMO, "--out", own.toString())).isZero();
        JsonNode summary =
                new ObjectMapper().readTree(own.resolve("summary.json").toFile());
        Map<String, List<String>> rows = options(page);
        assertThat(rows).hasSize(summary.get("options").size());
        for (JsonNode option : summary.get("options")) {
            List<String> cells = rows.get(option.get("name").asText());
            String lasts = option.get("holds").asBoolean()
                    ? "holds"
                    : String.format(
                            Locale.ROOT, "%.1f days", option.get("daysToEmpty").asDouble());
            double litres = option.get("fuelLitres").asDouble();
            assertThat(cells)
                    .contains(
                            lasts,
                            option.get("comfortableNights").asInt() + " of "
                                    + option.get("nights").asInt(),
                            String.format(Locale.ROOT, litres < 10 ? "%.1f L" : "%.0f L", litres));
        }
    }

    @Test
    void nothingInThePageRunsOrFetches() {
        assertThat(page)
                .contains("Content-Security-Policy", "default-src 'none'")
                .doesNotContainPattern("<script|<iframe|<link|@import|\\son[a-z]+=")
                .doesNotContainPattern("(?:src|href)=\"(?!data:image/png|#)")
                .doesNotContainPattern("url\\((?!#)");
        assertThat(folder.resolve("proposal.html").toFile().length()).isLessThan(1_500_000);
    }

    @Test
    void withoutPricesThereIsNoPriceColumn() {
        assertThat(page).doesNotContain("Price of the change", "--shop").contains("No prices are given.");
    }

    /** The maps rank by prices that nobody said. */
    @Test
    void pricesThatNobodySaidAreNoOffer() throws IOException {
        assertThat(values(page).get("prices.battery"))
                .contains("500 USD per kWh of bank", "default, only to rank options in the maps; no offer");
        assertThat(values(page).get("masses.second-alternator")).contains("0.09 kg per ampere of second alternator");
    }

    /** The rows of the table of all values, by their paths. */
    private static Map<String, List<String>> values(String html) {
        return options(html.substring(html.lastIndexOf("<table", html.indexOf("Every value in force"))));
    }

    @Test
    void pricesAreCountedFromWhatIsAdded() throws IOException {
        Path shop = Files.writeString(own.resolve("shop.yaml"), """
                name: Invented
                contact: [12 Invented Street, telephone 555-0100]
                currency: EUR
                prices: {battery: 500, solar: 300, charger: 8, insulation: 1500, covers: 400, cooling: 3200}
                options: {less heat: 2350}
                tax: Sales tax not included.
                valid: Prices hold for 60 days.
                """);
        assertThat(run(
                        "proposal",
                        DEMO,
                        "--brief",
                        "--paper",
                        "letter",
                        "--units",
                        "both",
                        "--shop",
                        shop.toString(),
                        "--out",
                        own.toString()))
                .isZero();
        Map<String, List<String>> rows = options(Files.readString(own.resolve("proposal.html")));
        assertThat(Files.readString(own.resolve("proposal.html"))).doesNotContain("How sure it is");
        // 300 W more panels at 300 for 100 W; 300 Ah more bank at 12.8 V and 500 for a kWh
        assertThat(rows.get("more solar")).contains("900 EUR");
        assertThat(rows.get("bigger bank")).contains("1,920 EUR");
        assertThat(rows.get("less heat")).contains("2,350 EUR");
        assertThat(rows.get("second alternator")).doesNotContain("0 EUR").contains("–");
        // with a shop at its head, prices and both unit systems the client's page is one sheet too
        try (PDDocument pdf = Loader.loadPDF(own.resolve("proposal.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
        }
    }

    /** A trip without drives has no map; the page says why, and has no prices but those that were said. */
    @Test
    void whichOptionWinsIsShownByHeatDrivingAndParkedDays() throws IOException {
        assertThat(page)
                .contains("Which option wins where", "figure-break-even-3", "all air 3 K warmer", "Of 9 places, ");
        Path file = StudiedVan.in(
                own,
                "{first-start: 07-01}",
                "  more solar: {solar.power: 700 W}\nprices: {currency: EUR, solar: 250}\n");
        Files.writeString(file, Files.readString(file).replaceAll("drive (?:highway|town), aboard", "park sun, away"));
        assertThat(run("proposal", file.toString(), "--samples", "0", "--out", own.toString()))
                .as(err.toString())
                .isZero();
        String mapless = Files.readString(own.resolve("proposal.html"));
        assertThat(values(mapless).get("prices.solar")).contains("250 EUR per 100 W of panels");
        assertThat(values(mapless)).doesNotContainKey("prices.battery").containsKey("masses.battery");
        assertThat(mapless)
                .contains("There is no map of which option wins by driving, parked days and heat. The timetable has no"
                        + " drives.")
                .doesNotContain("figure-break-even");
    }

    /** Prices that the scenario says count where the shop names none; its defaults are never summed. */
    @Test
    void theShopsPricesGoBeforeThoseOfTheScenario() throws IOException {
        Path van = StudiedVan.in(own, "{first-start: 07-01}", """
                  more solar: {solar.power: 700 W}
                  bigger bank: {battery.capacity: 800 Ah}
                  other cooler: {cooling.capacity: 3 kW}
                prices: {currency: EUR, solar: 250, battery: 400}
                """);
        String[] alone = {"proposal", van.toString(), "--brief", "--samples", "0", "--out", own.toString()};
        assertThat(run(alone)).as(err.toString()).isZero();
        Map<String, List<String>> rows = options(Files.readString(own.resolve("proposal.html")));
        assertThat(rows.get("more solar")).contains("750 EUR");
        assertThat(rows.get("bigger bank")).contains("1,536 EUR");
        assertThat(rows.get("other cooler")).contains("–").doesNotContain("2,500 EUR");
        Path shop = own.resolve("shop.yaml");
        Files.writeString(shop, "name: Invented\ncurrency: EUR\nprices: {solar: 300, cooling: 3200}\n");
        assertThat(run(
                        "proposal",
                        van.toString(),
                        "--brief",
                        "--samples",
                        "0",
                        "--shop",
                        shop.toString(),
                        "--out",
                        own.toString()))
                .isZero();
        rows = options(Files.readString(own.resolve("proposal.html")));
        assertThat(rows.get("more solar")).contains("900 EUR");
        assertThat(rows.get("bigger bank")).contains("1,536 EUR");
        assertThat(rows.get("other cooler")).contains("3,200 EUR");
        Files.writeString(shop, "name: Invented\ncurrency: USD\nprices: {solar: 300}\n");
        assertThat(run("proposal", van.toString(), "--shop", shop.toString(), "--out", own.toString()))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString().strip())
                .isEqualTo(
                        "shop.yaml: Its prices are in USD, but the scenario's prices.battery is in EUR. Give that price"
                                + " here too, or write one currency in both.");
    }

    /** There is no rate of exchange: what a price of the shop does not replace is told once. */
    @Test
    void moneyInAnotherCurrencyThanTheShopsIsSaidToBeLeftOut() throws IOException {
        Path van = StudiedVan.in(own, "{first-start: 07-01}", """
                  more solar: {solar.power: 700 W, prices.budget: 4000}
                prices: {budget: 5000 USD, driving: 12, solar: 250 USD}
                """);
        Path shop =
                Files.writeString(own.resolve("shop.yaml"), "name: Invented\ncurrency: EUR\nprices: {solar: 300}\n");
        assertThat(run(
                        "proposal",
                        van.toString(),
                        "--brief",
                        "--samples",
                        "0",
                        "--shop",
                        shop.toString(),
                        "--out",
                        own.toString()))
                .as(err.toString())
                .isZero();
        assertThat(err.toString().lines().filter(line -> line.startsWith("shop.yaml")))
                .containsExactly("shop.yaml: its prices are in EUR, so what the scenario says in USD is left out:"
                        + " prices.budget, prices.driving.");
        assertThat(options(Files.readString(own.resolve("proposal.html"))).get("more solar"))
                .contains("900 EUR");
    }

    @Test
    void theOrderOfBuyingIsToldInStages() throws IOException {
        assertThat(page)
                .contains("In which order to buy", "1. second alternator")
                .doesNotContain("In all");
    }

    /** What two changes do together for less money is said on the first page, and is what the order of buying ends with. */
    @Test
    void aCheaperWayInStagesIsSaidBesideTheAnswer() throws IOException {
        Path shop = Files.writeString(own.resolve("shop.yaml"), """
                name: Invented
                currency: USD
                prices: {battery: 650, solar: 320, second-alternator: 19}
                options: {less heat: 2350}
                """);
        String[] args = {"proposal", DEMO, "--samples", "0", "--shop", shop.toString(), "--out", own.toString()};
        assertThat(run(args)).as(err.toString()).isZero();
        String html = Files.readString(own.resolve("proposal.html"));
        // 300 W more panels at 320 for 100 W and the whole option; 270 A on the nameplate at 19
        assertThat(html)
                .contains("Of the 4 options, only “second alternator” holds")
                .contains(
                        "“more solar” and “less heat” together hold too, for 3,310 USD instead of 5,130 USD, with every"
                                + " night comfortable; tried on this trip only.")
                .doesNotContain("costs least")
                .containsPattern("(?s)2\\. and less heat.*?holds.*?13 of 13.*?2,350 USD.*?3,310 USD");
    }

    @Test
    void whereNoOptionHoldsThePageSaysWhatTheyDoTogether() throws IOException {
        Path file = own.resolve("van.yaml");
        String alternator = "  second alternator:";
        String demo = Files.readString(Path.of(DEMO)).replace("../weather-profiles/", "");
        Files.writeString(file, demo.replaceAll("(?m)^" + alternator + ".*\n", ""));
        for (String weather : List.of("low-desert-summer.csv", "low-desert-normals.csv")) {
            Files.copy(Path.of("weather-profiles", weather), own.resolve(weather));
        }
        String[] args = {"proposal", file.toString(), "--brief", "--samples", "0", "--out", own.toString()};
        assertThat(run(args)).as(err.toString()).isZero();
        assertThat(Files.readString(own.resolve("proposal.html")))
                .contains(
                        "None of the 3 options holds for all 14 days in July",
                        "together hold, with every night comfortable;");
    }

    @Test
    void aPriceForAnUnknownOptionIsRefused() throws IOException {
        Path shop = Files.writeString(
                own.resolve("shop.yaml"), "name: Invented\ncurrency: EUR\noptions: {more solr: 900}\n");
        assertThat(run("proposal", DEMO, "--shop", shop.toString(), "--out", own.toString()))
                .isEqualTo(Exit.WRONG_INPUT);
        assertThat(err.toString())
                .contains("shop.yaml: options has a price for \"more solr\"", "Did you mean \"more solar\"?");
        assertThat(own.resolve("proposal.html")).doesNotExist();
    }

    @Test
    void guessesComeFirstAmongTheAssumptionsAndHashesLast() {
        String values = page.substring(page.indexOf("Every value in force"));
        assertThat(values.indexOf(">guess<")).isPositive().isLessThan(values.indexOf(">practice<"));
        assertThat(values.lastIndexOf(">guess<")).isLessThan(values.indexOf(">practice<"));
        assertThat(page)
                .contains("Measure this first", "31 March 2026", "scenario desert-survey.yaml")
                .containsPattern("<bdi>[0-9a-f]{64}</bdi>");
    }

    @Test
    void theSameInputsGiveTheSameBytes() throws IOException {
        String[] args = {"proposal", DEMO, "--units", "metric", "--date", "2026-03-31", "--out", own.toString()};
        assertThat(run(args)).isZero();
        for (String name : List.of("proposal.html", "proposal.pdf")) {
            assertThat(own.resolve(name)).hasSameBinaryContentAs(folder.resolve(name));
        }
    }

    @Test
    void thePdfHasTextEmbeddedFontsBookmarksAndTheClientsPageOnOneSheet() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("proposal.pdf").toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            String first = stripper.getText(pdf);
            assertThat(first)
                    .contains(
                            "Of the 4 options, only “second alternator” holds",
                            "What you do for it",
                            "What it does not promise")
                    .contains("licensed", "Page 1 of " + pdf.getNumberOfPages(), "outside", "cabin")
                    .doesNotContain("The trip");
            stripper.setStartPage(2);
            stripper.setEndPage(pdf.getNumberOfPages());
            assertThat(stripper.getText(pdf)).contains("The trip", "Cautions", "Carbon monoxide", "Page 2 of ");
            for (PDPage sheet : pdf.getPages()) {
                for (COSName font : sheet.getResources().getFontNames()) {
                    assertThat(sheet.getResources().getFont(font).isEmbedded()).isTrue();
                }
            }
            assertThat(pdf.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(PDOutlineItem::getTitle)
                    .startsWith(
                            "The answer", "The trip", "How sure it is", "Which option wins where", "Energy of a day")
                    .endsWith("How it was made", "Cautions");
        }
    }

    /** Typesetters' practice: no page ends in a heading or begins with the note below a table. */
    @Test
    void headingsAndNotesStandWithWhatTheyAreOf() throws IOException {
        List<String> heads = texts("<(?:h[23]|caption)>(.*?)</");
        List<String> notes = texts("<p class=\"note\"><bdi>(.*?)</bdi>");
        assertThat(heads).contains("The options on many trips", "Weights and prices");
        assertThat(notes).hasSizeGreaterThan(4);
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("proposal.pdf").toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int i = 2; i <= pdf.getNumberOfPages(); i++) {
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                List<String> lines = stripper.getText(pdf)
                        .lines()
                        .map(String::strip)
                        .filter(line ->
                                !line.isEmpty() && !line.matches("Estimates, not a code check|Page \\d+ of \\d+"))
                        .toList();
                assertThat(heads).as("end of page %d", i).doesNotContain(lines.get(lines.size() - 1));
                // the first line is the running head
                assertThat(notes).as("page %d", i).noneMatch(note -> note.startsWith(lines.get(1)));
            }
        }
    }

    private static List<String> texts(String pattern) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(page)
                .results()
                .map(found -> found.group(1).replaceAll("<[^>]*>", "").strip())
                .toList();
    }

    /** The nights of many trips are those of the command {@code chances} (identity of the program with itself). */
    @Test
    void theNightsOfManyTripsAreThoseOfTheChances() throws IOException {
        assertThat(run("chances", DEMO, "--samples", "32", "--json", "--out", own.toString()))
                .isZero();
        JsonNode chances = new ObjectMapper().readTree(out.toString());
        for (JsonNode option : chances.get("options")) {
            JsonNode nights = option.get("comfortableNights");
            String shown = String.format(
                    Locale.ROOT,
                    "%.0f / %.0f / %.0f",
                    nights.get("p10").get("value").asDouble(),
                    nights.get("p50").get("value").asDouble(),
                    nights.get("p90").get("value").asDouble());
            assertThat(options(page).get(option.get("name").asText())).contains(shown);
            assertThat(Stream.of("p10", "p50", "p90")
                            .map(place -> nights.get(place).get("value").asDouble())
                            .toList())
                    .isSorted();
        }
        assertThat(page).contains("Simulated for this van, parked in full sun");
    }

    /** The list of what to measure first is that of the command {@code matters} (identity of the program with itself). */
    @Test
    void inDepthItSaysWhatMattersAsTheCommandDoes() throws IOException {
        String van =
                StudiedVan.in(own, "{}", "  more solar: {solar.power: 700 W}\n").toString();
        assertThat(run("matters", van, "--out", own.toString())).isZero();
        String first = out.toString()
                .lines()
                .filter(line -> line.startsWith("1. "))
                .findFirst()
                .orElseThrow();
        String path = first.substring(3, first.indexOf(':'));
        assertThat(run("proposal", van, "--in-depth", "--samples", "0", "--out", own.toString()))
                .as(err.toString())
                .isZero();
        assertThat(Files.readString(own.resolve("proposal.html")))
                .contains("What matters most", "Measure this first", "of 128 draws of all figures")
                .doesNotContain("nothing here is drawn at random")
                .containsPattern("Measure this first</h3>\\s*<ul[^>]*>\\s*<li>(?:<[^>]*>)*" + Pattern.quote(path));
    }

    @Test
    void whatWasNotLookedIntoIsLeftOutAndNamedCircuitsAreShown() throws IOException {
        assertThat(run("wiring", DEMO, "--option", "second alternator", "--out", own.toString()))
                .isZero();
        String scenario = Files.readString(Path.of(DEMO)).replace("../weather-profiles/", "")
                + Files.readString(own.resolve("circuits.yaml"));
        Path file = Files.writeString(own.resolve("wired.yaml"), scenario);
        for (String weather : List.of("low-desert-summer.csv", "low-desert-normals.csv")) {
            Files.copy(Path.of("weather-profiles", weather), own.resolve(weather));
        }
        assertThat(run("proposal", file.toString(), "--samples", "0", "--out", own.toString()))
                .as(err.toString())
                .isZero();
        assertThat(Files.readString(own.resolve("proposal.html")))
                .contains("Wiring and protection", "second alternator to bus")
                .doesNotContain("How sure it is</h2>", "P10");
        assertThat(page).doesNotContain("Wiring and protection");
    }

    /** README shows the first page as it is today; {@code -Dampdays.update=true} writes the picture anew. */
    @Test
    void readmeShowsTodaysFirstPage() throws IOException {
        assertThat(run("proposal", DEMO, "--out", own.toString())).isZero();
        BufferedImage today;
        try (PDDocument pdf = Loader.loadPDF(own.resolve("proposal.pdf").toFile())) {
            today = new PDFRenderer(pdf).renderImageWithDPI(0, 90);
        }
        if (Boolean.getBoolean("ampdays.update")) {
            ImageIO.write(today, "png", README_PICTURE.toFile());
        }
        BufferedImage shown = ImageIO.read(README_PICTURE.toFile());
        assertThat(shown.getWidth()).isEqualTo(today.getWidth());
        assertThat(shown.getHeight()).isEqualTo(today.getHeight());
        // edges of letters may differ by Java runtime; a changed number moves more
        assertThat(unlike(shown, today)).isLessThan(20);
        String html = Files.readString(own.resolve("proposal.html"));
        Matcher verdict =
                Pattern.compile("<p class=\"verdict\"><bdi>(.*?)</bdi>").matcher(html);
        assertThat(verdict.find()).isTrue();
        assertThat(Files.readString(Path.of("README.md")))
                .contains("![" + verdict.group(1) + "](" + README_PICTURE + ")")
                .contains("./ampdays proposal " + DEMO);
    }

    /** How many points differ much. */
    private static int unlike(BufferedImage a, BufferedImage b) {
        int count = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int green = (a.getRGB(x, y) >> 8 & 0xFF) - (b.getRGB(x, y) >> 8 & 0xFF);
                count += Math.abs(green) > 96 ? 1 : 0;
            }
        }
        return count;
    }

    /** The verdict of compare says of this demo that no change is needed; so does the proposal where no other trips are looked at. */
    @Test
    void aVanThatHoldsAsItIsGetsNothingRecommended() throws IOException {
        String[] args = {
            "proposal", "scenarios/plateau-autumn.yaml", "--brief", "--samples", "0", "--out", own.toString()
        };
        assertThat(run(args)).isZero();
        String html = Files.readString(own.resolve("proposal.html"));
        assertThat(html)
                .contains(
                        "As it is, the van holds for all 21 days in October",
                        "Nothing has to be added for this trip.",
                        "switch off what can wait")
                .containsPattern("<tr class=\"chosen\">\\s*<th scope=\"row\"><bdi>as it is")
                .doesNotContain("switch the cooling off", " and 0 min on", "other trips");
    }

    /** The demo's hook-up is on Saturdays, that of the option on Fridays too: four of each in 24 days from a Friday on. */
    @Test
    void theHookUpIsToldByKindsOfDay() throws IOException {
        String[] args = {
            "proposal", "scenarios/coast-weekends.yaml", "--brief", "--samples", "0", "--out", own.toString()
        };
        assertThat(run(args)).isZero();
        assertThat(Files.readString(own.resolve("proposal.html")))
                .contains("The plan counts on a hook-up in 8 of 24 nights: on Fridays and Saturdays.");
    }

    /** What the chances say against the answer stands in the answer; the counts are those of the command {@code chances}. */
    @Test
    void theAnswerSaysOnHowManyOtherTripsTheBankRanEmpty() throws IOException {
        String demo = "scenarios/plateau-autumn.yaml";
        assertThat(run("chances", demo, "--samples", "32", "--json", "--out", own.toString()))
                .isZero();
        Map<String, Long> never = new LinkedHashMap<>();
        for (JsonNode option : new ObjectMapper().readTree(out.toString()).get("options")) {
            double share = option.get("neverEmpty").get("value").asDouble();
            never.put(option.get("name").asText(), Math.round(32 * share));
        }
        assertThat(run("proposal", demo, "--brief", "--out", own.toString())).isZero();
        String html = Files.readString(own.resolve("proposal.html"));
        assertThat(html)
                .contains(
                        "As it is, the van holds for all 21 days in October at this place, with a comfortable cabin on all"
                                + " 20 nights. But the bank ran empty on " + (32 - never.get("as it is"))
                                + " of 32 other trips, with “bigger bank” on " + (32 - never.get("bigger bank")) + ".")
                .doesNotContain("Nothing has to be added");
        Map<String, List<String>> rows = options(html);
        assertThat(rows).hasSameSizeAs(never);
        never.forEach((option, trips) -> assertThat(rows.get(option)).contains(trips + " of 32"));
    }

    @Test
    void theShorterSheetHoldsTheClientsPageToo() throws IOException {
        assertThat(run("proposal", DEMO, "--brief", "--paper", "letter", "--units", "us", "--out", own.toString()))
                .isZero();
        try (PDDocument pdf = Loader.loadPDF(own.resolve("proposal.pdf").toFile())) {
            // 8.5 by 11 in at 72 points an inch (ANSI/ASME Y14.1, size A)
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
            assertThat(pdf.getPage(0).getMediaBox().getHeight()).isEqualTo(792);
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("3.1 gal", "°F")
                    .doesNotContain("°C", " kg", " L ");
        }
    }

    @Test
    void hostileTextEndsAsText() throws IOException {
        String evil = "</bdi><script>alert(1)</script>\\\" onload=\\\"x \\u202Egnp.exe\\u202C ]]> &amp; %s";
        String longWord = "x".repeat(10_000);
        String scenario = Files.readString(Path.of(DEMO))
                .replace("title: Desert survey, two people, fourteen days in July", "title: \"" + evil + "\"")
                .replace("more solar:", "\"" + evil + "\":")
                .replace("bigger bank: {", "? " + longWord + "\n  : {")
                .replace("roof fan:", "\"fan <img src=x onerror=y>\":")
                .replace("../weather-profiles/", "");
        Path file = Files.writeString(own.resolve("evil.yaml"), scenario);
        for (String weather : List.of("low-desert-summer.csv", "low-desert-normals.csv")) {
            Files.copy(Path.of("weather-profiles", weather), own.resolve(weather));
        }
        Path shop = Files.writeString(
                own.resolve("shop.yaml"),
                "name: \"" + evil + "\"\ncontact: [\"" + evil + "\"]\ncurrency: \"<b>\"\nprices: {solar: 1}\ntax: \""
                        + evil + "\"\n");
        String[] args = {
            "proposal",
            file.toString(),
            "--shop",
            shop.toString(),
            "--for",
            "<b>\u202Ex\u0001 & \"y\"",
            "--out",
            own.toString()
        };
        assertThat(run(args)).as(err.toString()).isZero();
        String html = Files.readString(own.resolve("proposal.html"));
        assertThat(html)
                .contains("&lt;script&gt;alert(1)")
                .doesNotContainPattern("<script|<img src=x|<b>|\u202E|\u0001")
                .doesNotContainPattern("<[^>]*\\sonload=");
        assertThat(html.length()).isLessThan(1_500_000);
        try (PDDocument pdf = Loader.loadPDF(own.resolve("proposal.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("<script>alert(1)</script>");
        }
    }

    @Test
    void wrongWordsOnTheLineAreToldPlainly() {
        String[][] wrong = {
            {"--date", "31.3.2026", "--date \"31.3.2026\" is not a date. Write it like: --date 2026-03-31."},
            {"--units", "imperial", "--units \"imperial\" is not one of its choices: us, metric, both."},
            {"--paper", "A5", "--paper \"A5\" is not one of its choices: A4, letter."},
            {"--for", "a\nb", "--for has 3 letters in 2 lines; it is one line of at most 300 letters."},
            {"--samples", "5", "--samples is 5; expected is 10 to 1,000,000, or 0 to leave them out."},
            {"--shop", "nowhere.yaml", "nowhere.yaml: there is no such file. Check the path."},
        };
        for (String[] one : wrong) {
            err.getBuffer().setLength(0);
            assertThat(run("proposal", DEMO, one[0], one[1], "--out", own.toString()))
                    .isIn(Exit.WRONG_INPUT, Exit.FILE_TROUBLE);
            assertThat(err.toString().strip()).isEqualTo(one[2]);
            assertThat(own.toFile().list()).isEmpty();
        }
    }
}
