package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.DayTotals;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What plans of one maker have in common, and what not. Only identity and plain loops are checked; no source is needed. */
class RunPlanTest {
    private static final WeatherSeries WEATHER = Van.weather(hour -> 20 + hour % 17, hour -> hour % 24 > 12 ? 500 : 0);

    private static final WeatherSeries HOT = FullVan.weather();

    private final RunPlan.Maker plans = new RunPlan.Maker(60);

    /** Two timetables have the same sun and weather, but neither roof nor cabin. */
    @Test
    void timetablesShareTheSkyOnly() {
        RunPlan open = plans.plan(van("00:00 park open, away").variant(), WEATHER);
        RunPlan sun = plans.plan(van("00:00 park shade, away").variant(), WEATHER);
        assertThat(sun.sky()).isSameAs(open.sky());
        assertThat(sun.clock()).isNotSameAs(open.clock());
        assertThat(sun.roof()).isNotSameAs(open.roof());
        assertThat(sun.cabin()).isNotSameAs(open.cabin());
        assertThat(Simulator.run(sun)).isEqualTo(alone("00:00 park shade, away"));
        assertThat(Simulator.run(open)).isEqualTo(alone("00:00 park open, away"));
    }

    /** Other days, another start, other clocks or another place have a sky of their own. */
    @Test
    void otherDaysHaveAnotherSky() {
        SkyPlan sky = plans.plan(new Van().variant(), WEATHER).sky();
        assertThat(skyWith("trip.days", "9")).isNotSameAs(sky);
        assertThat(skyWith("trip.start", "2025-03-21")).isNotSameAs(sky);
        assertThat(skyWith("place.zone", "Africa/Lagos")).isNotSameAs(sky);
        assertThat(skyWith("place.latitude", "1°")).isNotSameAs(sky);
    }

    /** Banks in turn share all of their plans. */
    @Test
    void banksShareAllButThemselves() {
        RunPlan small = plans.plan(full("battery.capacity", "200 Ah").variant(), HOT);
        RunPlan large = plans.plan(full("battery.capacity", "900 Ah").variant(), HOT);
        assertThat(large.clock()).isSameAs(small.clock());
        assertThat(large.cabin()).isSameAs(small.cabin());
        assertThat(large.loads()).isSameAs(small.loads());
        assertThat(large.second()).isSameAs(small.second());
        assertThat(Simulator.run(large))
                .isEqualTo(full("battery.capacity", "900 Ah").run(HOT));
    }

    /** After another design, each is planned as by a maker that never made one. */
    @ParameterizedTest
    @CsvSource({
        "place.latitude, 20°",
        "weather-offset, 3 K",
        "trip.days, 5",
        "trip.timetable.all days, 00:00 park open; awake",
        "solar.power, 900 W",
        "cabin.insulation, 5 cm",
        "loads.monitors.draw, 9 A",
        "loads.monitors.shed, first",
        "inverter.idle, 90 W",
        "cooling, none",
        "cooling.shed, first",
        "refrigerator, none",
        "refrigerator.shed, first",
        "engine.idle, 1100 rpm",
        "factory-alternator.rated, 90 A",
        "second-alternator, none",
        "battery.capacity, 60 Ah"
    })
    void whatIsChangedIsPlannedAnew(String path, String text) {
        Van changed = full(path, text.replace(';', ','));
        RunResult before =
                Simulator.run(plans.plan(full("battery.capacity", "200 Ah").variant(), HOT));
        assertThat(Simulator.run(plans.plan(changed.variant(), HOT)))
                .isEqualTo(changed.run(HOT))
                .isNotEqualTo(before);
    }

    private static Van full(String path, String text) {
        return FullVan.variableSpeed().with("battery.capacity", "200 Ah").with(path, text);
    }

    /** A day's warmest and coolest air is that of its minutes, on a day that the clocks make shorter too. */
    @Test
    void extremesOfADayAreThoseOfItsMinutes() {
        RunPlan plan = plans.plan(
                new Van()
                        .with("place.zone", "Europe/Paris")
                        .with("trip.start", "2025-03-27")
                        .with("trip.days", "5")
                        .variant(),
                WEATHER);
        RunResult run = Simulator.run(plan);
        assertThat(run.days()).extracting(DayTotals::steps).contains(23 * 60);
        for (DayTotals day : run.days()) {
            double warmestC = Double.NEGATIVE_INFINITY;
            double coolestC = Double.POSITIVE_INFINITY;
            for (int step = day.firstStep(); step < day.firstStep() + day.steps(); step++) {
                warmestC = Math.max(warmestC, plan.sky().weather().airC(step));
                coolestC = Math.min(coolestC, plan.sky().weather().airC(step));
            }
            assertThat(day.warmestOutsideC()).isEqualTo(warmestC);
            assertThat(day.coolestOutsideC()).isEqualTo(coolestC);
        }
    }

    private SkyPlan skyWith(String path, String text) {
        return plans.plan(new Van().with(path, text).variant(), WEATHER).sky();
    }

    private static RunResult alone(String timetable) {
        return van(timetable).run(WEATHER);
    }

    private static Van van(String timetable) {
        return new Van()
                .with("trip.timetable.all days", timetable)
                .with("solar.preset", "framed panels")
                .with("solar.power", "200 W");
    }
}
