package ampdays.study;

import ampdays.results.AlternatorDay;
import ampdays.results.AlternatorWork;
import ampdays.results.CabinHistory;
import ampdays.results.DayProfile;
import ampdays.results.RunResult;
import ampdays.results.TripCurve;
import java.util.List;
import java.util.Optional;

/**
 * Every option of a scenario beside the others.
 *
 * @param scenario short name of the scenario
 * @param title its title
 * @param reserveShare state of charge that counts as empty, 0 to 1
 * @param tripDays length of the trip, days
 * @param darkness stretches without sun, days from the start
 * @param options in the order of the file, the base design first
 */
public record Comparison(
        String scenario,
        String title,
        double reserveShare,
        double tripDays,
        List<Span> darkness,
        List<Option> options) {
    public Comparison {
        darkness = List.copyOf(darkness);
        options = List.copyOf(options);
    }

    /** A stretch of the trip, in days from its start. */
    public record Span(double fromDay, double toDay) {}

    /**
     * One option with what its charts need.
     *
     * @param curve state of charge over the trip, 0 to 1
     * @param alternators empty when none gave energy
     */
    public record Option(
            RunResult result,
            TripCurve curve,
            DayProfile ordinaryDay,
            DayProfile worstDay,
            CabinHistory cabin,
            Optional<Alternators> alternators) {}

    /**
     * How the alternators of an option worked.
     *
     * @param day on which they gave most
     * @param work one per alternator
     */
    public record Alternators(AlternatorDay day, List<AlternatorWork> work) {
        public Alternators {
            work = List.copyOf(work);
        }
    }
}
