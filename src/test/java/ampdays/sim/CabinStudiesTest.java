package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.cabin.CabinPhysics;
import ampdays.cabin.CabinSpec;
import ampdays.cooling.CoolingCurves;
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
    static Van car(int absorptancePercent) {
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

    /** A truck's cab and sleeper as one room, with a cooler that keeps up. Of the study we know the abstract only. */
    private static Van sleeper() {
        return new Van()
                .with("place.latitude", "11°")
                .with("trip.days", "3")
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
                .with("cooling.preset", "variable-speed roof unit")
                .with("cooling.capacity", "6 kW")
                .with("battery.capacity", "9000 Ah");
    }

    private static double byDay(double hours) {
        double sine = Math.sin(hours * Math.PI / 12);
        return hours > 0 && sine > 0 ? sine : 0;
    }

    /** Sensible heat that the cooler takes out between two hours of the last day, Wh. */
    private static double loadWh(Van van, double nightC, double dayC, int fromHour, int toHour) {
        WeatherSeries weather = Van.weather(h -> nightC + (dayC - nightC) * byDay(h - 8), h -> 900 * byDay(h - 6), 3);
        double[] wh = new double[1];
        van.run(weather, (m, state) -> {
            int minute = m.step - 2 * 1440;
            wh[0] += minute >= fromHour * 60 && minute < toHour * 60 ? state.cooler.sensibleW() / 60 : 0;
        });
        return wh[0];
    }

    /** Load of a rest by day, 8 to 18 o'clock, at 22 to 30 °C. */
    private static double dayRestWh(Van van) {
        return loadWh(van, 22, 30, 8, 18);
    }

    /** Largest rise of the air above 20 °C outside on a sunny day without cooling. */
    private static double solarRiseK(Van van) {
        double[] most = new double[1];
        van.with("cabin.set.away", "off")
                .run(
                        Van.weather(h -> 20, h -> 900 * byDay(h - 6), 3),
                        (m, state) -> most[0] = Math.max(most[0], state.cabin.airC() - 20));
        return most[0];
    }

    /**
     * Source: K. Proc, L. Chaney and E. Sailor, 2008, Thermal load reduction of truck tractor sleeper cabins, NREL/CP-540-43402
     * (SAE 2008-01-2618), abstract. Measured: insulated covers lowered the heat lost at night by 16 % and the warmth by the sun
     * by 8 K. Computed by that study from it: 34 % less load of a rest by day. The model says 21 %, 6.1 K and 34 %: probably
     * a cab that loses less through its shell than the study's. 5 points, 2 K and 4 points are allowed.
     */
    @Test
    void windowCoversOfASleeper() {
        Van covered = sleeper().with("cabin.covers", "insulated");
        double bareWK = toOutsideWK(sleeper());
        assertThat(toOutsideWK(covered) / bareWK - 1).isCloseTo(-0.16, within(0.05));
        double lessK = solarRiseK(sleeper().with("cabin.covers", "insulated")) - solarRiseK(sleeper());
        assertThat(lessK).isCloseTo(-8, within(2.0));
        assertThat(dayRestWh(covered) / dayRestWh(sleeper()) - 1).isCloseTo(-0.34, within(0.04));
    }

    private static double toOutsideWK(Van van) {
        CabinSpec cabin = van.variant().design().cabin();
        boolean covered = cabin.covers().passShare() < 1;
        return CabinPhysics.envelopeWK(cabin, covered)
                + CabinPhysics.airChangesWK(cabin.volumeM3(), cabin.parkedAirChangesPerH(), 1);
    }

    /**
     * Source: the same abstract: doubled insulation would take 35 % off that load, by the study's flow model. Here foam, ribs
     * and floor twice as good, with films and glass as they are, take off 20 %. No heat balance reaches both of the study's
     * figures in one cab: if 34 % are what covers keep out, the rest is at most 66 % of the load, and twice the resistance of
     * all of it, films included, would take off 33 %. The band is that limit and half of it.
     */
    @Test
    void doubledInsulationOfASleeper() {
        double floorWm2K = 1.2;
        double filmsM2KW = 0.13 + 1 / 17.0;
        double doubledFloorWm2K = 1 / (2 / floorWm2K - filmsM2KW);
        Van doubled = sleeper()
                .with("cabin.insulation", "14 mm")
                .with("cabin.bridges", "0.15 W/(m² K)")
                .with("cabin.floor-transmittance", doubledFloorWm2K + " W/(m² K)");
        double share = dayRestWh(doubled) / dayRestWh(sleeper()) - 1;
        assertThat(share).isBetween(-0.33, -0.165);
    }

    /**
     * Source: NREL, as quoted by an industry body: black needs 26.2 % more energy to cool than white on a sunny summer day; the
     * set-up is not told. Black reflects 5 %, white 60 % (R. Levinson et al., 2011, as above). The load in the model is 33 %
     * more on a day of 28 to 35 °C; on one of 22 to 30 °C, on which the sun is more of the load, 42 to 54 %. A cooler at its
     * end lowers that: one of 2 kW in the same cab takes out 13 % more.
     */
    @Test
    void blackAgainstWhite() {
        Van black = sleeper().with("cabin.absorptance", "95 %");
        Van white = sleeper().with("cabin.absorptance", "40 %");
        assertThat(loadWh(black, 28, 35, 0, 24) / loadWh(white, 28, 35, 0, 24) - 1)
                .isCloseTo(0.262, within(0.10));
        Van smallBlack = black.with("cooling.capacity", "2 kW");
        Van smallWhite = white.with("cooling.capacity", "2 kW");
        double small = loadWh(smallBlack, 28, 35, 0, 24) / loadWh(smallWhite, 28, 35, 0, 24) - 1;
        assertThat(small).isBetween(0.10, 0.262);
    }

    /**
     * Source: a maker's figures of a battery cooler: 554 W at 82 °F, 725 W at 104 °F, 31 % more. The published curves at full
     * capacity say 13 % (window unit, the default), 17 % (packaged) and 32 % (split units of one speed); a window unit in the
     * laboratory 20 % (J. Winkler et al., 2013, as carried in public codes: 0.6405 … and 2.287 … below). Machines differ so
     * much; only the split units grow like that cooler.
     */
    @Test
    void inputGrowsWithTheAirOutside() {
        double published = 725.0 / 554;
        assertThat(growth(CoolingCurves.SPLIT)).isCloseTo(published, within(0.02));
        double inLaboratory = laboratoryInput(40) / laboratoryInput(27.78);
        assertThat(inLaboratory).isBetween(growth(CoolingCurves.WINDOW), published);
        assertThat(growth(CoolingCurves.WINDOW)).isCloseTo(inLaboratory, within(0.08));
        assertThat(growth(CoolingCurves.PACKAGED)).isCloseTo(inLaboratory, within(0.04));
    }

    private static double growth(CoolingCurves curves) {
        return input(curves, 40) / input(curves, 27.78);
    }

    private static double input(CoolingCurves curves, double outdoorC) {
        return curves.capacityFactor(19.44, outdoorC) * curves.inputFactor(19.44, outdoorC);
    }

    private static double laboratoryInput(double y) {
        double x = 19.44;
        double capacity =
                0.6405 + 0.01568 * x + 0.0004531 * x * x + 0.001615 * y - 0.0001825 * y * y + 6.614e-5 * x * y;
        double ratio = 2.287 - 0.1732 * x + 0.004745 * x * x + 0.01662 * y + 0.000484 * y * y - 0.001306 * x * y;
        return capacity * ratio;
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
     * 25 °C 15 to 35 %, of 26 to 30 °C 35 to 60 %, full sun from 38 °C 90 to 100 %. The preset runs 5 to 15 points less at
     * night: 15 points are allowed. Humid air adds 1 to 3 points.
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
        double duty = dutyPercent(sleepers("fixed-speed roof unit"), nightC, dayC, hour);
        assertThat(duty).isBetween(least - 15, most + 5);
    }

    /**
     * The same practice. With ribs and gaps as a conversion by hand may have, 106 instead of 66 W/K to outside, the nights of 28
     * and 30 °C are in the band, 36 and 47 %. A night hardly warmer than the cabin asks for 12 to 17 % whatever the shell: there
     * practice must mean more heat indoors than two people and 100 W.
     */
    @ParameterizedTest
    @CsvSource({"28, 38, 35, 60", "30, 40, 35, 60"})
    void dutyInALeakyVan(double nightC, double dayC, double least, double most) {
        Van leaky = sleepers("fixed-speed roof unit")
                .with("cabin.bridges", "1.5 W/(m² K)")
                .with("cabin.air-changes", "2 1/h");
        double duty = dutyPercent(leaky, nightC, dayC, 0);
        assertThat(duty).isBetween(least, most);
    }

    private static double dutyPercent(Van van, double nightC, double dayC, int hour) {
        double fullW = 2000 / 2.6 * input(CoolingCurves.WINDOW, hour == 0 ? nightC : dayC);
        return 100 * inputW(van, nightC, dayC, hour, hour + 3) / fullW;
    }
}
