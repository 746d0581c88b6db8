package ampdays.chart.jfree;

import static ampdays.results.Fate.EMPTY;
import static ampdays.results.Fate.FALLS;
import static ampdays.results.Fate.HOLDS;
import static ampdays.results.Fate.UNKNOWN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.chart.BreakEven;
import ampdays.chart.BreakEven.Cell;
import ampdays.chart.CabinChart;
import ampdays.chart.ChartModel;
import ampdays.chart.DayChart;
import ampdays.chart.DaysBars;
import ampdays.chart.DriveChart;
import ampdays.chart.EnergyBalance;
import ampdays.chart.EnergyDays;
import ampdays.chart.HeatMap;
import ampdays.chart.HeatMap.Tile;
import ampdays.chart.InventedComparison;
import ampdays.chart.LinesChart;
import ampdays.chart.OperatingPoints;
import ampdays.chart.SocChart;
import ampdays.study.Comparison;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Pictures are checked by the words in them and by the readers of the runtime (SVG as XML, PNG by ImageIO). */
class ChartRendererTest {
    private static final Comparison COMPARISON = InventedComparison.of(8);
    private static final double NEVER = Double.NaN;
    private static final List<Double> AT = List.of(1.0, 2.0);
    private static ChartRenderer renderer;

    @TempDir
    Path folder;

    @BeforeAll
    static void fetchTypeface() throws IOException {
        renderer = new ChartRenderer();
    }

    @Test
    void theSvgHasEveryWordOfTheModel() throws Exception {
        SocChart soc = SocChart.of(COMPARISON);
        List<String> words = new ArrayList<>(
                List.of(soc.title(), soc.subtitle(), soc.yLabel(), soc.reserveLabel(), "day 1", "day 14", "100"));
        soc.lines().forEach(line -> words.addAll(List.of(line.label(), line.outcome())));
        assertThat(texts(renderer.svg(soc, "soc"))).containsAll(words);

        DaysBars bars = DaysBars.of(COMPARISON);
        List<String> barWords = new ArrayList<>(List.of(bars.title(), bars.xLabel(), "0", "14"));
        bars.bars().forEach(bar -> barWords.addAll(List.of(bar.label(), bar.words())));
        assertThat(texts(renderer.svg(bars, "bars"))).containsAll(barWords);

        DayChart day = DayChart.of(COMPARISON, COMPARISON.options().get(0));
        List<String> dayWords = new ArrayList<>(List.of(
                day.title(),
                day.socLabel(),
                day.powerLabel(),
                day.temperatureLabel(),
                "06:00",
                "reserve 20 %",
                "asleep",
                "outside",
                "cabin"));
        dayWords.addAll(day.sources());
        dayWords.addAll(day.uses());
        day.days().forEach(one -> dayWords.add(one.heading()));
        assertThat(texts(renderer.svg(day, "day"))).containsAll(dayWords);

        assertThat(texts(renderer.svg(ChartGallery.months(), "months")))
                .contains("Jan", "Dec", "outside air, °C", "sun on the flat, kWh/m² a day", "mean daily high");
    }

    /** Lines that never end within the trip lie above those that do, each in a lane of its own, and the axis ends with the trip. */
    @Test
    void bandsAreNamedAndHoldWhatHasNoNumber() throws Exception {
        Document picture = parse(renderer.svg(ChartGallery.bands(), "bands"));
        assertThat(texts(renderer.svg(ChartGallery.bands(), "bands")))
                .contains("holds", "falling", "0", "5", "10", "14", "second alternator", "impossible from 600")
                .doesNotContain("15");
        assertThat(y(picture, "more solar")).isLessThan(y(picture, "second alternator"));
        assertThat(y(picture, "second alternator")).isLessThan(y(picture, "less heat"));
        assertThat(y(picture, "less heat")).isLessThan(y(picture, "14"));
        assertThat(y(picture, "holds")).isLessThan(y(picture, "falling"));
        assertThat(y(picture, "falling")).isLessThan(y(picture, "14"));
        assertThat(y(picture, "as it is")).isBetween(y(picture, "10"), y(picture, "5"));
    }

    private static HeatMap map(List<List<Double>> days, List<List<Tile>> tiles, String... notes) {
        return new HeatMap("", "", "", "", AT, AT, days, tiles, List.of(notes));
    }

    /** A trip of two days has no trend, and what cannot be has no bank: neither is said to fall. */
    @Test
    void mapsNameWhatHasNoDays() throws Exception {
        List<List<Double>> days = List.of(List.of(1.5, NEVER), List.of(NEVER, NEVER));
        HeatMap unknown = map(days, List.of(List.of(Tile.DAYS, Tile.UNKNOWN), List.of(Tile.IMPOSSIBLE, Tile.UNKNOWN)));
        assertThat(texts(renderer.svg(unknown, "unknown")))
                .contains("holds", "not empty, trip too short to tell more", "impossible")
                .doesNotContain("not empty, but falling");
        HeatMap falls = map(
                days,
                List.of(List.of(Tile.DAYS, Tile.FALLS), List.of(Tile.HOLDS, Tile.HOLDS)),
                "all " + "1200 Ah ".repeat(30).strip());
        assertThat(texts(renderer.svg(falls, "falls")))
                .contains("holds", "not empty, but falling")
                .doesNotContain("not empty, trip too short to tell more", "impossible");
        assertThat(texts(renderer.svg(falls, "falls")))
                .filteredOn(text -> text.contains("1200 "))
                .as("a note on lines of its own, numbers with their units")
                .hasSizeGreaterThan(1)
                .allMatch(text -> text.endsWith("Ah"));
        List<List<Cell>> winners = List.of(
                List.of(new Cell(0, HOLDS, NEVER), new Cell(1, FALLS, NEVER)),
                List.of(new Cell(1, UNKNOWN, NEVER), new Cell(1, EMPTY, 1.5)));
        assertThat(texts(renderer.svg(
                        new BreakEven("", "", "", "", AT, AT, List.of("as it is", "more"), winners), "winners")))
                .contains("1", "2: falling", "2: not empty", "2: 1.5 days");
    }

    /** Days that the key cannot tell apart have one colour, beside those of words and lines; others have all of the key. */
    @Test
    void whatIsShownAlikeLooksAlike() throws Exception {
        List<List<Tile>> tiles = List.of(List.of(Tile.DAYS, Tile.DAYS), List.of(Tile.HOLDS, Tile.HOLDS));
        String alike = renderer.svg(map(List.of(List.of(0.97, 0.98), List.of(NEVER, NEVER)), tiles), "map");
        assertThat(texts(alike)).contains("1.0 days; lines at whole days");
        assertThat(colours(alike)).hasSizeLessThan(10);
        String unlike = renderer.svg(map(List.of(List.of(0.97, 1.4), List.of(NEVER, NEVER)), tiles), "map");
        assertThat(texts(unlike)).contains("1.0 to 1.4 days; lines at whole days");
        assertThat(colours(unlike)).hasSizeGreaterThan(30);
    }

    private static Set<String> colours(String svg) {
        return Pattern.compile("fill=\"(rgb[^\"]*)\"")
                .matcher(svg)
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toSet());
    }

    @Test
    void wordsAndDatesAreNamedBelow() throws Exception {
        List<String> words = List.of("reflective", "none", "a name so long that it takes a second line and more");
        assertThat(texts(renderer.svg(ChartGallery.words(words), "words"))).contains("reflective", "none", "one");
        LinesChart dates = new LinesChart(
                "title",
                "subtitle",
                new LinesChart.XAxis(
                        "first day",
                        LinesChart.Marks.DATES,
                        0,
                        23,
                        List.of(
                                new LinesChart.Place(23, "8 Jul"),
                                new LinesChart.Place(0, "15 Jun"),
                                new LinesChart.Place(0.5, "too near"))),
                List.of(new LinesChart.Panel(
                        "days",
                        true,
                        List.of(new LinesChart.Line("one", List.of(0.0, 0.5, 23.0), List.of(3.0, 2.0, 1.0))))));
        assertThat(texts(renderer.svg(dates, "dates")))
                .contains("15 Jun", "8 Jul")
                .doesNotContain("too near");
    }

    private static double y(Document picture, String words) {
        NodeList nodes = picture.getElementsByTagName("text");
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .filter(text -> text.getTextContent().strip().equals(words))
                .mapToDouble(text -> Double.parseDouble(text.getAttribute("y")))
                .findFirst()
                .orElseThrow();
    }

    /** A bank that is below its reserve on the first days only has the words below the line later, where they can be read. */
    @Test
    void theWordsOfTheReserveGiveWayToLines() throws Exception {
        double below = reserveX(List.of(0.0, 3.0, 3.5, 14.0), List.of(17.0, 17.0, 90.0, 90.0));
        double above = reserveX(List.of(0.0, 14.0), List.of(90.0, 90.0));
        double nowhere = reserveX(List.of(0.0, 14.0), List.of(17.0, 17.0));
        assertThat(below).isGreaterThan(above + 100);
        assertThat(nowhere).isEqualTo(above);
    }

    private static double reserveX(List<Double> day, List<Double> percent) throws Exception {
        SocChart chart = new SocChart(
                "title",
                "subtitle",
                "state of charge, %",
                14,
                20,
                "reserve 20 %",
                List.of(),
                List.of(new SocChart.Line("one", "holds", day, percent, Double.NaN)));
        NodeList nodes = parse(renderer.svg(chart, "soc")).getElementsByTagName("text");
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .filter(text -> text.getTextContent().strip().equals("reserve 20 %"))
                .mapToDouble(text -> Double.parseDouble(text.getAttribute("x")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSvgOfEnergyCabinAndAlternatorsHasEveryWordOfTheModel() throws Exception {
        Comparison.Option second = COMPARISON.options().get(3);
        EnergyBalance balance = EnergyBalance.of(COMPARISON, second);
        assertThat(texts(renderer.svg(balance, "a"))).contains(balance.title(), balance.xLabel(), balance.outside());
        assertThat(texts(renderer.svg(balance, "a")))
                .containsAll(balance.steps().stream()
                        .flatMap(step -> Stream.of(step.label(), step.words()))
                        .toList());

        EnergyDays days = EnergyDays.of(COMPARISON, second);
        assertThat(texts(renderer.svg(days, "b")))
                .contains(days.title(), days.yLabel(), "day 1", "day 14")
                .containsAll(days.sources())
                .containsAll(days.uses());

        CabinChart cabin = CabinChart.of(COMPARISON, second);
        assertThat(texts(renderer.svg(cabin, "c")))
                .contains(cabin.title(), cabin.temperatureLabel(), cabin.comfortLabel(), "no sun")
                .contains(CabinChart.CABIN, CabinChart.OUTSIDE, CabinChart.TOO_WARM, CabinChart.TOO_COLD)
                .contains(cabin.outOfBandLabel() + ": " + cabin.outOfBandTotal());

        DriveChart drive = DriveChart.of(COMPARISON, second);
        assertThat(texts(renderer.svg(drive, "d")))
                .contains(drive.title(), drive.subtitle(), drive.temperatureLabel(), drive.currentLabel())
                .contains(drive.limitLabel(), "alternator heat, 50 min", "06:45", "17:00")
                .containsAll(drive.temperatures())
                .containsAll(drive.currents());

        OperatingPoints points = OperatingPoints.of(COMPARISON, second);
        assertThat(texts(renderer.svg(points, "e")))
                .contains(points.title(), "rotor speed, 1/min", "output, A", "town", "4.0 h, mean 54 A")
                .contains("cold, windings at 25 °C", "hot, windings at 130 °C", "regulator cap");
    }

    @Test
    void twoPicturesInOnePageShareNoId() throws Exception {
        SocChart chart = SocChart.of(COMPARISON);
        List<String> first = ids(renderer.svg(chart, "first"));
        List<String> second = ids(renderer.svg(chart, "second"));
        assertThat(first).isNotEmpty().doesNotContainAnyElementsOf(second);
    }

    @Test
    void theSvgNamesFacesAndHoldsNone() throws Exception {
        String svg = renderer.svg(SocChart.of(COMPARISON), "soc");
        assertThat(svg).contains("sans-serif").doesNotContain("@font-face", "<font", "<image");
        NodeList elements = parse(svg).getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            String faces = ((Element) elements.item(i)).getAttribute("font-family");
            assertThat(faces.isEmpty() || faces.endsWith(", sans-serif"))
                    .as(faces)
                    .isTrue();
        }
    }

    @Test
    void allAtOnceGivesTheSameBytesAsOneByOne() throws IOException {
        SortedMap<String, ChartModel> models = ChartGallery.comparison(InventedComparison.of(2));
        renderer.writeAll(models, folder.resolve("together"));
        ChartRenderer another = new ChartRenderer();
        for (String name : models.keySet()) {
            another.write(models.get(name), folder.resolve("alone"), name);
        }
        try (Stream<Path> files = Files.list(folder.resolve("together"))) {
            List<Path> together = files.toList();
            assertThat(together).hasSize(2 * models.size());
            for (Path file : together) {
                assertThat(folder.resolve("alone").resolve(file.getFileName())).hasSameBinaryContentAs(file);
            }
        }
    }

    @Test
    void thePngCanBeReadBackPixelByPixel() throws IOException {
        int[] rgb =
                IntStream.range(0, 40 * 30).map(i -> i * 0x012345 & 0xFFFFFF).toArray();
        var image = ImageIO.read(new ByteArrayInputStream(Png.encode(rgb, 40, 30)));
        assertThat(image.getWidth()).isEqualTo(40);
        for (int i = 0; i < rgb.length; i++) {
            assertThat(image.getRGB(i % 40, i / 40) & 0xFFFFFF).isEqualTo(rgb[i]);
        }
    }

    @Test
    void thePngIsTwiceTheSizeOfTheSvg() throws Exception {
        renderer.write(DaysBars.of(COMPARISON), folder, "bars");
        var image = ImageIO.read(folder.resolve("bars.png").toFile());
        Element root = parse(Files.readString(folder.resolve("bars.svg"))).getDocumentElement();
        assertThat(image.getWidth()).isEqualTo(2 * Integer.parseInt(root.getAttribute("width")));
        assertThat(image.getHeight()).isEqualTo(2 * Integer.parseInt(root.getAttribute("height")));
    }

    @Test
    void aFolderThatIsAFileGetsAPlainMessage() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("out"), "mine");
        assertThatThrownBy(() -> renderer.writeAll(ChartGallery.comparison(InventedComparison.of(1)), notAFolder))
                .isInstanceOf(IOException.class)
                .hasMessageEndingWith(notAFolder + " is a file, not a folder.");
        assertThat(notAFolder).hasContent("mine");
    }

    /** A machine without fonts, as small server images are: the list of fonts is empty, and so is the home folder. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void needsNoFontOfTheMachineAndLeavesNoTemporaryFile() throws Exception {
        Path home = Files.createDirectory(folder.resolve("home"));
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        Path noFonts = Files.writeString(
                folder.resolve("fonts.conf"),
                "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig/>");
        ProcessBuilder fresh = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.home=" + home,
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        ChartGallery.class.getName(),
                        folder.resolve("bare").toString(),
                        "2")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile());
        fresh.environment().put("FONTCONFIG_FILE", noFonts.toString());
        fresh.environment().put("HOME", home.toString());
        fresh.environment().remove("DISPLAY");
        Process process = fresh.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(folder.resolve("said")).hasContent("");
        assertThat(process.exitValue()).isZero();
        assertThat(folder.resolve("bare/state-of-charge.svg"))
                .hasContent(renderer.svg(SocChart.of(InventedComparison.of(2)), "state-of-charge"));
        try (Stream<Path> left = Files.list(temporary)) {
            assertThat(left.filter(file -> !file.getFileName().toString().startsWith("hsperfdata")))
                    .isEmpty();
        }
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> texts(String svg) throws Exception {
        NodeList nodes = parse(svg).getElementsByTagName("text");
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> nodes.item(i).getTextContent().strip())
                .toList();
    }

    private static List<String> ids(String svg) throws Exception {
        NodeList nodes = parse(svg).getElementsByTagName("*");
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> ((Element) nodes.item(i)).getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
    }
}
