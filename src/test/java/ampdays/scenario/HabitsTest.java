package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import ampdays.trip.Stretch;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Habits and tolerances of the demo, changed by hand; expected values follow from its own numbers. */
class HabitsTest {
    private static ScenarioFile file;

    @BeforeAll
    static void read() throws Exception {
        file = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
    }

    private static Variant with(String name, double value) throws ScenarioException {
        Uncertain habit = Habits.of(file.base()).stream()
                .filter(h -> h.name().equals(name))
                .findFirst()
                .orElseThrow();
        return habit.apply(Draft.of(file.base()), value).variant("changed", new VariantBuilder());
    }

    private static Variant usual() {
        return file.scenario().variants().get(0);
    }

    /** 06:30 to 07:15 and 16:45 to 17:30 are 45 min each, a fifth more 54. */
    @Test
    void drivesBeginWhenTheyDidAndLastLonger() throws ScenarioException {
        List<Stretch> day = with("drives", 0.2).trip().kinds().get(0).stretches();
        assertThat(day.stream().map(Stretch::fromMinuteOfDay))
                .containsExactly(390, 390 + 54, 1005, 1005 + 54, 1230, 1320);
        assertThat(with("drives", 0).trip()).isEqualTo(usual().trip());
    }

    /** A drive stops a minute before what follows its end, and lasts a minute at least. */
    @Test
    void drivesLeaveRoomForWhatFollows() throws ScenarioException {
        Values tight = file.base()
                .with(
                        "trip.timetable.field days",
                        "06:30 drive town, aboard\n07:15 park sun, away\n07:20 drive highway, aboard\n08:00 park sun, away\n"
                                + "22:00 park sun, asleep");
        List<Stretch> longer = new Draft(tight, 1.9)
                .variant("longer", new VariantBuilder())
                .trip()
                .kinds()
                .get(0)
                .stretches();
        assertThat(longer.stream().map(Stretch::fromMinuteOfDay)).containsExactly(390, 439, 440, 516, 1320);
        List<Stretch> shorter = new Draft(tight, 0.01)
                .variant("shorter", new VariantBuilder())
                .trip()
                .kinds()
                .get(0)
                .stretches();
        assertThat(shorter.stream().map(Stretch::fromMinuteOfDay)).containsExactly(390, 391, 440, 441, 1320);
    }

    /** A drive that becomes another kind of drive: both last longer, the second from the first's new end. */
    @Test
    void drivesInARowAreOneAfterTheOther() throws ScenarioException {
        Values row = file.base()
                .with(
                        "trip.timetable.field days",
                        "06:30 drive town, aboard\n06:50 drive highway, aboard\n07:30 park sun, away\n22:00 park sun, asleep");
        List<Stretch> longer = new Draft(row, 1.5)
                .variant("longer", new VariantBuilder())
                .trip()
                .kinds()
                .get(0)
                .stretches();
        assertThat(longer.stream().map(Stretch::fromMinuteOfDay)).containsExactly(390, 420, 480, 1320);
    }

    @Test
    void peopleWantItWarmerAndComfortGoesAlong() throws ScenarioException {
        Design warmer = with("set point", 1).design();
        assertThat(warmer.cabin().asleepC()).isEqualTo(27);
        assertThat(warmer.cabin().awakeC()).isEqualTo(29);
        assertThat(warmer.cabin().awayC()).isNaN();
        assertThat(warmer.cabin().comfortHighC()).isEqualTo(28.5);
    }

    @Test
    void partsAndLoadsScale() throws ScenarioException {
        assertThat(with("bank wear", 0.1).design().bank().capacityHealth()).isCloseTo(0.9, within(1e-12));
        Values amps =
                Habits.of(file.base()).get(3).apply(Draft.of(file.base()), 0.2).values();
        assertThat(amps.number("loads.lights.draw")).isCloseTo(1.8, within(1e-12));
        assertThat(amps.find("loads.laptops.draw").orElseThrow().text()).isEqualTo("132 W");
        Values weaker =
                Habits.of(file.base()).get(4).apply(Draft.of(file.base()), -0.1).values();
        assertThat(weaker.number("factory-alternator.rated"))
                .isCloseTo(0.9 * file.base().number("factory-alternator.rated"), within(1e-9));
    }

    /** 50 % and 70 % in part shade, 10 % and 40 % in shade; 15 points less cannot go below nothing. */
    @Test
    void shadesMoveByPointsWithinTheirRange() {
        Values darker = Habits.of(file.base())
                .get(2)
                .apply(Draft.of(file.base()), -0.15)
                .values();
        assertThat(darker.number("shade.part-shade.beam")).isCloseTo(0.35, within(1e-12));
        assertThat(darker.number("shade.part-shade.diffuse")).isCloseTo(0.55, within(1e-12));
        assertThat(darker.number("shade.shade.beam")).isZero();
    }

    @Test
    void whatADesignDoesNotHaveHasNoSpread() {
        List<Uncertain> base = Habits.of(file.base());
        assertThat(base.get(5).isSpread()).isFalse();
        assertThat(Habits.of(file.values("second alternator").orElseThrow())
                        .get(5)
                        .high())
                .isEqualTo(0.15);
        assertThat(Habits.of(file.base().with("chances.drives", "0 %")).get(0).isSpread())
                .isFalse();
        assertThat(base.get(0).source()).isEqualTo("guess");
        assertThat(Habits.of(file.base().with("chances.drives", "5 %")).get(0).source())
                .isEqualTo("your figure");
    }

    @Test
    void theWindowIsSaidOrTwoWeeksAround() {
        StartWindow said = StartWindow.of(file.base(), usual().trip());
        assertThat(said.first()).isEqualTo(LocalDate.of(2025, 6, 15));
        assertThat(said.days(0)).hasSize(16 + 31 + 31);
        Values unsaid = file.base().without("chances");
        assertThat(StartWindow.of(unsaid, usual().trip()).days(0))
                .hasSize(29)
                .startsWith(LocalDate.of(2025, 6, 24))
                .endsWith(LocalDate.of(2025, 7, 22));
        StartWindow overNewYear = StartWindow.of(
                unsaid.with("chances.first-start", "12-20").with("chances.last-start", "01-05"), usual().trip());
        assertThat(overNewYear.days(1))
                .hasSize(12 + 5)
                .startsWith(LocalDate.of(2026, 12, 20))
                .endsWith(LocalDate.of(2027, 1, 5));
    }
}
