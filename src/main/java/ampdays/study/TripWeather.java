package ampdays.study;

import ampdays.scenario.Variant;
import ampdays.sim.RunPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/** The weather that the trips of a study go through, and when they may begin. Serves several threads. */
public interface TripWeather {
    /** Days on which trips of an option may begin: a list for each year on record, or one where years are invented. */
    List<List<LocalDate>> starts(Variant option);

    /** Those days, in words. */
    String startWords(Variant option);

    /** Where an option's weather comes from, in words. */
    String words(Variant option);

    /** Which weather a trip of an option has, in words; trips are counted from 1. */
    String name(Variant option, int trip);

    /** Makes plans of designs for a trip, which share their parts; for one thread. */
    Function<Variant, RunPlan> of(int trip);
}
