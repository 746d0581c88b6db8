package ampdays.results;

import java.util.IntSummaryStatistics;
import java.util.List;

/**
 * The answer as a distribution: every option on the same trips.
 *
 * @param trips how many of each option
 * @param seed that the trips were drawn with
 * @param drawn what else differs from trip to trip
 * @param options the base design first
 */
public record Chances(
        String scenario,
        String title,
        int trips,
        long seed,
        double reserveShare,
        List<Drawn> drawn,
        List<Option> options) {
    public Chances {
        drawn = List.copyOf(drawn);
        options = List.copyOf(options);
    }

    /** Days of the longest trip: options may go on trips of different length. */
    public double longestTripDays() {
        return options.stream().mapToDouble(Option::tripDays).max().orElseThrow();
    }

    /**
     * Something that differs from trip to trip.
     *
     * @param unit of its numbers in files
     * @param perUnit base units in one of it
     * @param words its spread, such as {@code ± 30 %}; empty when it is fixed
     * @param source of the spread: a mark, or "your figure"
     */
    public record Drawn(String name, String unit, double perUnit, String words, String source) {}

    /** Three places of a distribution: below the first lies one trip of ten, above the last likewise. */
    public record Tenths(Bounded p10, Bounded p50, Bounded p90) {}

    /**
     * One option.
     *
     * @param starts days on which its trips could begin, in words
     * @param weather which weather they had, in words
     * @param neverEmpty share of trips that are never empty
     * @param comfortable share of trips with every night comfortable
     * @param days days to empty; infinite where so many are never empty
     * @param nights comfortable nights
     * @param worst trip with the worst three days
     * @param betterShare share of trips in which it outlasts the base design
     * @param worseShare share in which the base design outlasts it
     * @param trips all of them, in the order of their numbers
     */
    public record Option(
            String name,
            String starts,
            String weather,
            Bounded neverEmpty,
            Bounded comfortable,
            Tenths days,
            Tenths nights,
            Survival survival,
            TripOutcome worst,
            double betterShare,
            double worseShare,
            List<TripOutcome> trips) {
        public Option {
            trips = List.copyOf(trips);
        }

        /** How long its trips are, days; a change of the clocks makes some an hour shorter. */
        public double tripDays() {
            return trips.stream().mapToDouble(TripOutcome::tripDays).max().orElseThrow();
        }

        /** How many nights a trip has; they differ where the timetable of a day depends on the day of the week. */
        public IntSummaryStatistics nightsOfATrip() {
            return trips.stream().mapToInt(TripOutcome::nights).summaryStatistics();
        }

        /** Share of all nights of all trips that were comfortable; not a number without a night. */
        public double comfortableShare() {
            return trips.stream().mapToInt(TripOutcome::comfortableNights).sum()
                    / (double) nightsOfATrip().getSum();
        }

        /** Share of all energy asked for that was not delivered. */
        public double unservedShare() {
            double served = trips.stream().mapToDouble(TripOutcome::servedWh).sum();
            double unserved =
                    trips.stream().mapToDouble(TripOutcome::unservedWh).sum();
            return unserved == 0 ? 0 : unserved / (served + unserved);
        }
    }
}
