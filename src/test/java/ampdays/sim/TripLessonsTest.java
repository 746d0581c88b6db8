package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.DayTotals;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The kernel in numbered lessons, continued from {@link SupplyLessonsTest}. This part: living in the van, the clock and the
 * verdict. Source where none is named: identities and the definitions of docs/MODEL.md, worked in the comment.
 */
class TripLessonsTest {
    private static Van sleepingDaysAndNights(String speed) {
        return new Van()
                .with("trip.timetable.all days", "00:00 park shade, asleep")
                .with("trip.days", "2")
                .with("cabin.set.asleep", "24 °C")
                .with("cooling.preset", speed)
                .with("battery.capacity", "20000 Ah");
    }

    /**
     * 22. A fixed-speed cooler that cannot cope runs all the time, and the cabin floats above what is wanted: the input is
     * the same from minute to minute, and five kelvin more outside (both above 46.11 °C, where the curves end, so the
     * machine sees no difference) are met by a warmer cabin, not by more input than the drier, warmer coil explains.
     */
    @Test
    void lesson22CoolingSaturatesAndTheCabinFloats() {
        List<double[]> at48 = coolingAndCabin("fixed-speed roof unit", 48);
        List<double[]> at53 = coolingAndCabin("fixed-speed roof unit", 53);
        for (List<double[]> run : List.of(at48, at53)) {
            double[] hourBefore = run.get(run.size() - 61);
            double[] last = run.get(run.size() - 1);
            assertThat(last[0]).isCloseTo(hourBefore[0], within(1e-3 * last[0]));
            assertThat(last[1]).isCloseTo(hourBefore[1], within(0.02)).isGreaterThan(25);
        }
        double warmerK = at53.get(2879)[1] - at48.get(2879)[1];
        assertThat(warmerK).isBetween(1.0, 5.0);
    }

    /** 23. One that copes holds what is wanted: variable speed exactly, fixed speed within its band of 2 K. */
    @Test
    void lesson23CoolingHolds() {
        List<double[]> variable = coolingAndCabin("variable-speed roof unit", 33);
        assertThat(variable.get(2879)[1]).isCloseTo(24, within(1e-6));
        List<double[]> fixed = coolingAndCabin("fixed-speed roof unit", 33);
        assertThat(fixed.subList(1440, 2880)).allMatch(minute -> minute[1] > 22.5 && minute[1] < 25.5);
        assertThat(fixed.subList(1440, 2880)).anyMatch(minute -> minute[0] == 0);
    }

    private static List<double[]> coolingAndCabin(String preset, double outsideC) {
        List<double[]> minutes = new ArrayList<>();
        sleepingDaysAndNights(preset)
                .run(Van.dark(outsideC), (m, state) -> minutes.add(new double[] {m.coolingW, state.cabin.airC()}));
        return minutes;
    }

    /**
     * 24. Five days that begin and end in the middle of a night have four whole nights; the half ones count neither as
     * nights nor as comfortable. At 20 °C outside all are in the band of 15 to 26 °C, at 32 °C without cooling none is.
     */
    @ParameterizedTest
    @CsvSource({"20, 4", "32, 0"})
    void lesson24Nights(double outsideC, int comfortable) {
        RunResult run = new Van()
                .with("trip.days", "5")
                .with("trip.timetable.all days", "06:00 park open, away\n22:00 park open, asleep")
                .run(Van.dark(outsideC));
        assertThat(run.nights()).isEqualTo(4);
        assertThat(run.comfortableNights()).isEqualTo(comfortable);
    }

    /** 25. Eight hours are 480 minutes: 24 of them, 5 %, may be out of the band, 25 may not. */
    @ParameterizedTest
    @CsvSource({"24, 1", "25, 0"})
    void lesson25AlmostTheWholeNight(int minutesTooWarm, int comfortable) {
        Nights nights = new Nights(15, 26);
        nights.step(0, false, 22);
        for (int minute = 0; minute < 480; minute++) {
            nights.step(1 + minute, true, minute < minutesTooWarm ? 27 : 22);
        }
        nights.step(481, false, 22);
        assertThat(nights.nights()).isEqualTo(1);
        assertThat(nights.comfortable()).isEqualTo(comfortable);
    }

    /** Weather that says its hour of UTC: 16 °C in the middle of the hour from 16:00. */
    private static final WeatherSeries HOUR_AS_TEMPERATURE = Van.darkYear(hour -> hour, 0);

    /**
     * 26. New York's clocks go forward on 9 March and back on 2 November 2025 (US law; zone data of the Java runtime): 23
     * and 25 hours. What hangs on the clock on the wall keeps its hour of that day; half past noon is 16:30 UTC in summer
     * and 17:30 UTC in winter, and the weather follows.
     */
    @ParameterizedTest
    @CsvSource({"2025-03-08, 1380, 17, 16", "2025-11-01, 1500, 16, 17"})
    void lesson26ClocksChange(String start, int minutes, double dayBeforeC, double sameDayC) {
        Van van = new Van()
                .with("place.zone", "America/New_York")
                .with("trip.start", start)
                .with("trip.days", "3")
                .load("lamp", "60 W", "06:00-07:00")
                .load("router", "10 W", "always");
        RunPlan plan = van.plan(HOUR_AS_TEMPERATURE);
        List<DayTotals> days = van.run(HOUR_AS_TEMPERATURE).days();
        assertThat(days).extracting(DayTotals::steps).containsExactly(1440, minutes, 1440);
        assertThat(days.get(1).energy().wh(Account.LOADS)).isCloseTo(60 + minutes / 6.0, within(1e-6));
        assertThat(noonAirC(plan, 0)).isCloseTo(dayBeforeC, within(0.01));
        assertThat(noonAirC(plan, 1)).isCloseTo(sameDayC, within(0.01));
    }

    /** Outside air in the step that begins at 12:30 by the clock on the wall; its middle is half a minute later. */
    private static double noonAirC(RunPlan plan, int day) {
        TripClock clock = plan.clock();
        int step = clock.firstStepOfDay(day);
        while (clock.minuteOfDay(step) != 12 * 60 + 30) {
            step++;
        }
        return plan.sky().weather().airC(step);
    }

    /**
     * 27. A zone with a half hour: 12:30 in Kolkata is 07:00 UTC, halfway between the middles of two hours of a file that
     * goes by UTC, and the middle of the hour from 12:00 in a file that goes by local time.
     */
    @Test
    void lesson27HalfHourZone() {
        Van van = new Van().with("place.zone", "Asia/Kolkata").with("place.longitude", "82.5°");
        assertThat(noonAirC(van.plan(HOUR_AS_TEMPERATURE), 1)).isCloseTo(6.5, within(0.01));
        WeatherSeries byLocalTime = Van.darkYear(hour -> hour, 5.5);
        assertThat(noonAirC(van.plan(byLocalTime), 1)).isCloseTo(12, within(0.01));
    }

    /** 28. 5 A are 120 Ah a day, 3 % of 4,000 Ah: after ten days not empty, but falling by 3 % a day. */
    @Test
    void lesson28Falling() {
        RunResult run = new Van()
                .lossless()
                .with("battery.capacity", "4000 Ah")
                .load("lamp", "5 A", "always")
                .run(Van.dark(25));
        assertThat(run.daysToEmpty()).isNaN();
        assertThat(run.holds()).isFalse();
        assertThat(run.trendPerDay()).isCloseTo(-0.03, within(1e-9));
    }

    /** 29. 0.1 % a day down from half is level enough to hold (the line is 0.2 %), 0.3 % a day is not. */
    @ParameterizedTest
    @CsvSource({"0.1, true", "0.3, false"})
    void lesson29LevelEnough(double percentADay, boolean holds) {
        RunResult run = new Van()
                .lossless()
                .with("battery.capacity", "2400 Ah")
                .with("battery.start", "50 %")
                .load("lamp", percentADay + " A", "always")
                .run(Van.dark(25));
        assertThat(run.trendPerDay()).isCloseTo(-percentADay / 100, within(1e-9));
        assertThat(run.holds()).isEqualTo(holds);
    }

    /**
     * 30. Full every second night holds, whatever the slope at the end. Once empty never holds, although the hook-up fills
     * the bank the same day: 400 Ah at 25 A reach 20 % in 12.8 hours.
     */
    @Test
    void lesson30FullLatelyHoldsUnlessItWasEmpty() {
        Van van = new Van()
                .lossless()
                .with("trip.all days", "1, 3, 5, 7, 9")
                .with("trip.filling days", "others")
                .with("trip.timetable.all days", "00:00 park open, away")
                .with("trip.timetable.filling days", "00:00 park open hook-up, away")
                .with("shore-charger.preset", "50 A class")
                .load("lamp", "25 A", "00:00-10:00");
        RunResult holding = van.run(Van.dark(25));
        assertThat(holding.daysToEmpty()).isNaN();
        assertThat(holding.holds()).isTrue();
        RunResult emptied = van.load("lamp", "25 A", "00:00-14:00").run(Van.dark(25));
        assertThat(emptied.daysToEmpty()).isCloseTo(12.8 / 24, within(1.0 / 1440 + 1e-9));
        assertThat(emptied.holds()).isFalse();
    }

    /**
     * 31. An inverter of 2,000 W that idles at 20 W and loses 5 % and a further 6 % at its rating: 200 W at the outlet cost
     * 20 + 0.05 · 200 + 0.06 · 200²/2000 = 31.2 W, 748.8 Wh a day. Running only in use, three hours of it are
     * 93.6 Wh.
     */
    @ParameterizedTest
    @CsvSource({"always, always, 748.8", "in use, 09:00-12:00, 93.6"})
    void lesson31InverterLoss(String running, String when, double lossWh) {
        RunResult run = new Van()
                .with("trip.days", "1")
                .with("battery.capacity", "4000 Ah")
                .with("inverter.preset", "2,000 W class")
                .with("inverter.running", running)
                .load("heater", "200 W", when)
                .with("loads.heater.on", "inverter")
                .run(Van.dark(25));
        assertThat(run.energy().wh(Account.INVERTER)).isCloseTo(lossWh, within(1e-6));
    }

    /** 32. While the bank has cut its loads off, what they ask is unserved, and the inverter loses nothing. */
    @Test
    void lesson32UnservedWhenCut() {
        RunResult run = new Van()
                .with("trip.days", "1")
                .with("battery.start", "5 %")
                .with("battery.cut-out", "5 %")
                .with("inverter.preset", "2,000 W class")
                .load("heater", "200 W", "always")
                .with("loads.heater.on", "inverter")
                .load("lamp", "10 W", "always")
                .run(Van.dark(25));
        assertThat(run.unservedWhByUse().get("heater")).isCloseTo(4800, within(1e-6));
        assertThat(run.unservedWhByUse().get("lamp")).isCloseTo(240, within(1e-6));
        assertThat(run.energy().servedWh()).isZero();
        assertThat(run.energy().wh(Account.INVERTER)).isZero();
    }
}
