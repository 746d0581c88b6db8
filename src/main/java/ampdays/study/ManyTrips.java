package ampdays.study;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Chances.Drawn;
import ampdays.results.Chances.Tenths;
import ampdays.results.RunResult;
import ampdays.results.ThreeDays;
import ampdays.results.TripOutcome;
import ampdays.scenario.Draft;
import ampdays.scenario.Habits;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Uncertain;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.units.Dimension;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Runs every option of a scenario on many trips that differ in start, weather, habits and tolerances. A trip is a point of an
 * even set; the same point serves every option, so that what differs between options is not luck. Test: {@code
 * ChancesCommandTest}.
 */
public final class ManyTrips {
    private static final int YEAR = 0;
    private static final int START = 1;
    private static final int HABITS = 2;

    private final ScenarioFile file;
    private final TripWeather weather;
    private final long seed;
    private final double[][] points;

    /**
     * A study.
     *
     * @param trips of each option
     */
    public ManyTrips(ScenarioFile file, TripWeather weather, int trips, long seed) {
        this.file = file;
        this.weather = weather;
        this.seed = seed;
        this.points = EvenPoints.of(trips, HABITS + Habits.of(file.base()).size(), seed);
    }

    /**
     * Runs it.
     *
     * @param done called after each trip
     */
    public Chances run(int workers, Runnable done) throws IOException {
        List<Variant> options = file.scenario().variants();
        List<List<TripOutcome>> byTrip = Workers.make(points.length, workers, this::trip, done);
        List<Chances.Option> made = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            int number = i;
            made.add(option(
                    options.get(i),
                    byTrip.stream().map(trip -> trip.get(number)).toList(),
                    byTrip.stream().map(trip -> trip.get(0)).toList()));
        }
        return new Chances(
                file.scenario().name(),
                file.scenario().title(),
                points.length,
                seed,
                file.base().number("trip.reserve"),
                drawn(),
                made);
    }

    /** One trip of every option. */
    private List<TripOutcome> trip(int number) {
        Function<Variant, RunPlan> plans = weather.of(number + 1);
        VariantBuilder builder = new VariantBuilder();
        List<TripOutcome> outcomes = new ArrayList<>();
        for (Variant option : file.scenario().variants()) {
            outcomes.add(outcome(option, number, plans, builder));
        }
        return outcomes;
    }

    private TripOutcome outcome(Variant option, int number, Function<Variant, RunPlan> plans, VariantBuilder builder) {
        double[] point = points[number];
        List<LocalDate> starts = EvenPoints.chosen(weather.starts(option), point[YEAR]);
        LocalDate start = EvenPoints.chosen(starts, point[START]);
        Draft draft = Draft.of(file.values(option.name()).orElseThrow()).startingOn(start.toString());
        List<Double> drawn = new ArrayList<>();
        for (Uncertain habit : Habits.of(draft.values())) {
            double value = habit.at(point[HABITS + drawn.size()]);
            draft = habit.isSpread() ? habit.apply(draft, value) : draft;
            drawn.add(value);
        }
        RunResult run = Simulator.run(plans.apply(built(draft, option.name(), builder)));
        return new TripOutcome(
                number + 1,
                start,
                weather.name(option, number + 1),
                drawn,
                run.tripDays(),
                run.daysToEmpty(),
                run.holds(),
                run.lowestSoc(),
                run.comfortableNights(),
                run.nights(),
                run.energy().servedWh(),
                run.energy().unservedWh(),
                ThreeDays.worst(run.days()));
    }

    private static Variant built(Draft draft, String name, VariantBuilder builder) {
        try {
            return draft.variant(name, builder);
        } catch (ScenarioException e) {
            throw new IllegalStateException("a trip of " + name + ": " + e.getMessage(), e);
        }
    }

    /** What differs from trip to trip, with the spread of the first option that has one. */
    private List<Drawn> drawn() {
        List<List<Uncertain>> byOption = file.scenario().variants().stream()
                .map(option -> Habits.of(file.values(option.name()).orElseThrow()))
                .toList();
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < byOption.get(0).size(); i++) {
            int number = i;
            drawn.add(drawn(byOption.stream()
                    .map(habits -> habits.get(number))
                    .filter(Uncertain::isSpread)
                    .findFirst()
                    .orElse(byOption.get(0).get(i))));
        }
        return drawn;
    }

    private static Drawn drawn(Uncertain habit) {
        String end = habit.dimension().show(habit.high());
        String words = !habit.isSpread() ? "" : habit.low() < 0 ? "± " + end : "up to " + end;
        return new Drawn(
                habit.name(),
                habit.dimension().symbols().get(0),
                habit.dimension() == Dimension.SHARE ? 0.01 : 1,
                words,
                habit.source());
    }

    private Chances.Option option(Variant option, List<TripOutcome> trips, List<TripOutcome> base) {
        int better = 0;
        int worse = 0;
        for (int i = 0; i < trips.size(); i++) {
            better += trips.get(i).outlasts(base.get(i)) ? 1 : 0;
            worse += base.get(i).outlasts(trips.get(i)) ? 1 : 0;
        }
        return new Chances.Option(
                option.name(),
                weather.startWords(option),
                weather.words(option),
                share(trips, TripOutcome::isNeverEmpty),
                share(trips, TripOutcome::isComfortable),
                tenths(trips, trip -> trip.isNeverEmpty() ? Double.POSITIVE_INFINITY : trip.daysToEmpty()),
                tenths(trips, TripOutcome::comfortableNights),
                KaplanMeier.of(trips.stream()
                        .map(trip -> new KaplanMeier.Life(
                                trip.isNeverEmpty() ? trip.tripDays() : trip.daysToEmpty(), !trip.isNeverEmpty()))
                        .toList()),
                trips.stream()
                        .max(Comparator.comparingDouble(
                                        (TripOutcome trip) -> trip.worst().lackWh())
                                .thenComparing(TripOutcome::trip, Comparator.reverseOrder()))
                        .orElseThrow(),
                (double) better / trips.size(),
                (double) worse / trips.size(),
                trips);
    }

    private static Bounded share(List<TripOutcome> trips, Predicate<TripOutcome> is) {
        return Sampling.share((int) trips.stream().filter(is).count(), trips.size());
    }

    private static Tenths tenths(List<TripOutcome> trips, ToDoubleFunction<TripOutcome> metric) {
        double[] values = trips.stream().mapToDouble(metric).toArray();
        return new Tenths(Sampling.place(0.1, values), Sampling.place(0.5, values), Sampling.place(0.9, values));
    }
}
