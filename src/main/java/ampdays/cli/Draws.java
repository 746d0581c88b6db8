package ampdays.cli;

import ampdays.scenario.Draft;
import ampdays.scenario.Habits;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Uncertain;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.study.TripWeather;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;

/** How a study draws its trips, the same for every command that does. */
final class Draws {
    private static final int MOST_DRAWN = 1_000_000;
    private static final int MOST_WORKERS = 1000;

    /** So that the seeds of invented years, a million times as large, stay whole numbers. */
    private static final long MOST_SEED = 1_000_000_000;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "A whole number from 0 that decides which trips are drawn. Without it, 1.")
    private long seed = 1;

    @Option(
            names = {"-j", "--workers"},
            paramLabel = "N",
            description = "How many trips are run at once; without it, one for each processor core.")
    private int workers = Runtime.getRuntime().availableProcessors();

    long seed() {
        return seed;
    }

    int workers() {
        return workers;
    }

    void check() throws UsageException {
        checkSeed(seed);
        checkWorkers(workers);
    }

    static void checkWorkers(int workers) throws UsageException {
        checkCount("-j", workers, 1, MOST_WORKERS, "; without it, one for each processor core");
    }

    static void checkSeed(long seed) throws UsageException {
        if (seed < 0 || seed > MOST_SEED) {
            throw new UsageException("--seed is " + seed + "; expected is a whole number from 0 to "
                    + String.format(Locale.ROOT, "%,d", MOST_SEED) + ".");
        }
    }

    /** How often something is drawn. */
    static void checkCount(String option, int count, int least) throws UsageException {
        checkCount(option, count, least, MOST_DRAWN, "");
    }

    /**
     * The same where it may also be 0.
     *
     * @param orNone what 0 is written for, as the end of a sentence
     */
    static void checkCountOrNone(String option, int count, int least, String orNone) throws UsageException {
        if (count != 0) {
            checkCount(option, count, least, MOST_DRAWN, ", or 0 " + orNone);
        }
    }

    private static void checkCount(String option, int count, int least, int most, String orElse) throws UsageException {
        if (count < least || count > most) {
            throw new UsageException(String.format(
                    Locale.ROOT, "%s is %,d; expected is %d to %,d%s.", option, count, least, most, orElse));
        }
    }

    /** Refuses designs that cannot be at an end of a spread, or on a day of the start. */
    static void refuseImpossible(Loaded loaded, TripWeather weather) throws UsageException {
        VariantBuilder builder = new VariantBuilder();
        for (Variant option : loaded.scenario().variants()) {
            Values values = loaded.file().values(option.name()).orElseThrow();
            for (List<LocalDate> year : weather.starts(option)) {
                for (LocalDate start : year) {
                    build(
                            builder,
                            option.name(),
                            Draft.of(values).startingOn(start.toString()),
                            "beginning on " + start);
                }
            }
            for (Uncertain habit : Habits.of(values)) {
                for (double value : List.of(habit.low(), habit.high())) {
                    build(
                            builder,
                            option.name(),
                            habit.apply(Draft.of(values), value),
                            habit.name() + " at " + habit.dimension().show(value));
                }
            }
        }
    }

    private static void build(VariantBuilder builder, String option, Draft draft, String how) throws UsageException {
        try {
            draft.variant(option, builder);
        } catch (ScenarioException e) {
            throw new UsageException(
                    "With " + how + ", \"" + option + "\" is a design that cannot be: " + e.getMessage());
        }
    }
}
