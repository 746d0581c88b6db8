package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.scenario.Failure;
import ampdays.scenario.FailureKind;
import ampdays.scenario.TripMoment;
import ampdays.sim.TripClock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * When failures strike that do not say so themselves: what depends on nothing on the second day, early enough to last; what
 * hurts at a certain moment, at the trip's worst one. All of it is ours (practice).
 */
final class FailureMoments {
    private static final double HEAT_WAVE_K = 6;
    private static final int HEAT_WAVE_DAYS = 5;
    private static final double LEAST_HEAT_C = 30;
    private static final double FROST_C = -5;
    private static final double MOST_COOLER_K = 15;
    private static final int DAYS_UNDER_TREES = 3;
    private static final int NOON = 720;
    private static final int EVENING = 1080;
    private static final double CHARGES_A = 1;
    private static final double HARD_CHARGE = 0.9;
    private static final int PROTECTION_OPEN_H = 12;
    private static final int COOLING_OFF_H = 24;

    private final TripClock clock;
    private final MinuteLog log;

    /** @param log of the trip without any failure, from its first step */
    FailureMoments(TripClock clock, MinuteLog log) {
        this.clock = clock;
        this.log = log;
    }

    /** A failure with its place in the trip, or why it has none. */
    record Found(Optional<FailureCase> place, String whyNot) {}

    Found find(Failure failure) {
        int days = clock.days();
        if (failure.from().isPresent() && failure.from().get().day() > days) {
            return none("it begins after the trip's " + days + (days == 1 ? " day" : " days"));
        }
        Found own = failure.kind().map(kind -> own(failure, kind)).orElse(at(failure, 0, clock.steps(), 0));
        if (own.place().isEmpty()) {
            return own;
        }
        FailureCase place = own.place().get();
        int from = failure.from().map(this::step).orElse(place.fromStep());
        int lasts = place.untilStep() == clock.steps() ? clock.steps() : place.untilStep() - place.fromStep();
        int until = failure.until().map(this::step).orElse(Math.min(clock.steps(), from + lasts));
        if (from >= Math.min(until, clock.steps())) {
            return none("it has no minute of the trip to itself");
        }
        return at(failure, from, until, place.warmerK());
    }

    private Found own(Failure failure, FailureKind kind) {
        int second = clock.firstStepOfDay(clock.days() > 1 ? 1 : 0);
        return switch (kind) {
            case PROTECTION_OPENS -> {
                double mostA = log.get(Channel.BANK_CURRENT, highest(Channel.BANK_CURRENT, i -> true));
                int step = first(i -> log.get(Channel.BANK_CURRENT, i) > HARD_CHARGE * mostA);
                yield mostA > CHARGES_A
                        ? at(failure, step, step + stepsOf(PROTECTION_OPEN_H), 0)
                        : none("nothing charges the bank on this trip");
            }
            case PANEL_BREAKER_OPENS -> at(failure, second + stepsOf(12), clock.steps(), 0);
            case COOLING_BREAKER_OPENS -> {
                int day = dayOf(highest(Channel.OUTSIDE_AIR, i -> true));
                int noon = step(new TripMoment(day + 1, NOON));
                yield at(failure, noon, noon + stepsOf(COOLING_OFF_H), 0);
            }
            case HOOK_UP_LOST -> hookUpLost(failure);
            case COLD_MORNING -> coldMorning(failure);
            case HEAT_WAVE -> heatWave(failure);
            case UNDER_TREES -> {
                int first = dayOf(second);
                int end = Math.min(clock.days(), first + DAYS_UNDER_TREES);
                yield at(failure, second, clock.firstStepOfDay(end), 0);
            }
            case STRING_LOST, SECOND_ALTERNATOR_DIES, FACTORY_ALTERNATOR_DIES, INVERTER_LEFT_ON, CLOSED_BOX ->
                at(failure, second, clock.steps(), 0);
        };
    }

    private Found hookUpLost(Failure failure) {
        int away = highest(Channel.OUTSIDE_AIR, i -> clock.hookUp(i) && clock.nobodyHome(i));
        int any = away >= 0 ? away : highest(Channel.OUTSIDE_AIR, i -> clock.hookUp(i));
        return any < 0 ? none("no place of the timetable has a hook-up") : at(failure, any, clock.steps(), 0);
    }

    private Found coldMorning(Failure failure) {
        int step = lowest(Channel.OUTSIDE_AIR);
        double coldestC = log.get(Channel.OUTSIDE_AIR, step);
        if (coldestC <= FROST_C || coldestC - FROST_C > MOST_COOLER_K) {
            return none(String.format(
                    Locale.ROOT,
                    "the coldest hour of the trip has %.0f °C%s",
                    coldestC,
                    coldestC <= FROST_C ? " as it is" : ""));
        }
        int day = dayOf(step);
        int noon = step(new TripMoment(day + 1, NOON));
        int evening = day == 0 ? 0 : step(new TripMoment(day, EVENING));
        return at(failure, evening, noon, FROST_C - coldestC);
    }

    private Found heatWave(Failure failure) {
        double warmestC = log.get(Channel.OUTSIDE_AIR, highest(Channel.OUTSIDE_AIR, i -> true));
        if (warmestC + HEAT_WAVE_K < LEAST_HEAT_C) {
            return none(String.format(
                    Locale.ROOT,
                    "the warmest hour of the trip has %.0f °C; %.0f K more is no heat",
                    warmestC,
                    HEAT_WAVE_K));
        }
        int days = Math.min(HEAT_WAVE_DAYS, clock.days());
        int warmest = 0;
        double highestC = Double.NEGATIVE_INFINITY;
        for (int day = 0; day + days <= clock.days(); day++) {
            double meanC = log.mean(Channel.OUTSIDE_AIR, clock.firstStepOfDay(day), clock.firstStepOfDay(day + days));
            if (meanC > highestC) {
                highestC = meanC;
                warmest = day;
            }
        }
        return at(failure, clock.firstStepOfDay(warmest), clock.firstStepOfDay(warmest + days), HEAT_WAVE_K);
    }

    private Found at(Failure failure, int from, int until, double warmerK) {
        int end = Math.min(until, clock.steps());
        int endDay = dayOf(end - 1) + 1;
        return new Found(Optional.of(new FailureCase(failure, from, end, dayOf(from), endDay, warmerK)), "");
    }

    private static Found none(String why) {
        return new Found(Optional.empty(), why);
    }

    private int stepsOf(int hours) {
        return hours * 3600 / clock.stepSeconds();
    }

    private int dayOf(int step) {
        int day = 0;
        while (day + 1 < clock.days() && clock.firstStepOfDay(day + 1) <= step) {
            day++;
        }
        return day;
    }

    private int step(TripMoment moment) {
        if (moment.day() > clock.days()) {
            return clock.steps();
        }
        int end = clock.firstStepOfDay(moment.day());
        for (int step = clock.firstStepOfDay(moment.day() - 1); step < end; step++) {
            if (clock.minuteOfDay(step) >= moment.minuteOfDay()) {
                return step;
            }
        }
        return end;
    }

    /** First step of the highest value among some; -1 when there are none. */
    private int highest(Channel channel, IntPredicate among) {
        int highest = -1;
        for (int step = 0; step < clock.steps(); step++) {
            if (among.test(step) && (highest < 0 || log.get(channel, step) > log.get(channel, highest))) {
                highest = step;
            }
        }
        return highest;
    }

    /** The first step that is so, or the first of all. */
    private int first(IntPredicate so) {
        for (int step = 0; step < clock.steps(); step++) {
            if (so.test(step)) {
                return step;
            }
        }
        return 0;
    }

    private int lowest(Channel channel) {
        int lowest = 0;
        for (int step = 1; step < clock.steps(); step++) {
            lowest = log.get(channel, step) < log.get(channel, lowest) ? step : lowest;
        }
        return lowest;
    }
}
