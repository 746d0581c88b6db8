package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.cooling.CoolingCurves;
import ampdays.results.Account;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The cabin against what was measured on vehicles. Where a study and the model disagree, a comment says by how much. The
 * sun of an equinox at 15° and 11° of latitude stands as high at noon as in July at 37° and 33°.
 */
class CabinStudiesTest {
    /** A dark passenger car: thin lining, much glass, little mass; its slanted glass as 4.5 m² of upright glass. */
    private static Van car(int absorptancePercent) {
        return new Van()
                .with("place.latitude", "15°")
                .with("trip.days", "1")
                .with("cabin.roof", "2.2 m²")
                .with("cabin.walls", "6 m²")
                .with("cabin.floor", "3.5 m²")
                .with("cabin.glass", "4.5 m²")
                .with("cabin.volume", "3 m³")
                .with("cabin.insulation", "12 mm")
                .with("cabin.bridges", "0.5 W/(m² K)")
                .with("cabin.floor-transmittance", "3 W/(m² K)")
                .with("cabin.glass-transmittance", "5 W/(m² K)")
                .with("cabin.glass-solar", "80 %")
                .with("cabin.solar-to-air", "22 %")
                .with("cabin.air-capacity", "36 kJ/K")
                .with("cabin.mass-capacity", "60 kJ/K")
                .with("cabin.air-to-mass", "60 W/K")
                .with("cabin.absorptance", absorptancePercent + " %");
    }

    /** Rise of the air after some minutes in 900 W/m², from the temperature outside. */
    private static double riseK(Van van, double outsideC, int minutes) {
        WeatherSeries weather = Van.weather(h -> outsideC, h -> h >= 11 && h < 16 ? 900 : 0, 2);
        MinuteLog log = Simulator.record(van.plan(weather), 659, 659 + minutes + 1);
        return log.get(Channel.CABIN_AIR, minutes) - log.get(Channel.CABIN_AIR, 0);
    }

    /**
     * Source: C. McLaren, J. Null and J. Quinn, 2005, Pediatrics 116, e109 (22 K in an hour, most of it in half of it, the
     * same whatever the temperature outside); A. Grundstein, J. Dowd and V. Meentemeyer, 2010, BAMS 91, 1183 (at most 7, 16
     * and 26 K in 10, 30 and 60 min). Band of both: 8 to 13, 14 to 20, 19 to 27 K.
     */
    @ParameterizedTest
    @ValueSource(doubles = {22, 28, 36})
    void soakOfAGlazedCab(double outsideC) {
        assertThat(riseK(car(85), outsideC, 10)).isBetween(8.0, 13.0);
        assertThat(riseK(car(85), outsideC, 30)).isBetween(14.0, 20.0);
        assertThat(riseK(car(85), outsideC, 60)).isBetween(19.0, 27.0);
        assertThat(riseK(car(85), outsideC, 60)).isCloseTo(riseK(car(85), 30, 60), within(0.01));
    }

    /**
     * Source: R. Levinson et al., 2011, Applied Energy 88, 4343: 0.5 more reflectance left the soaked air 5 to 6 K cooler.
     * After an hour the model agrees; after three it says 7.5 K, 1.5 K more than the study.
     */
    @Test
    void silverAgainstBlackShell() {
        assertThat(riseK(car(95), 32, 60) - riseK(car(45), 32, 60)).isBetween(5.0, 6.0);
        assertThat(riseK(car(95), 32, 180) - riseK(car(45), 32, 180)).isBetween(6.0, 8.0);
    }

    private static Van sleeper() {
        return new Van()
                .with("place.latitude", "11°")
                .with("trip.days", "5")
                .with("cabin.roof", "5 m²")
                .with("cabin.walls", "13 m²")
                .with("cabin.floor", "5 m²")
                .with("cabin.glass", "4 m²")
                .with("cabin.volume", "10 m³")
                .with("cabin.insulation", "7 mm")
                .with("cabin.floor-transmittance", "1.2 W/(m² K)")
                .with("cabin.absorptance", "45 %")
                .with("cabin.people", "0")
                .with("cabin.set.away", "22 °C")
                .with("cooling.preset", "fixed-speed roof unit")
                .with("cooling.capacity", "5 kW")
                .with("battery.capacity", "9000 Ah");
    }

    private static double coolingWh(Van van, double nightC, double dayC) {
        WeatherSeries weather = Van.weather(h -> nightC + (dayC - nightC) * byDay(h - 8), h -> 900 * byDay(h - 6), 3);
        return van.run(weather).energy().wh(Account.COOLING);
    }

    private static double byDay(double hours) {
        double sine = Math.sin(hours * Math.PI / 12);
        return hours > 0 && sine > 0 ? sine : 0;
    }

    /**
     * Source: NREL/CP-540-43402, 2008, truck sleepers: insulated window covers took 34 % off the cooling load. The model says
     * 30 % on a day of 22 to 30 °C and 24 % on one of 28 to 35 °C: the hotter the air, the less of the load is sun on glass.
     * The study states no uncertainty; 10 points are allowed.
     */
    @Test
    void windowCoversOfASleeper() {
        double share =
                coolingWh(sleeper().with("cabin.covers", "insulated"), 22, 30) / coolingWh(sleeper(), 22, 30) - 1;
        assertThat(share).isCloseTo(-0.34, within(0.10));
    }

    /**
     * Source: the same: doubled insulation took 35 % off. The model says 10 to 12 %: films inside and out, glass and floor
     * stay as they are, and foam of R 1.1 (US) doubled lowers a wall's transmittance by 34 % at most. The study changed more
     * than foam, or its shell was all of the load; the model is not bent to meet it.
     */
    @Test
    void doubledInsulationOfASleeper() {
        double share =
                coolingWh(sleeper().with("cabin.insulation", "14 mm"), 22, 30) / coolingWh(sleeper(), 22, 30) - 1;
        assertThat(share).isBetween(-0.35, -0.08);
    }

    /**
     * Source: NREL, as quoted by an industry body: black needs 26.2 % more cooling energy than white on a sunny summer day.
     * The model says 30 % at 28 to 35 °C, 37 to 41 % on cooler days.
     */
    @Test
    void blackAgainstWhite() {
        double share = coolingWh(sleeper().with("cabin.absorptance", "95 %"), 28, 35)
                        / coolingWh(sleeper().with("cabin.absorptance", "30 %"), 28, 35)
                - 1;
        assertThat(share).isCloseTo(0.262, within(0.05));
    }

    /**
     * Source: a maker's figures of a battery cooler, common practice: 554 W at 28 °C, 725 W at 40 °C, 31 % more. At full
     * capacity the curves grow by 13 % only; the rest must be a compressor that turns faster. Held at one temperature in a
     * van the draw grows to four times, because the load grows with it.
     */
    @Test
    void inputGrowsWithTheAirOutside() {
        double growth = input(40) / input(28);
        assertThat(growth).isBetween(1.10, 1.31);
    }

    private static double input(double outdoorC) {
        return CoolingCurves.WINDOW.capacityFactor(19.44, outdoorC) * CoolingCurves.WINDOW.inputFactor(19.44, outdoorC);
    }

    private static Van sleepers(String preset) {
        return new Van()
                .with("place.latitude", "11°")
                .with("trip.days", "4")
                .with(
                        "trip.timetable.all days",
                        "00:00 park open, asleep\n06:00 park open, awake\n21:00 park open, asleep")
                .with("cabin.set.asleep", "24 °C")
                .with("cabin.set.awake", "24 °C")
                .with("cooling.preset", preset)
                .with("battery.capacity", "9000 Ah")
                .load("things", "100 W", "always");
    }

    /** Mean input between two hours of the last day, W. */
    private static double inputW(Van van, double nightC, double dayC, int fromHour, int toHour) {
        WeatherSeries weather = Van.weather(h -> nightC + (dayC - nightC) * byDay(h - 8), h -> 950 * byDay(h - 6), 3);
        MinuteLog log = Simulator.record(van.plan(weather), 3 * 1440, 4 * 1440);
        return log.mean(Channel.COOLING, fromHour * 60, toHour * 60);
    }

    /** Source: common practice, no source: 120 to 270 Ah in nine hours of a hot night. */
    @ParameterizedTest
    @CsvSource({
        "fixed-speed roof unit, 28, 38",
        "fixed-speed roof unit, 32, 42",
        "variable-speed roof unit, 33, 43",
    })
    void nightsOfCooling(String preset, double nightC, double dayC) {
        double ampHours = inputW(sleepers(preset), nightC, dayC, 0, 6) * 9 / 13.2;
        assertThat(ampHours).isBetween(120.0, 270.0);
    }

    /**
     * Source: common practice, no source: duty of a fixed-speed unit in an insulated white van set to 24 °C: night of 22 to
     * 25 °C 15 to 35 %, of 26 to 30 °C 35 to 60 %, full sun from 38 °C 90 to 100 %. The model runs 5 to 15 points less at
     * night: its air is dry, its walls are clean foam. 15 points are allowed.
     */
    @ParameterizedTest
    @CsvSource({
        "25, 36, 0, 15, 35",
        "28, 38, 0, 35, 60",
        "30, 40, 0, 35, 60",
        "28, 39, 13, 90, 100",
        "30, 42, 13, 90, 100"
    })
    void dutyOfAFixedSpeedUnit(double nightC, double dayC, int hour, double least, double most) {
        double outdoorC = hour == 0 ? nightC : dayC;
        double fullW = 2000 / 2.6 * input(outdoorC);
        double duty = 100 * inputW(sleepers("fixed-speed roof unit"), nightC, dayC, hour, hour + 3) / fullW;
        assertThat(duty).isBetween(least - 15, most + 5);
    }
}
