package ampdays.study;

import ampdays.results.Account;
import ampdays.results.AlternatorDay;
import ampdays.results.AlternatorDay.Drive;
import ampdays.results.AlternatorDay.Ruled;
import ampdays.results.Channel;
import ampdays.results.DayTotals;
import ampdays.results.Limit;
import ampdays.results.MinuteLog;
import ampdays.results.RunResult;
import ampdays.results.Series;
import ampdays.sim.TripClock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Cuts the day on which the alternators gave most into its drives. */
final class DrivingDay {
    private static final int BEFORE_S = 300;
    private static final int AFTER_S = 1800;
    private static final int MOST_DRIVES = 4;
    private static final List<Limit> LIMITS = List.of(Limit.values());
    private static final List<Channel> TEMPERATURES =
            List.of(Channel.SECOND_WINDING, Channel.SECOND_CASE, Channel.FACTORY_WINDING, Channel.FACTORY_CASE);
    private static final List<Channel> CURRENTS = List.of(Channel.SECOND_CURRENT, Channel.FACTORY_CURRENT);

    /** What the DC-DC charger puts into the bank. */
    private static final String CHARGER = "DC-DC charger, into the bank";

    private final DayTotals day;
    private final TripClock clock;
    private final MinuteLog log;

    private DrivingDay(DayTotals day, TripClock clock, MinuteLog log) {
        this.day = day;
        this.clock = clock;
        this.log = log;
    }

    /** Steps from the first with the engine on up to the first with it off again, and what is shown around them. */
    private record Window(int shownFrom, int from, int to, int shownTo) {
        Window joined(Window next) {
            return new Window(shownFrom, from, next.to, next.shownTo);
        }
    }

    /** The day on which the alternators gave most; empty when they gave nothing. */
    static Optional<DayTotals> of(RunResult result) {
        return result.days().stream()
                .max(Comparator.comparingDouble(DrivingDay::alternatorsWh))
                .filter(day -> alternatorsWh(day) > 0);
    }

    private static double alternatorsWh(DayTotals day) {
        return day.energy().wh(Account.SECOND_ALTERNATOR) + day.energy().wh(Account.FACTORY_ALTERNATOR);
    }

    /** @param log of that day */
    static AlternatorDay cut(DayTotals day, TripClock clock, MinuteLog log) {
        return new DrivingDay(day, clock, log).cut();
    }

    private AlternatorDay cut() {
        List<Window> windows = windows();
        List<Drive> longest = windows.stream()
                .sorted(Comparator.comparingInt(window -> window.from - window.to))
                .limit(MOST_DRIVES)
                .sorted(Comparator.comparingInt(Window::from))
                .map(this::drive)
                .toList();
        return new AlternatorDay(day.date(), longest, windows.size());
    }

    /** Stretches with the engine on; what is shown of two does not overlap. */
    private List<Window> windows() {
        int end = day.firstStep() + day.steps();
        List<Window> windows = new ArrayList<>();
        int from = -1;
        for (int step = day.firstStep(); step <= end; step++) {
            boolean on = step < end && clock.engineRuns(step);
            if (on && from < 0) {
                from = step;
            } else if (!on && from >= 0) {
                add(windows, window(from, step, end));
                from = -1;
            }
        }
        return windows;
    }

    private Window window(int from, int to, int end) {
        int before = BEFORE_S / clock.stepSeconds();
        int after = AFTER_S / clock.stepSeconds();
        return new Window(Math.max(day.firstStep(), from - before), from, to, Math.min(end, to + after));
    }

    private static void add(List<Window> windows, Window next) {
        int last = windows.size() - 1;
        if (last >= 0 && windows.get(last).shownTo >= next.shownFrom) {
            windows.set(last, windows.get(last).joined(next));
        } else {
            windows.add(next);
        }
    }

    private Drive drive(Window window) {
        Map<String, Series> temperatures = new LinkedHashMap<>();
        for (Channel channel : TEMPERATURES) {
            putIfKnown(temperatures, channel.label(), window, row -> log.get(channel, row));
        }
        Map<String, Series> currents = new LinkedHashMap<>();
        for (Channel channel : CURRENTS) {
            putIfKnown(currents, channel.label().replace(" current", ""), window, row -> log.get(channel, row));
        }
        if (currents.containsKey(Channel.FACTORY_ALTERNATOR.label())) {
            putIfKnown(
                    currents,
                    CHARGER,
                    window,
                    row -> log.get(Channel.FACTORY_ALTERNATOR, row) / log.get(Channel.BUS_VOLTAGE, row));
        }
        return new Drive(
                hour(window, window.shownFrom),
                hour(window, window.shownTo),
                series(window, row -> hour(window, row + log.firstStep() + 1)),
                temperatures,
                currents,
                limits(window));
    }

    /** Hours of the clock as it was at the start of the window. */
    private double hour(Window window, int step) {
        return clock.minuteOfDay(window.shownFrom) / 60.0 + (step - window.shownFrom) * clock.stepSeconds() / 3600.0;
    }

    private Series series(Window window, IntToDoubleFunction ofRow) {
        return Series.of(IntStream.range(window.shownFrom, window.shownTo)
                .map(step -> step - log.firstStep())
                .mapToDouble(ofRow)
                .toArray());
    }

    private void putIfKnown(Map<String, Series> map, String name, Window window, IntToDoubleFunction ofRow) {
        Series series = series(window, ofRow);
        if (!Double.isNaN(series.get(0))) {
            map.put(name, series);
        }
    }

    private List<Ruled> limits(Window window) {
        List<Ruled> ruled = new ArrayList<>();
        int from = window.from;
        for (int step = window.from + 1; step <= window.to; step++) {
            boolean on = clock.engineRuns(from);
            if (step == window.to || limit(step) != limit(from) || clock.engineRuns(step) != on) {
                if (on) {
                    ruled.add(new Ruled(limit(from), hour(window, from), hour(window, step)));
                }
                from = step;
            }
        }
        return ruled;
    }

    private Limit limit(int step) {
        return LIMITS.get((int) log.get(Channel.RULING_LIMIT, step - log.firstStep()));
    }
}
