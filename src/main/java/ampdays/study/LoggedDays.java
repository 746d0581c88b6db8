package ampdays.study;

import ampdays.results.Channel;
import ampdays.results.LoggedDay;
import ampdays.results.MinuteLog;
import ampdays.sim.TripClock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** A trip day by day as promised and as logged. */
public final class LoggedDays {
    private LoggedDays() {}

    /**
     * Days of which the log tells something.
     *
     * @param promised every step of the run
     */
    public static List<LoggedDay> of(LoggedTrip logged, MinuteLog promised) {
        TripClock clock = logged.clock();
        List<LoggedDay> days = new ArrayList<>();
        for (int day = 0; day < clock.days(); day++) {
            int from = clock.firstStepOfDay(day);
            int to = clock.firstStepOfDay(day + 1);
            int known = 0;
            for (int step = from; step < to; step++) {
                known += Double.isNaN(logged.bankW(step)) ? 0 : 1;
            }
            if (known > 0) {
                days.add(day(day, (double) known / (to - from), from, to, logged, promised));
            }
        }
        return days;
    }

    private static LoggedDay day(int number, double coverage, int from, int to, LoggedTrip logged, MinuteLog promised) {
        IntToDoubleFunction alternators = step -> logged.chargerW(step) + logged.secondW(step);
        return new LoggedDay(
                number,
                coverage,
                new LoggedDay.Flows(
                        sumWh(from, to, s -> promised.get(Channel.SOLAR, s), logged::solarW),
                        sumWh(from, to, s -> alternatorsW(promised, s), alternators),
                        sumWh(from, to, s -> promised.get(Channel.SHORE, s), logged::shoreW),
                        sumWh(from, to, s -> useW(promised, s), logged::useW),
                        lowest(from, to, s -> promised.get(Channel.STATE_OF_CHARGE, s) / 100, logged::soc)),
                new LoggedDay.Flows(
                        sumWh(from, to, logged::solarW, logged::solarW),
                        sumWh(from, to, alternators, alternators),
                        sumWh(from, to, logged::shoreW, logged::shoreW),
                        sumWh(from, to, logged::useW, logged::useW),
                        lowest(from, to, logged::soc, logged::soc)));
    }

    static double alternatorsW(MinuteLog run, int step) {
        return run.get(Channel.FACTORY_ALTERNATOR, step) + run.get(Channel.SECOND_ALTERNATOR, step);
    }

    /** Sources less what went into the bank, as it is told from a log. */
    static double useW(MinuteLog run, int step) {
        return run.get(Channel.SOLAR, step)
                + run.get(Channel.SHORE, step)
                + alternatorsW(run, step)
                - run.get(Channel.BANK_CURRENT, step) * run.get(Channel.BUS_VOLTAGE, step);
    }

    private static double sumWh(int from, int to, IntToDoubleFunction watts, IntToDoubleFunction known) {
        double sum = 0;
        int count = 0;
        for (int step = from; step < to; step++) {
            if (!Double.isNaN(known.applyAsDouble(step))) {
                sum += watts.applyAsDouble(step) / 60;
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum;
    }

    private static double lowest(int from, int to, IntToDoubleFunction soc, IntToDoubleFunction known) {
        double lowest = Double.NaN;
        for (int step = from; step < to; step++) {
            if (!Double.isNaN(known.applyAsDouble(step)) && !(soc.applyAsDouble(step) >= lowest)) {
                lowest = soc.applyAsDouble(step);
            }
        }
        return lowest;
    }
}
