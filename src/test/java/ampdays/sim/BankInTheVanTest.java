package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.Finding;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The bank as a part of the van: what is shed, what the protection does, the other chemistry. */
class BankInTheVanTest {
    private static final String DRIVE = "00:00 park open, away\n10:00 drive highway, away\n13:00 park open, away";

    private static Optional<Finding> finding(RunResult result, String kind) {
        return result.findings().stream().filter(f -> f.kind().equals(kind)).findFirst();
    }

    /** No load and no source: only self-discharge and electronics leave the bank (identity). */
    @ParameterizedTest
    @ValueSource(strings = {"lithium iron phosphate 12 V", "lead-acid AGM 12 V"})
    void anUnusedVanOnlyStands(String preset) {
        RunResult result = new Van().with("battery.preset", preset).run(Van.dark(20));
        double standbyWh = result.energy().wh(Account.BANK_STANDBY);
        assertThat(-result.energy().wh(Account.STORED)).isCloseTo(standbyWh, within(1e-6));
        assertThat(result.energy().servedWh()).isZero();
        assertThat(standbyWh).isPositive();
        assertThat(result.cycles()).isZero();
    }

    /**
     * 10 A on 400 Ah: what goes first stops at 30 %, what goes later at 15 %, and the last alone reaches the cut-out at 5 %;
     * asked is what it would be without shedding (definition of the order). Hours
     * are told by energy; the voltage falls by up to 5 % with the charge.
     */
    @Test
    void loadsGoInTheirOrder() {
        Van van = new Van()
                .with("battery.self-discharge", "0 %/month")
                .with("battery.electronics", "0 A")
                .load("music", "6 A", "always")
                .with("loads.music.shed", "first")
                .load("lights", "3 A", "always")
                .with("loads.lights.shed", "later")
                .load("alarms", "1 A", "always");
        RunResult result = van.run(Van.dark(25));
        double musicH = 0.70 * 400 / 10;
        double lightsH = musicH + 0.15 * 400 / 4;
        double alarmsH = lightsH + 0.10 * 400 / 1;
        assertThat(servedH(result, "music", 6)).isCloseTo(musicH, within(0.05 * musicH));
        assertThat(servedH(result, "lights", 3)).isCloseTo(lightsH, within(0.05 * lightsH));
        assertThat(servedH(result, "alarms", 1)).isCloseTo(alarmsH, within(0.05 * alarmsH));
        assertThat(finding(result, "loads shed at low charge")).isPresent();
    }

    private static double servedH(RunResult result, String use, double amperes) {
        double served = result.servedWhByUse().get(use);
        double asked = served + result.unservedWhByUse().get(use);
        assertThat(asked).isBetween(0.9 * 13 * amperes * 240, 1.02 * 13.4 * amperes * 240);
        return served / asked * 240;
    }

    /** A state of charge of one's own instead of the word. */
    @Test
    void aLoadMayGoAtAChargeOfItsOwn() {
        RunResult result = new Van()
                .load("music", "10 A", "always")
                .with("loads.music.shed-below", "60 %")
                .run(Van.dark(25));
        assertThat(result.lowestSoc()).isBetween(0.58, 0.6);
    }

    /** The air conditioner is a load like others: shed first, it stops at 30 % and the refrigerator goes on. */
    @Test
    void coolingCanGoFirst() {
        Van van = new Van()
                .with("trip.timetable.all days", "00:00 park open, asleep")
                .with("cabin.set.asleep", "22 °C")
                .with("cooling.preset", "fixed-speed roof unit")
                .with("refrigerator.preset", "90 L compressor");
        WeatherSeries hot = Van.dark(38);
        RunResult together = van.run(hot);
        RunResult shed = van.with("cooling.shed", "first").run(hot);
        assertThat(shed.servedWhByUse().get("refrigerator"))
                .isGreaterThan(1.5 * together.servedWhByUse().get("refrigerator"));
        assertThat(shed.servedWhByUse().get("cooling"))
                .isLessThan(together.servedWhByUse().get("cooling"));
        assertThat(shed.unservedWhByUse().get("cooling"))
                .isGreaterThan(together.unservedWhByUse().get("cooling"));
    }

    /** A lower cut-out never shortens the days to empty, and a larger bank does not either (physics). */
    @ParameterizedTest
    @CsvSource({"lithium iron phosphate 12 V", "lead-acid AGM 12 V"})
    void lowerCutOutAndLargerBankLastNoShorter(String preset) {
        Van van = new Van()
                .with("battery.preset", preset)
                .load("fan", "4 A", "always")
                .with("trip.reserve", "25 %")
                .with("battery.reconnect", "60 %");
        double days = van.with("battery.cut-out", "30 %").run(Van.dark(22)).daysToEmpty();
        double lower = van.with("battery.cut-out", "15 %").run(Van.dark(22)).daysToEmpty();
        double larger = van.with("battery.capacity", "500 Ah").run(Van.dark(22)).daysToEmpty();
        assertThat(days).isNaN();
        assertThat(lower).isPositive();
        assertThat(larger).isGreaterThan(lower);
    }

    private static Van driving() {
        return new Van()
                .with("trip.timetable.all days", DRIVE)
                .with("trip.days", "3")
                .with("battery.start", "30 %")
                .with("second-alternator.preset", "large frame");
    }

    /** An alternator that wants more than a tripping protection lets in: it opens, and no charge gets in. */
    @Test
    void protectionThatTripsOpensUnderCharge() {
        Van van = driving().with("battery.charge-limit", "60 A");
        RunResult held = van.run(Van.dark(25));
        RunResult trips = van.with("battery.over-current", "trips").run(Van.dark(25));
        String kind = "protection opens under charge from the alternator";
        assertThat(finding(held, kind)).isEmpty();
        assertThat(finding(trips, kind)).isPresent();
        assertThat(finding(trips, kind).orElseThrow().severity()).isEqualTo(Finding.Severity.CAUTION);
        assertThat(trips.energy().wh(Account.SECOND_ALTERNATOR))
                .isLessThan(0.5 * held.energy().wh(Account.SECOND_ALTERNATOR));
    }

    /** A bank that its own losses warm beyond its limit opens while the alternator charges. */
    @Test
    void protectionThatOpensInTheHeatIsTold() {
        RunResult result = driving()
                .with("battery.charge-hot", "46 °C")
                .with("battery.resistance", "8 mΩ")
                .with("battery.heat-conductance", "1 W/K")
                .with("battery.heat-capacity", "20 kJ/K")
                .run(Van.dark(38));
        assertThat(finding(result, "protection opens under charge from the alternator"))
                .isPresent();
        assertThat(finding(result, "charging refused: bank too hot")).isPresent();
    }

    /** Four strings on poor links: the nearest is at its limit first, the bank takes less, and the run says so. */
    @Test
    void unevenStringsLimitTheBank() {
        Van van = driving().with("battery.charge-limit", "60 A").with("trip.days", "1");
        RunResult even = van.run(Van.dark(25));
        RunResult uneven =
                van.with("battery.strings", "4").with("battery.link", "2 mΩ").run(Van.dark(25));
        assertThat(finding(uneven, "nearest string of the bank at its limit")).isPresent();
        assertThat(finding(even, "nearest string of the bank at its limit")).isEmpty();
        assertThat(uneven.energy().wh(Account.SECOND_ALTERNATOR))
                .isLessThan(0.95 * even.energy().wh(Account.SECOND_ALTERNATOR));
    }

    /** Lead-acid takes its last fifth slowly: after the same drive it has less than lithium (common practice). */
    @Test
    void leadAcidTakesLessOnADrive() {
        Van van = driving().with("battery.start", "75 %").with("trip.days", "1");
        RunResult lithium = van.run(Van.dark(25));
        RunResult lead = van.with("battery.preset", "lead-acid AGM 12 V").run(Van.dark(25));
        assertThat(lithium.days().get(0).endSoc()).isGreaterThan(0.97);
        assertThat(lead.days().get(0).endSoc()).isBetween(0.80, 0.97);
        assertThat(lead.ageing().yearLoss()).isNaN();
    }

    /** Halving the step moves the day's energies by less than 0.1 % (the model's own promise), for lead-acid as well. */
    @Test
    void halvedStepHardlyMovesLeadAcid() {
        Van van = driving()
                .with("battery.preset", "lead-acid AGM 12 V")
                .with("trip.days", "5")
                .load("fan", "8 A", "always");
        RunResult minute = Simulator.run(van.plan(Van.dark(25), 60));
        RunResult half = Simulator.run(van.plan(Van.dark(25), 30));
        double wh = minute.energy().wh(Account.SECOND_ALTERNATOR);
        assertThat(half.energy().wh(Account.SECOND_ALTERNATOR)).isCloseTo(wh, within(0.001 * wh));
    }

    /** Heat and a full bank age it faster (Naumann 2018, Wang 2011: both rise with temperature). */
    @Test
    void heatAges() {
        Van van = new Van().load("fan", "2 A", "always");
        double mild = van.run(Van.dark(15)).ageing().tripLoss();
        RunResult hot = van.run(Van.dark(35));
        assertThat(hot.ageing().tripLoss()).isGreaterThan(1.2 * mild);
        assertThat(hot.ageing().yearLoss())
                .isGreaterThan(hot.ageing().tripLoss())
                .isLessThan(36.5 * hot.ageing().tripLoss());
        assertThat(hot.ageing().yearLossByUse()).isBetween(0.0, hot.ageing().yearLoss());
    }

    /** A bank whose charge the cold puts out of reach is empty, although its reserve is lower (25 % at -6 °C; 10 %). */
    @Test
    void coldBankIsEmptyBeforeItsReserve() {
        Van van = new Van()
                .with("trip.reserve", "10 %")
                .with("trip.days", "3")
                .with("battery.heat-conductance", "1000 W/K")
                .load("fan", "10 A", "always");
        RunResult frost = van.run(Van.dark(-6.25));
        RunResult mild = van.run(Van.dark(25));
        assertThat(frost.daysToEmpty()).isCloseTo(mild.daysToEmpty() * 0.75 / 0.9, within(0.02));
        assertThat(frost.lowestSoc()).isBetween(0.23, 0.25);
    }
}
