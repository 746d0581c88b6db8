package ampdays.results;

import java.util.List;
import java.util.Optional;

/**
 * What happens to a design when something fails, beside the same trip without it from the same moment on. Times are hours
 * after that moment.
 *
 * @param name of the failure
 * @param what it does, in words
 * @param fromEpochSecond when it begins
 * @param untilEpochSecond when all is as before again; the end of the trip when never
 * @param leftH from its beginning to the end of the trip, h
 * @param times when the trip comes to what, with it
 * @param otherwise the same without it
 * @param uses what each use gets while it lasts
 * @param sign what a meter or a thermometer shows first; empty when nothing does
 * @param alarm what people feel or an alarm tells first; empty when nothing does
 * @param worse in what the trip is worse than without it, in words; empty when it is survived as it is
 * @param additions single changes with which it is no worse than the design without it, the cheapest first
 * @param impossible kinds of single change with a step that cannot be together with it, the first such step of each
 * @param tried how many kinds of single change were tried
 * @param advice what else to do, in words; nothing that was simulated
 * @param curve state of charge from the failure on
 */
public record FailureOutcome(
        String name,
        String what,
        long fromEpochSecond,
        long untilEpochSecond,
        double leftH,
        Times times,
        Times otherwise,
        List<Use> uses,
        Optional<Sign> sign,
        Optional<Sign> alarm,
        List<String> worse,
        List<Addition> additions,
        List<Impossible> impossible,
        int tried,
        String advice,
        Curve curve) {
    public FailureOutcome {
        uses = List.copyOf(uses);
        worse = List.copyOf(worse);
        additions = List.copyOf(additions);
        impossible = List.copyOf(impossible);
    }

    /** The same with what was found to make it good, among so many kinds of single change, and what cannot be. */
    public FailureOutcome with(List<Addition> found, List<Impossible> cannotBe, int kinds) {
        return new FailureOutcome(
                name,
                what,
                fromEpochSecond,
                untilEpochSecond,
                leftH,
                times,
                otherwise,
                uses,
                sign,
                alarm,
                worse,
                found,
                cannotBe,
                kinds,
                advice,
                curve);
    }

    /** Whether the trip with it is no worse than without. */
    public boolean survived() {
        return worse.isEmpty();
    }

    /**
     * Hours until something first was so; NaN when it never was.
     *
     * @param reserveH the bank at the reserve
     * @param cutOutH the loads cut off by the bank
     * @param over32H the cabin above 32 °C
     * @param over35H the cabin above 35 °C
     * @param over40H the cabin above 40 °C
     * @param hotH how long the cabin was above 32 °C with people in it, h
     * @param comfortableNights nights with the cabin in its band
     */
    public record Times(
            double reserveH,
            double cutOutH,
            double over32H,
            double over35H,
            double over40H,
            double hotH,
            int comfortableNights) {}

    /**
     * One use.
     *
     * @param servedWh what it gets
     * @param otherwiseWh what it gets without the failure
     * @param servedShare share of what it asks for, 0 to 1, NaN when that is nothing; of what it asks for otherwise, where the failure takes it away
     * @param otherwiseShare the same without the failure
     */
    public record Use(String name, double servedWh, double otherwiseWh, double servedShare, double otherwiseShare) {
        /** Less than this of the share that it has otherwise is going short; practice. */
        private static final double NOTABLE = 0.01;

        /** Whether it asks for something and gets the share that it would. */
        public boolean goesOn() {
            return servedShare >= otherwiseShare - NOTABLE;
        }

        /** Whether it gets a smaller share than it would. */
        public boolean goesShort() {
            return servedShare < otherwiseShare - NOTABLE;
        }
    }

    /** Something that shows, and how many hours after the failure began. */
    public record Sign(String words, double afterH) {}

    /**
     * A single change at the smallest of its steps that makes the failure good.
     *
     * @param change in words, with its size
     * @param price of the change; 0 where it takes no money
     * @param perTrip whether it is that of this trip, to be paid on others anew
     * @param currency of that price
     * @param priceFrom the mark of the price, or "your price"; empty where it takes no money
     */
    public record Addition(String change, double price, boolean perTrip, String currency, String priceFrom) {}

    /**
     * A single change that together with the failure makes a design that cannot be.
     *
     * @param change in words, with its size
     * @param why as a sentence without its end
     */
    public record Impossible(String change, String why) {}

    /**
     * State of charge over the rest of the trip.
     *
     * @param day days from the start of the trip
     * @param socPercent state of charge then, %
     */
    public record Curve(List<Double> day, List<Double> socPercent) {
        public Curve {
            day = List.copyOf(day);
            socPercent = List.copyOf(socPercent);
        }
    }
}
