package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.cabin.CabinPhysics;
import ampdays.load.ClockWindow;
import ampdays.load.LoadSpec;
import ampdays.load.Occasion;
import ampdays.pv.Mounting;
import ampdays.scenario.Design;
import ampdays.scenario.Kind;
import ampdays.scenario.Mark;
import ampdays.scenario.Origin;
import ampdays.scenario.Parameter;
import ampdays.scenario.Registry;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Section;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.trip.People;
import ampdays.trip.Shade;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.trip.Vehicle;
import ampdays.units.Dimension;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a scenario file says and what is built from it; expected values are those written in the files themselves. */
class ScenarioReaderTest {
    private static final String RIGHT = WrongScenarioTest.resource("right-scenario.yaml");

    @TempDir
    private Path folder;

    @BeforeEach
    void weatherLiesBesideTheScenario() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), "only its presence matters here");
    }

    private ScenarioFile read(String text) throws IOException, InputException {
        Path file = folder.resolve("client.yaml");
        Files.writeString(file, text);
        return ScenarioReader.read(file);
    }

    private Design design(String text) throws IOException, InputException, ScenarioException {
        return read(text).scenario().variants().get(0).design();
    }

    @Test
    void theScenarioHasItsNameTitleAndOptionsInTheOrderWritten() throws Exception {
        Scenario scenario = read(RIGHT).scenario();
        assertThat(scenario.name()).isEqualTo("client");
        assertThat(scenario.title()).isEqualTo("Test");
        assertThat(scenario.variants())
                .extracting(Variant::name)
                .containsExactly("as it is", "more solar", "bigger bank");
        assertThat(scenario.variants().get(0).weather()).isEqualTo("weather.csv");
        assertThat(scenario.variants().get(0).site().longitudeDeg()).isEqualTo(-112);
    }

    @Test
    void anOptionChangesWhatItNamesAndNothingElse() throws Exception {
        List<Variant> variants = read(RIGHT).scenario().variants();
        Design base = variants.get(0).design();
        Design moreSolar = variants.get(1).design();
        assertThat(base.solar().orElseThrow().ratedW()).isEqualTo(400);
        assertThat(moreSolar.solar().orElseThrow().ratedW()).isEqualTo(900);
        assertThat(moreSolar.bank()).isEqualTo(base.bank());
        assertThat(moreSolar.cabin()).isEqualTo(base.cabin());
        assertThat(variants.get(2).design().bank().capacityAh()).isEqualTo(800);
    }

    @Test
    void anOptionAddsAndDropsComponentsAndLoads() throws Exception {
        String text = RIGHT.replace(
                "more solar: {solar.power: 900 W}",
                "other: {second-alternator: {preset: large frame, rated: 270 A}, solar: none, loads.lights: none,"
                        + " loads.pump: {draw: 5 A}}");
        Design other = read(text).scenario().variants().get(1).design();
        assertThat(other.solar()).isEmpty();
        assertThat(other.second().orElseThrow().ratedA()).isEqualTo(270);
        assertThat(other.loads()).extracting(LoadSpec::name).containsExactly("laptops", "pump");
    }

    @Test
    void aComponentThatIsNotNamedIsNotThere() throws Exception {
        Design design = design(RIGHT);
        assertThat(design.cooler()).isEmpty();
        assertThat(design.refrigerator()).isEmpty();
        assertThat(design.factory()).isEmpty();
        assertThat(design.second()).isEmpty();
        assertThat(design.shore()).isEmpty();
        assertThat(design.inverter()).isPresent();
    }

    @Test
    void marksAndNotesAreKeptWithTheValue() throws Exception {
        Values values = read(RIGHT.replace("draw: 1.5 A", "draw: 0.4 A (measured: meter, two readings)")
                        .replace("capacity: 400 Ah", "capacity: 400 Ah (datasheet)"))
                .base();
        Value draw = values.find("loads.lights.draw").orElseThrow();
        assertThat(draw.text()).isEqualTo("0.4 A");
        assertThat(draw.number()).isEqualTo(0.4);
        assertThat(draw.mark()).contains(Mark.MEASURED);
        assertThat(draw.note()).isEqualTo("meter, two readings");
        assertThat(draw.origin()).hasToString("client.yaml:27");
        assertThat(values.find("battery.capacity").orElseThrow().mark()).contains(Mark.DATASHEET);
        Value insulation = values.find("cabin.insulation").orElseThrow();
        assertThat(insulation.origin()).hasToString("preset high-roof van, insulated");
        assertThat(insulation.mark()).contains(Mark.PRACTICE);
        assertThat(values.find("trip.reserve").orElseThrow().origin()).hasToString("client.yaml:7");
        assertThat(values.find("engine.idle").orElseThrow().origin()).hasToString("default");
    }

    @Test
    void theListingNamesEveryValueOnceAndOnlyThoseOfTheDesign() throws Exception {
        List<Values.Listed> listing = read(RIGHT).base().listing();
        assertThat(listing).extracting(Values.Listed::path).doesNotHaveDuplicates();
        assertThat(listing)
                .extracting(Values.Listed::path)
                .contains("battery.resistance", "loads.laptops.heat", "trip.timetable.rest days", "trip.rest days")
                .doesNotContain("cooling.cop", "loads.*.heat");
        assertThat(listing).allSatisfy(l -> assertThat(l.value().text()).isNotEmpty());
    }

    /** 5.1 kWh over four cells of 3.2 V (the nominal voltage of lithium iron phosphate) is 398.4375 Ah. */
    @Test
    void aCapacityMayBeAnEnergy() throws Exception {
        assertThat(design(RIGHT.replace("400 Ah", "5.1 kWh")).bank().capacityAh())
                .isCloseTo(398.4375, within(1e-9));
        Design big = design(RIGHT.replace("12 V, capacity: 400 Ah", "24 V, capacity: 5.12 kWh"));
        assertThat(big.bank().seriesCells()).isEqualTo(8);
        assertThat(big.bank().capacityAh()).isCloseTo(200, within(1e-9));
    }

    /** Common practice, no source: 6 mΩ and 100 A per 100 Ah block of four cells, 3.55 V and 2.75 V per cell. */
    @ParameterizedTest
    @CsvSource({"12, 400, 0.0015, 400, 14.2, 11.0", "24, 200, 0.006, 200, 28.4, 22.0", "48, 100, 0.024, 100, 56.8, 44.0"
    })
    void whatTheBankDoesNotSayFollowsFromItsSize(
            int volts, int ah, double ohm, double limitA, double absorptionV, double cutOutV) throws Exception {
        var bank = design(RIGHT.replace("12 V, capacity: 400 Ah", volts + " V, capacity: " + ah + " Ah"))
                .bank();
        assertThat(bank.resistanceOhm()).isCloseTo(ohm, within(1e-12));
        assertThat(bank.chargeLimitA()).isEqualTo(limitA);
        assertThat(bank.absorptionV()).isCloseTo(absorptionV, within(1e-9));
        assertThat(bank.cutOut().busV()).isCloseTo(cutOutV, within(1e-9));
    }

    /** Silver and black: Levinson et al., Applied Energy 88 (2011) 4343, shell reflectance 0.58 and 0.05. */
    @ParameterizedTest
    @CsvSource({"silver, 0.42", "black, 0.95"})
    void aColourAbsorbsWhatItDoesNotReflect(String colour, double absorptance) throws Exception {
        assertThat(design(RIGHT.replace("white", colour)).cabin().solarAbsorptance())
                .isEqualTo(absorptance);
    }

    @Test
    void temperaturesMayBeOffAndTheComfortBandFollowsTheSetTemperature() throws Exception {
        var cabin = design(RIGHT).cabin();
        assertThat(cabin.asleepC()).isEqualTo(24);
        assertThat(cabin.awayC()).isNaN();
        assertThat(cabin.aboardC()).isNaN();
        assertThat(cabin.comfortHighC()).isEqualTo(25.5);
        assertThat(design(RIGHT.replace("asleep: 24 °C", "asleep: 77 °F"))
                        .cabin()
                        .asleepC())
                .isCloseTo(25, within(1e-9));
    }

    /** Two resistances in series: 1 / (1/5.8 + 0.5) W/(m² K). */
    @Test
    void coversInsulateAndShadeTheGlass() throws Exception {
        var cabin = design(RIGHT.replace("colour: white", "covers: insulated")).cabin();
        assertThat(CabinPhysics.glassWm2K(cabin, true)).isCloseTo(1 / (1 / 5.8 + 0.5), within(1e-12));
        assertThat(CabinPhysics.glassWm2K(cabin, false)).isCloseTo(5.8, within(1e-12));
        assertThat(cabin.glassSolarShare() * cabin.covers().passShare()).isCloseTo(0.65 * 0.20, within(1e-12));
    }

    @Test
    void panelsWarmTheRoofByTheirMounting() throws Exception {
        assertThat(design(RIGHT).cabin().panelHeatShare()).isEqualTo(0.30);
        Design bonded = design(RIGHT.replace("power: 400 W", "preset: bonded panels, power: 400 W"));
        assertThat(bonded.solar().orElseThrow().panel().mounting()).isEqualTo(Mounting.BONDED);
        assertThat(bonded.cabin().panelHeatShare()).isEqualTo(0.75);
        assertThat(design(RIGHT.replace("solar: {power: 400 W}", "solar: none"))
                        .cabin()
                        .panelHeatShare())
                .isZero();
    }

    @Test
    void loadsHaveDrawOccasionClockAndUse() throws Exception {
        Design design = design(RIGHT.replace("when: 19:00-22:30", "when: \"awake, 19:00-22:30, 23:00-01:00\""));
        assertThat(design.loads().get(0))
                .isEqualTo(new LoadSpec(
                        "lights",
                        1.5,
                        0,
                        false,
                        Occasion.AWAKE,
                        List.of(new ClockWindow(1140, 1350), new ClockWindow(1380, 60)),
                        Double.NaN,
                        1,
                        0,
                        0));
        assertThat(design.loads().get(1))
                .isEqualTo(new LoadSpec("laptops", 0, 110, true, Occasion.ALWAYS, List.of(), 4, 1, 0, 0));
    }

    @Test
    void timetableLinesBecomeStretches() throws Exception {
        Trip trip = read(RIGHT.replace("park sun, away", "park shade hook-up, away")
                        .replace("drive town, aboard", "drive town"))
                .scenario()
                .variants()
                .get(0)
                .trip();
        assertThat(trip.kinds().get(0).name()).isEqualTo("field days");
        assertThat(trip.kinds().get(0).stretches())
                .containsExactly(
                        new Stretch(390, Vehicle.TOWN, Shade.NONE, false, People.ABOARD),
                        new Stretch(430, Vehicle.PARKED, new Shade(0.1, 0.4), true, People.AWAY),
                        new Stretch(1085, Vehicle.PARKED, new Shade(0.5, 0.7), false, People.AWAKE),
                        new Stretch(1320, Vehicle.PARKED, Shade.NONE, false, People.ASLEEP));
        assertThat(trip.kindOfDay()).containsExactly(0, 0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 1, 1);
        assertThat(trip.start()).hasToString("2025-07-08");
        assertThat(trip.reserveShare()).isEqualTo(0.2);
    }

    /** By the calendar 8 July 2024 was a Monday. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-5, 8-12 | XXXXX..XXXXX..",
                "3 | ..X...........",
                "Mon-Fri | XXXXX..XXXXX..",
                "Sat-Mon, Wednesday | X.X..XXX.X..XX",
                "2024-07-10 to 2024-07-12, 2024-07-20 | ..XXX.......X.",
            })
    void kindsOfDayGoByNumberDateOrWeekday(String days, String expected) throws Exception {
        String text = RIGHT.replace("start: 07-08", "start: 2024-07-08").replace("1-5, 8-12", days);
        StringBuilder found = new StringBuilder();
        read(text).scenario().variants().get(0).trip().kindOfDay().forEach(k -> found.append(k == 0 ? 'X' : '.'));
        assertThat(found).hasToString(expected);
    }

    @Test
    void oneTimetableServesAllDays() throws Exception {
        int from = RIGHT.indexOf("  field days: 1-5");
        int to = RIGHT.indexOf("cabin:");
        String text = RIGHT.substring(0, from) + "  timetable:\n    - 08:00 park sun, awake\n" + RIGHT.substring(to);
        Trip trip = read(text).scenario().variants().get(0).trip();
        assertThat(trip.kinds()).hasSize(1);
        assertThat(trip.days()).isEqualTo(14);
    }

    @Test
    void aSharedFileLiesUnderTheScenario() throws Exception {
        Files.createDirectories(folder.resolve("parts"));
        Files.writeString(
                folder.resolve("parts/van.yaml"),
                "solar: {power: 300 W, dirt: 9 %}\nloads: {fan: {draw: 2 A}}\nrefrigerator: {preset: 90 L compressor}\n");
        Design design = design("use: parts/van.yaml\n" + RIGHT);
        assertThat(design.solar().orElseThrow().ratedW()).isEqualTo(400);
        assertThat(design.solar().orElseThrow().dirt().startShare()).isEqualTo(0.09);
        assertThat(design.refrigerator()).isPresent();
        assertThat(design.loads()).extracting(LoadSpec::name).containsExactly("fan", "lights", "laptops");
    }

    @Test
    void yamlMergeKeysWork() throws Exception {
        String text = RIGHT.replace("lights: {", "lights: &l {")
                .replace("laptops: {", "spare: {<<: *l, heat: 0 %}\n  laptops: {");
        LoadSpec spare = design(text).loads().get(1);
        assertThat(spare.drawA()).isEqualTo(1.5);
        assertThat(spare.heatShare()).isZero();
    }

    @Test
    void yamlAnchorsByteOrderMarkAndWindowsLineEndsAreFine() throws Exception {
        String text = RIGHT.replace("lights: {", "lights: &l {").replace("laptops: {", "spare: *l\n  laptops: {");
        ScenarioFile plain = read(text);
        assertThat(plain.scenario().variants().get(0).design().loads())
                .extracting(LoadSpec::drawA)
                .containsExactly(1.5, 1.5, 0.0);
        assertThat(read("\uFEFF" + text.replace("\n", "\r\n")).scenario()).isEqualTo(plain.scenario());
    }

    @Test
    void aStudySetsAnyKnobByItsPath() throws Exception {
        Values base = read(RIGHT).base();
        Values changed = base.with("battery.capacity", "10.24 kWh").with("solar.power", 750);
        Design design = VariantBuilder.build("changed", changed).design();
        assertThat(design.bank().capacityAh()).isCloseTo(800, within(1e-9));
        assertThat(design.solar().orElseThrow().ratedW()).isEqualTo(750);
        assertThat(base.number("solar.power")).isEqualTo(400);
        assertThat(changed.word("solar.power")).isEqualTo("750 W");
        assertThat(VariantBuilder.build("none", base.with("solar", "none"))
                        .design()
                        .solar())
                .isEmpty();
        assertThatThrownBy(() -> base.with("solar.powr", "1 W"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("solar.powr is not known. Did you mean solar.power?");
        assertThatThrownBy(() -> base.with("solar.power", -1)).hasMessage("solar.power must lie from 1 W to 20000 W.");
        assertThatThrownBy(() -> VariantBuilder.build("x", base.without("battery")))
                .isInstanceOf(ScenarioException.class)
                .hasMessage("The section battery is missing. Write it with preset, capacity.");
    }

    @Test
    void theDemoIsRight() throws Exception {
        String text = Files.readString(Path.of("scenarios/desert-survey.yaml"))
                .replaceFirst("(?m)^weather: .*$", "weather: weather.csv");
        Scenario scenario = read(text).scenario();
        assertThat(scenario.variants())
                .extracting(Variant::name)
                .containsExactly("as it is", "more solar", "bigger bank", "second alternator", "less heat");
        assertThat(text).startsWith("# yaml-language-server: $schema=").contains("Invented example");
        assertThat(scenario.variants().get(0).trip().days()).isEqualTo(14);
        assertThat(scenario.variants().get(3).design().second()).isPresent();
    }

    @Test
    void theStarterIsRightAndItsWeatherIsTheOneAskedFor() throws Exception {
        Files.writeString(folder.resolve("it's here.csv"), "only its presence matters here");
        Scenario scenario = read(StarterScenario.text("it's here.csv")).scenario();
        assertThat(scenario.variants()).hasSize(4);
        assertThat(scenario.variants().get(0).weather()).isEqualTo("it's here.csv");
        assertThat(scenario.variants().get(0).design().second()).isEmpty();
        assertThat(scenario.variants().get(3).design().second()).isPresent();
    }

    /** Any value inside its range, in any unit of its dimension, is read as that value; outside it is refused. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void everyNumberIsReadInEveryUnitWithinItsRangeOnly(long seed) throws QuantityException {
        Random random = new Random(seed);
        for (Section section : Registry.sections()) {
            for (Parameter parameter : section.parameters()) {
                if (parameter.kind() instanceof Kind.Measured kind) {
                    double base = kind.low() + (kind.high() - kind.low()) * random.nextDouble();
                    Dimension dimension = kind.dimensions().get(0);
                    Value value = parameter.read(dimension.show(base) + " (guess: drawn by lot)", place());
                    assertThat(value.number()).isCloseTo(base, within(5e-4 * Math.abs(base)));
                    assertThat(value.note()).isEqualTo("drawn by lot");
                    double above = kind.high() + 0.01 * (kind.high() - kind.low());
                    assertThatThrownBy(() -> parameter.read(dimension.show(above), place()))
                            .as(parameter.path())
                            .hasMessageContaining("is out of range. It must lie from " + dimension.show(kind.low()));
                }
            }
        }
    }

    private static Origin place() {
        return new Origin("lot", 1, 1);
    }

    /** The order of sections is the writer's business. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void theOrderOfSectionsDoesNotMatter(long seed) throws Exception {
        List<String> sections = new ArrayList<>(List.of(RIGHT.split("(?m)^(?=\\S)", -1)));
        Scenario written = read(RIGHT).scenario();
        Collections.shuffle(sections, new Random(seed));
        assertThat(read(String.join("", sections)).scenario()).isEqualTo(written);
    }
}
