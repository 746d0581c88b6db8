package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What people of the trade reckon with. Source of every figure here: common practice, no source. Each is met within 10 %
 * from a scenario with steady inputs; a comment says where real physics moves it.
 */
class TradeCasesTest {
    private static final double BUS_V = 13.2;
    private static final String THREE_HOURS = "00:00 park open, away\n10:00 drive highway, away\n13:00 park open, away";

    private static Van withoutCooling() {
        return new Van().load("by day", "10 A", "07:00-19:00").load("by night", "5 A", "19:00-07:00");
    }

    /** 10 A by day and 5 A by night, twelve hours each, is 180 Ah a day. */
    @Test
    void loadsByDayAndNight() {
        RunResult result = withoutCooling().with("battery.capacity", "4000 Ah").run(Van.dark(20));
        assertThat(Van.dischargedAhPerDay(result, 4000)).isCloseTo(180, within(18.0));
    }

    /**
     * 200 W of flat panel in six good sun hours bring about 90 Ah. That is the nameplate times six; here cool air, wind
     * and clean panels come near it, before the controller. In desert heat, with dust and losses, 60 to 75 Ah are left.
     */
    @Test
    void solarInSixGoodSunHours() {
        RunResult result = new Van()
                .with("solar.power", "200 W")
                .with("solar.dirt", "0 %")
                .with("solar.mismatch", "0 %")
                .with("solar.wiring", "0 %")
                .with("battery.start", "30 %")
                .with("battery.capacity", "2000 Ah")
                .run(sixSunHours(12, 10));
        double ampHours = result.energy().wh(Account.SOLAR) / BUS_V;
        assertThat(ampHours / result.tripDays()).isCloseTo(90, within(9.0));
    }

    private static WeatherSeries sixSunHours(double airC, double windMs) {
        return Van.weather(hour -> airC, hour -> hour >= 9 && hour < 15 ? 1000 : 0, windMs);
    }

    /** A factory alternator held to 30 A brings 90 Ah in three hours of driving. */
    @Test
    void factoryAlternatorInThreeHours() {
        RunResult result = driving("30 A").run(Van.dark(25));
        double ampHours = (result.energy().wh(Account.FACTORY_ALTERNATOR)
                        - result.energy().wh(Account.FACTORY_CHARGER))
                / 13.4;
        assertThat(ampHours / result.tripDays()).isCloseTo(90, within(9.0));
    }

    private static Van driving(String charger) {
        return new Van()
                .with("trip.timetable.all days", THREE_HOURS)
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", charger)
                .with("battery.capacity", "2000 Ah")
                .with("battery.start", "30 %");
    }

    /** So a van without cooling about balances and goes a week on 200 to 400 Ah. */
    @ParameterizedTest
    @CsvSource({"200 Ah", "300 Ah", "400 Ah"})
    void vanWithoutCoolingGoesAWeek(String capacity) {
        RunResult result = withoutCooling()
                .with("trip.timetable.all days", THREE_HOURS)
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "30 A")
                .with("solar.power", "220 W")
                .with("solar.dirt", "0 %")
                .with("battery.capacity", capacity)
                .with("trip.reserve", "5 %")
                .run(sixSunHours(20, 5));
        assertThat(Double.isNaN(result.daysToEmpty()) || result.daysToEmpty() >= 7)
                .isTrue();
    }

    private static Van cooledSixHours() {
        return withoutCooling()
                .with(
                        "trip.timetable.all days",
                        "00:00 park open, away\n12:00 park open, asleep\n18:00 park open, away")
                .with("cabin.set.asleep", "24 °C")
                .with("cabin.people", "2")
                .with("trip.days", "5")
                .with("cooling.preset", "variable-speed roof unit")
                .with("battery.capacity", "4000 Ah");
    }

    /** A 12 V air conditioner draws 30 to 60 A, depending on how hot it is outside. */
    @ParameterizedTest
    @CsvSource({"36", "39", "42"})
    void airConditionerDraws(double outsideC) {
        double amps = coolingAhPerDay(cooledSixHours().run(Van.dark(outsideC))) / 6;
        assertThat(amps).isBetween(0.9 * 30, 1.1 * 60);
    }

    private static double coolingAhPerDay(RunResult result) {
        return result.energy().wh(Account.COOLING) / BUS_V / result.tripDays();
    }

    /**
     * 45 to 50 A on average; six hours add about 300 Ah, 480 to 500 Ah in all. The average holds at some 38 °C outside; on
     * a mild night it is a third of that.
     */
    @Test
    void sixHoursOfCooling() {
        RunResult result = cooledSixHours().run(Van.dark(38));
        assertThat(coolingAhPerDay(result)).isCloseTo(290, within(29.0));
        assertThat(Van.dischargedAhPerDay(result, 4000)).isCloseTo(490, within(49.0));
    }

    private static Van cooledNight(String capacity) {
        return cooledSixHours()
                .with("trip.timetable.all days", "00:00 park open, asleep")
                .with("trip.reserve", "10 %")
                .with("battery.capacity", capacity);
    }

    /**
     * Nine hours of a warm to hot night take 120 to 270 Ah, with the fan and small things of a sleeping van beside the air
     * conditioner.
     */
    @ParameterizedTest
    @CsvSource({"30", "32", "34"})
    void aNightOfCooling(double outsideC) {
        double ampHours = 9
                / 24.0
                * coolingAhPerDay(cooledNight("4000 Ah").with("trip.days", "1").run(Van.dark(outsideC)));
        assertThat(ampHours).isBetween(120.0, 270.0);
    }

    /** 100 Ah more lithium, of which 85 to 95 Ah can be used, once, are three to five hours more of a night's cooling. */
    @ParameterizedTest
    @CsvSource({"30", "32"})
    void moreBankIsHoursOfCoolingOnce(double outsideC) {
        RunResult less = cooledNight("200 Ah").run(Van.dark(outsideC));
        RunResult more = cooledNight("300 Ah").run(Van.dark(outsideC));
        double hours = 24 * (more.daysToEmpty() - less.daysToEmpty());
        assertThat(hours).isBetween(3.0, 5.0);
    }

    /** Against 180 Ah of supply that is about 300 Ah a day short. */
    @Test
    void shortWithCooling() {
        RunResult result = cooledSixHours()
                .with(
                        "trip.timetable.all days",
                        "00:00 park open, away\n08:00 drive highway, away\n11:00 park open, away\n"
                                + "12:00 park open, asleep\n18:00 park open, away")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "30 A")
                .with("solar.power", "220 W")
                .with("solar.dirt", "0 %")
                .run(Van.weather(h -> 35, h -> h >= 9 && h < 15 ? 1000 : 0));
        double shortAh = -result.energy().wh(Account.STORED) / BUS_V / result.tripDays();
        assertThat(shortAh).isCloseTo(300, within(45.0));
    }

    private static Van secondAlternator(String timetable) {
        return new Van()
                .with("trip.timetable.all days", timetable)
                .with("trip.days", "3")
                .with("second-alternator.preset", "large frame")
                .with("battery.capacity", "3000 Ah")
                .with("battery.start", "25 %");
    }

    private static double secondAhPerDay(RunResult result) {
        return (result.energy().wh(Account.SECOND_ALTERNATOR) - result.energy().wh(Account.ALTERNATOR_CABLE))
                / 13.4
                / result.tripDays();
    }

    /** A second alternator of the 280 A class gives over 100 A at idle. At 45 °C outside its own heat takes more. */
    @Test
    void secondAlternatorAtIdle() {
        RunResult result = secondAlternator("00:00 park open, away\n10:00 idle, away\n12:00 park open, away")
                .run(Van.dark(30));
        assertThat(secondAhPerDay(result) / 2).isBetween(100.0, 130.0);
    }

    /** And near 200 A on the road, held by its regulator. */
    @Test
    void secondAlternatorOnTheRoad() {
        RunResult result = secondAlternator("00:00 park open, away\n10:00 drive highway, away\n12:00 park open, away")
                .run(Van.dark(30));
        assertThat(secondAhPerDay(result) / 2).isCloseTo(200, within(20.0));
    }

    private static final String HALF_IDLE_HALF_ROAD =
            "00:00 park open, away\n09:00 idle, away\n10:50 drive highway, away\n"
                    + "12:00 park open, asleep\n18:00 park open, away";

    /** 400 to 450 Ah in three hours, part idle and part road. */
    @Test
    void secondAlternatorInThreeHours() {
        RunResult result = secondAlternator(HALF_IDLE_HALF_ROAD).run(Van.dark(30));
        assertThat(secondAhPerDay(result)).isCloseTo(425, within(42.5));
    }

    private static double oneHour(Van van, double outsideC) {
        return secondAhPerDay(van.run(Van.dark(outsideC)));
    }

    /**
     * An hour at hot idle brings 60 to 110 Ah with a second alternator; here 35 to 45 °C outside, with the half minute of delay
     * and the cold first minutes in it.
     */
    @ParameterizedTest
    @CsvSource({"large frame, 40", "large frame, 45", "medium frame, 35", "medium frame, 45"})
    void anHourOfHotIdle(String preset, double outsideC) {
        Van van = secondAlternator("00:00 park open, away\n10:00 idle, away\n11:00 park open, away")
                .with("second-alternator.preset", preset);
        assertThat(oneHour(van, outsideC)).isBetween(60.0, 1.1 * 110);
    }

    /** An hour on the road with a hot 280 A machine that its regulator spares, at 60 to 70 % of 210 A, brings 120 to 150 Ah. */
    @ParameterizedTest
    @CsvSource({"126 A", "147 A"})
    void anHourOnTheRoadSpared(String cap) {
        Van van = secondAlternator("00:00 park open, away\n10:00 drive highway, away\n11:00 park open, away")
                .with("second-alternator.cap", cap);
        assertThat(oneHour(van, 35)).isBetween(120.0, 150.0);
    }

    /** An hour of driving with a charger of 50 A brings 45 to 50 Ah. */
    @Test
    void anHourBehindACharger() {
        RunResult result = driving("50 A")
                .with(
                        "trip.timetable.all days",
                        "00:00 park open, away\n10:00 drive highway, away\n11:00 park open, away")
                .run(Van.dark(25));
        double wh =
                result.energy().wh(Account.FACTORY_ALTERNATOR) - result.energy().wh(Account.FACTORY_CHARGER);
        assertThat(wh / 13.4 / result.tripDays()).isBetween(45.0, 50.0);
    }

    /** With it the van with cooling goes on indefinitely. */
    @Test
    void withTheSecondAlternatorTheVanGoesOn() {
        RunResult result = cooledSixHours()
                .with("trip.timetable.all days", HALF_IDLE_HALF_ROAD)
                .with("second-alternator.preset", "large frame")
                .with("solar.power", "220 W")
                .with("battery.capacity", "800 Ah")
                .with("trip.days", "30")
                .run(Van.weather(h -> 38, h -> h >= 9 && h < 15 ? 1000 : 0));
        assertThat(result.holds()).isTrue();
    }

    private static Van appliances() {
        return new Van()
                .with("trip.days", "2")
                .with("trip.timetable.all days", "00:00 park shade, asleep\n08:00 park shade, awake")
                .with("refrigerator.preset", "90 L compressor")
                .with("battery.capacity", "800 Ah")
                .load("roof fan", "3 A", "always")
                .load("lights", "1.5 A", "always")
                .load("pump", "4 A", "always")
                .load("telephones, router, monitors", "50 W", "always");
    }

    /**
     * A refrigerator of some 90 L takes 3 to 4 A while it runs, and runs half the time or less in a cabin of 25 to 30 °C.
     * The compressor runs a minute whole, or not at all, or switches within it; the whole ones show the current.
     */
    @ParameterizedTest
    @CsvSource({"25", "30"})
    void refrigerator(double cabinC) {
        double[] mostAAndAmpMinutes = new double[2];
        double[] cabinSumC = new double[1];
        RunPlan plan = new Van()
                .with("trip.days", "2")
                .with("trip.timetable.all days", "00:00 park shade, asleep\n08:00 park shade, awake")
                .with("refrigerator.preset", "90 L compressor")
                .plan(Van.dark(cabinC - 2));
        RunResult run = Simulator.run(plan, (m, state) -> {
            double amps = m.refrigeratorW / m.busV;
            mostAAndAmpMinutes[0] = amps > mostAAndAmpMinutes[0] ? amps : mostAAndAmpMinutes[0];
            mostAAndAmpMinutes[1] += amps;
            cabinSumC[0] += state.cabin.airC();
        });
        assertThat(cabinSumC[0] / run.steps()).isCloseTo(cabinC, within(1.5));
        assertThat(mostAAndAmpMinutes[0]).isBetween(3.0, 4.0);
        assertThat(mostAAndAmpMinutes[1] / run.steps()).isLessThan(mostAAndAmpMinutes[0] / 2);
    }

    private static double mostDischargeA(Van van, double outsideC) {
        double[] mostA = new double[1];
        van.run(Van.dark(outsideC), (m, state) -> mostA[0] = -m.bankA > mostA[0] ? -m.bankA : mostA[0]);
        return mostA[0];
    }

    /** A fan of 3 A, lights of 1 to 2, a pump of 4, a refrigerator and small things: together 15 to 20 A. */
    @Test
    void everythingWithoutCooling() {
        assertThat(mostDischargeA(appliances(), 28)).isBetween(15.0, 20.0);
    }

    /** With cooling at full blast 65 to 90 A, depending on how hot it is outside. */
    @ParameterizedTest
    @CsvSource({"36", "40", "44"})
    void everythingWithCooling(double outsideC) {
        Van van = appliances()
                .with("cooling.preset", "variable-speed roof unit")
                .with("cabin.set.asleep", "20 °C")
                .with("cabin.set.awake", "20 °C");
        assertThat(mostDischargeA(van, outsideC)).isBetween(65.0, 90.0);
    }
}
