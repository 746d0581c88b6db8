package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.cabin.CabinPhysics;
import ampdays.cabin.CabinSpec;
import ampdays.results.Account;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.sun.AirMass;
import ampdays.sun.ClearSky;
import ampdays.sun.SunPath;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The panels as part of a run: three days under a clear sky (Ineichen and Perez), bank large and half empty. */
class RoofTest {
    private static final int DAYS = 3;
    private static final int STEP_S = 300;
    private static final double BUS_V = 13.2;

    private static Van van(double latitudeDeg, String start) {
        return new Van()
                .with("place.latitude", latitudeDeg + "°")
                .with("trip.start", start)
                .with("trip.days", "" + DAYS)
                .with("battery.capacity", "5000 Ah")
                .with("battery.start", "50 %")
                .with("solar.power", "100 W");
    }

    private static Van july() {
        return van(33.4, "2025-07-14");
    }

    /** Clear days at longitude 0 and sea level, warmest in the afternoon. */
    private static WeatherSeries clear(double latitudeDeg, String start, double turbidity, double meanC) {
        long begin = LocalDate.parse(start).toEpochDay() * 86_400;
        int rows = DAYS * 86_400 / STEP_S;
        SunPath sun = SunPath.of(latitudeDeg, 0, 0, begin, STEP_S, rows);
        double[][] columns = new double[7][rows];
        for (int i = 0; i < rows; i++) {
            double cosZenith = sun.cosZenith(i);
            if (cosZenith > 0) {
                double airMass = AirMass.kastenYoung(Math.toDegrees(Math.acos(cosZenith)));
                double extraWm2 = sun.extraterrestrialWm2(i);
                columns[0][i] = ClearSky.ineichenGhiWm2(cosZenith, airMass, turbidity, 0, extraWm2);
                columns[1][i] = ClearSky.ineichenDniWm2(columns[0][i], cosZenith, airMass, turbidity, 0, extraWm2);
                columns[2][i] = columns[0][i] - columns[1][i] * cosZenith;
            }
            double hour = i * STEP_S / 3600.0 % 24;
            columns[3][i] = meanC - 6 * Math.cos(2 * Math.PI * (hour - 4) / 24);
        }
        Arrays.fill(columns[4], 5);
        Arrays.fill(columns[5], 3);
        Arrays.fill(columns[6], 101_325);
        SeriesInfo info = new SeriesInfo("clear", latitudeDeg, 0, 0, 0, begin, STEP_S, false, 0.5, List.of());
        return WeatherSeries.of(
                info, columns[0], columns[1], columns[2], columns[3], columns[4], columns[5], columns[6]);
    }

    private static WeatherSeries hotAndClear() {
        return clear(33.4, "2025-07-14", 4, 35);
    }

    private static double solarWh(Van van) {
        return van.run(hotAndClear()).energy().wh(Account.SOLAR);
    }

    /**
     * 30 to 38 Ah a day per 100 W flat on a hot clear day after heat, wiring and controller; 40 to 50 is the panel's best
     * (common practice, no source). People reckon with six to seven sun hours: a clear day in September has them, and framed
     * panels with a tracking controller are in the first range as well as flexible ones with a pulse-width controller. The
     * longest clear days in the low desert have 7.9 kWh/m², and lie in the second.
     */
    @Test
    void dailyHarvestPer100W() {
        WeatherSeries september = clear(33.4, "2025-09-10", 4, 33);
        Van framed = van(33.4, "2025-09-10").with("solar.preset", "framed panels");
        Van bonded = van(33.4, "2025-09-10")
                .with("solar.preset", "bonded panels")
                .with("solar.controller-type", "pulse-width");
        assertThat(ampHours(framed, september)).isBetween(30.0, 38.0);
        assertThat(ampHours(bonded, september)).isBetween(30.0, 38.0);
        assertThat(ampHours(july().with("solar.preset", "framed panels"), hotAndClear()))
                .isBetween(40.0, 50.0);
    }

    /** At the battery, Ah per day. */
    private static double ampHours(Van van, WeatherSeries weather) {
        return busWh(van.run(weather)) / BUS_V / DAYS;
    }

    private static double busWh(RunResult result) {
        return result.energy().wh(Account.SOLAR) - result.energy().wh(Account.SOLAR_CONTROLLER);
    }

    /** Twice the panel gives twice the energy (identity), until the controller clips it. */
    @Test
    void twiceThePanel() {
        double once = solarWh(july());
        assertThat(solarWh(july().with("solar.power", "200 W"))).isCloseTo(2 * once, within(1e-9 * once));
        RunResult clipped = july().with("solar.power", "200 W")
                .with("solar.controller", "5 A")
                .run(hotAndClear());
        assertThat(clipped.energy().wh(Account.SOLAR)).isLessThan(1.6 * once);
        assertThat(clipped.energy().wh(Account.SOLAR) + clipped.energy().wh(Account.CURTAILED))
                .isCloseTo(2 * once, within(1e-9 * once));
        assertThat(clipped.curtailedWhByCause().get(Limit.SOLAR_CONTROLLER))
                .isCloseTo(clipped.energy().wh(Account.CURTAILED), within(1e-6));
    }

    /**
     * Hemispheres mirror: clear-sky energy on the level at +L on 21 June over that at −L on 21 December is the ratio of the
     * light outside the atmosphere, 0.9353; the reference library gives 0.9351 at 20, 30 and 40 degrees in 2024. Here the
     * panels' own power, cool and without weak-light loss so that heat adds nothing of weight: within 0.2 %, of which heat
     * takes half.
     */
    @ParameterizedTest
    @ValueSource(ints = {20, 30, 40})
    void hemispheresMirror(int latitudeDeg) {
        double north = june(latitudeDeg, "2024-06-20");
        double south = june(-latitudeDeg, "2024-12-20");
        assertThat(north / south).isCloseTo(0.9351, within(0.002));
    }

    private static double june(int latitudeDeg, String start) {
        return van(latitudeDeg, start)
                .with("solar.low-light", "0 %")
                .with("solar.temperature-coefficient", "-0.0001 %/K")
                .run(clear(latitudeDeg, start, 3, 15))
                .energy()
                .wh(Account.SOLAR);
    }

    /** Nothing at night, and never more than nameplate and light allow at the coldest cell (identity). */
    @Test
    void neverMoreThanTheLight() {
        RunPlan plan = july().plan(hotAndClear());
        double wh = 0;
        double sunHours = 0;
        for (int i = 0; i < plan.clock().steps(); i++) {
            if (plan.sky().isDark(i)) {
                assertThat(plan.roof().possibleWPerW(i)).isZero();
            }
            wh += plan.roof().possibleWPerW(i) / 60;
            sunHours += plan.sky().weather().ghiWm2(i) / 1000 / 60;
        }
        double coldestGain = 1 - 0.0035 * (29 - 25);
        assertThat(wh).isBetween(0.5 * sunHours, sunHours * coldestGain);
        assertThat(sunHours / DAYS).isCloseTo(7.85, within(0.2));
    }

    /** Held at the battery, 18 V panels lose against tracking 15 to 30 % when cool, little when hot (common practice, no source). */
    @Test
    void pulseWidthAgainstTracking() {
        assertThat(heldOverTracked("2025-07-14", 35)).isBetween(0.90, 1.0);
        assertThat(heldOverTracked("2025-01-14", 12)).isBetween(0.70, 0.85);
    }

    private static double heldOverTracked(String start, double meanC) {
        WeatherSeries weather = clear(33.4, start, 3, meanC);
        RunResult held =
                van(33.4, start).with("solar.controller-type", "pulse-width").run(weather);
        assertThat(held.energy().curtailedWh()).isZero();
        assertThat(held.energy().residualWh()).isCloseTo(0, within(1e-6));
        return busWh(held) / busWh(van(33.4, start).with("solar.power", "100 W").run(weather));
    }

    /** A 12 V panel brings nothing to a 24 V bank through a pulse-width controller, and a full bank refuses the sun. */
    @Test
    void pulseWidthAtItsEnds() {
        Van tooLow = july().with("battery.cells", "8")
                .with("solar.controller-type", "pulse-width")
                .with("solar.string-voltage", "18 V");
        assertThat(solarWh(tooLow)).isZero();
        RunResult full = july().with("solar.controller-type", "pulse-width")
                .with("battery.capacity", "100 Ah")
                .with("battery.start", "100 %")
                .run(hotAndClear());
        assertThat(full.energy().curtailedWh())
                .isGreaterThan(0.5 * full.energy().wh(Account.SOLAR));
        assertThat(full.energy().residualWh()).isCloseTo(0, within(1e-6));
    }

    /** In winter flat loses 30 to 50 % against the best tilt (common practice, no source). Flat again while driving. */
    @Test
    void tiltInWinter() {
        WeatherSeries winter = clear(33.4, "2025-01-14", 4, 15);
        double flat = van(33.4, "2025-01-14").run(winter).energy().wh(Account.SOLAR);
        Van raised = van(33.4, "2025-01-14").with("solar.tilt", "55°");
        double tilted = raised.run(winter).energy().wh(Account.SOLAR);
        assertThat(1 - flat / tilted).isBetween(0.3, 0.5);
        double driving = raised.with("trip.timetable.all days", "00:00 drive highway, aboard")
                .run(winter)
                .energy()
                .wh(Account.SOLAR);
        assertThat(driving).isCloseTo(flat, within(0.03 * flat));
    }

    /** Rain of 7 mm on the second day of three: 4 % of dirt, 2 % more the next day, then clean. */
    @Test
    void rainWashesThePanels() {
        WeatherSeries dry = hotAndClear();
        double[] rainMm = new double[dry.size()];
        rainMm[dry.size() - 100] = 7;
        Van van = july().with("solar.dirt-a-day", "2 %");
        double clean = solarWh(july().with("solar.dirt", "0 %"));
        double known = van.run(dry.withRain(rainMm)).energy().wh(Account.SOLAR);
        double unknown = van.run(dry).energy().wh(Account.SOLAR);
        assertThat(unknown / clean).isCloseTo(0.96, within(1e-4));
        assertThat(known / clean).isCloseTo((0.96 + 0.94 + 1) / 3, within(0.002));
    }

    /** Half the beam through speckled trees counts a quarter, through even shade half; diffuse light counts as before. */
    @ParameterizedTest
    @CsvSource({"1, 0.5", "2, 0.25", "20, 0"})
    void speckledShade(int patches, double worth) {
        double sun = shaded(patches, "100 %", "100 %");
        double skyOnly = shaded(patches, "0 %", "100 %");
        double part = shaded(patches, "50 %", "100 %");
        assertThat((part - skyOnly) / (sun - skyOnly)).isCloseTo(worth, within(0.06));
    }

    private static double shaded(int patches, String beam, String diffuse) {
        return solarWh(july().with("trip.timetable.all days", "00:00 park part-shade, away")
                .with("shade.part-shade.beam", beam)
                .with("shade.part-shade.diffuse", diffuse)
                .with("solar.low-light", "0 %")
                .with("solar.patches", "" + patches));
    }

    /** A vent whose shadow takes 5 % of the cells with the sun at 45 degrees costs more than its shadow, and less than half. */
    @Test
    void furnitureCostsMoreThanItsShadow() {
        double open = solarWh(july());
        double behindVent = solarWh(july().with("solar.furniture", "5 %"));
        assertThat(behindVent / open).isBetween(0.5, 0.95);
    }

    /** Bonded panels heat the roof beneath, raised ones shade it: the cabin without cooling says so. */
    @Test
    void panelsHeatOrShadeTheRoof() {
        double none = roofHeatWh(july().with("solar", "none"));
        double bonded = roofHeatWh(large().with("solar.mounting", "bonded"));
        double feet = roofHeatWh(large());
        double wide = roofHeatWh(large().with("solar.gap", "100 mm"));
        assertThat(bonded).isGreaterThan(feet);
        assertThat(feet).isGreaterThan(wide);
        assertThat(bonded).isGreaterThan(none);
    }

    /**
     * More panels than the bank can store only cover more roof, and a covered roof loses nothing to the night sky: closed form,
     * with the roof's transmittance U, 0.9 · 68 W/m² of loss and the film of docs/MODEL.md, section 6. Panels that cover no more
     * roof change nothing.
     */
    @Test
    void panelsKeepTheNightSkyOffTheRoof() {
        Van van = van(33.4, "2025-03-20").with("solar.power", "400 W");
        RunPlan few = van.plan(Van.dark(30));
        RunPlan many = van.with("solar.power", "1000 W").plan(Van.dark(30));
        RunPlan dense = van.with("solar.panel-efficiency", "50 %").plan(Van.dark(30));
        CabinSpec cabin = many.variant().design().cabin();
        double uWm2K = CabinPhysics.faceWm2K(cabin);
        double filmWm2K = 5.7 + 3.8 * 2.5;
        double coveredMoreM2 = (1000 - 400) / 200.0;
        assertThat(many.cabin().faceGainW(0) - few.cabin().faceGainW(0))
                .isCloseTo(uWm2K * coveredMoreM2 * 0.9 * 68 / filmWm2K, within(1e-9));
        assertThat(dense.cabin().faceGainW(0)).isCloseTo(few.cabin().faceGainW(0), within(1e-9));
    }

    private static Van large() {
        return july().with("solar.power", "1200 W");
    }

    private static double roofHeatWh(Van van) {
        RunPlan plan = van.plan(hotAndClear());
        double wh = 0;
        for (int i = 0; i < plan.clock().steps(); i++) {
            wh += plan.cabin().faceGainW(i) / 60;
        }
        return wh;
    }
}
