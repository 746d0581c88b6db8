package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.FailureOutcome.Sign;
import ampdays.results.Milestones;
import ampdays.sim.TripClock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * What would be noticed first, by comparing the trip with a failure and the same trip without it minute by minute: first
 * what instruments show, then what people feel. How far something must be off before it shows is ours (practice).
 */
final class FailureSigns {
    /** Energy within an hour that is noticed, Wh. */
    private static final double NOTABLE_WH = 20;

    private static final double LOWER_PERCENT = 5;
    private static final double ABOUT_FULL_PERCENT = 95;
    private static final double WARMER_K = 2;
    private static final int EARLIER_S = 1800;

    private final TripClock clock;
    private final Aftermath with;
    private final Aftermath without;
    private final int from;

    FailureSigns(TripClock clock, Aftermath with, Aftermath without, int from) {
        this.clock = clock;
        this.with = with;
        this.without = without;
        this.from = from;
    }

    /** What a meter, a display or a thermometer shows first. */
    Optional<Sign> sign() {
        List<Found> found = new ArrayList<>();
        for (Channel source :
                List.of(Channel.SECOND_ALTERNATOR, Channel.FACTORY_ALTERNATOR, Channel.SHORE, Channel.SOLAR)) {
            add(found, source.label() + " gives less than half of what it would", halved(source));
        }
        add(
                found,
                "the bank takes no charge",
                first(with.milestones().chargeRefused(), without.milestones().chargeRefused()));
        add(
                found,
                "state of charge " + Math.round(LOWER_PERCENT) + " points lower than it would be",
                first(i -> with.get(Channel.STATE_OF_CHARGE, i)
                        < without.get(Channel.STATE_OF_CHARGE, i) - LOWER_PERCENT));
        add(
                found,
                "cabin " + Math.round(WARMER_K) + " K warmer than it would be",
                first(i -> with.get(Channel.CABIN_AIR, i) > without.get(Channel.CABIN_AIR, i) + WARMER_K));
        return earliest(found);
    }

    /** When a source has given less than half of what it would for long enough to be noticed; -1 when never. */
    private int halved(Channel source) {
        double stepH = clock.stepSeconds() / 3600.0;
        int last = 3600 / clock.stepSeconds();
        double withWh = 0;
        double withoutWh = 0;
        for (int step = from; step < clock.steps(); step++) {
            withWh += neededW(with, source, step) * stepH;
            withoutWh += neededW(without, source, step) * stepH;
            if (step - last >= from) {
                withWh -= neededW(with, source, step - last) * stepH;
                withoutWh -= neededW(without, source, step - last) * stepH;
            }
            if (withoutWh > NOTABLE_WH && withWh < withoutWh / 2) {
                return step;
            }
        }
        return -1;
    }

    /** What a source gives, but nothing while the failing van's bank is about full and not drawn on: little is then no sign. */
    private double neededW(Aftermath of, Channel source, int step) {
        boolean needed = with.get(Channel.STATE_OF_CHARGE, step) < ABOUT_FULL_PERCENT
                || with.get(Channel.BANK_CURRENT, step) < 0;
        return needed ? of.get(source, step) : 0;
    }

    /** What people feel, or an alarm set at these values tells, first. */
    Optional<Sign> alarm() {
        Milestones then = with.milestones();
        Milestones otherwise = without.milestones();
        List<Found> found = new ArrayList<>();
        add(found, "something stays without power", first(then.unserved(), otherwise.unserved()));
        add(found, "bank at the reserve", first(then.reserve(), otherwise.reserve()));
        add(found, "loads cut off", first(then.cutOut(), otherwise.cutOut()));
        add(found, "cabin above 32 °C", first(then.over32C(), otherwise.over32C()));
        add(
                found,
                "refrigerator " + Math.round(Milestones.WARM_REFRIGERATOR_K) + " K too warm",
                first(then.warmRefrigerator(), otherwise.warmRefrigerator()));
        return earliest(found);
    }

    private record Found(String words, int step) {}

    private static void add(List<Found> found, String words, int step) {
        if (step >= 0) {
            found.add(new Found(words, step));
        }
    }

    /** At a tie what was named first. */
    private Optional<Sign> earliest(List<Found> found) {
        return found.stream()
                .min(Comparator.comparingInt(Found::step))
                .map(f -> new Sign(f.words(), (f.step() - from) * clock.stepSeconds() / 3600.0));
    }

    private int first(IntPredicate so) {
        for (int step = from; step < clock.steps(); step++) {
            if (so.test(step)) {
                return step;
            }
        }
        return -1;
    }

    /** A step that came notably earlier than without the failure; -1 when it did not. */
    private int first(int then, int otherwise) {
        int margin = EARLIER_S / clock.stepSeconds();
        return then >= 0 && (otherwise < 0 || then + margin <= otherwise) ? then : -1;
    }
}
