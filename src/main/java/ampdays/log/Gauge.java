package ampdays.log;

import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One column of a device: its values one after the other, what they say, and what is wrong with them. */
final class Gauge {
    /** A value that stays to the last digit for longer than this is stuck, if others move (guess). */
    private static final long STUCK_SECONDS = 3 * 3600L;

    private static final int STUCK_ROWS = 12;
    /** A sensor that shows fewer different values than this may well stand (guess). */
    private static final int LEAST_STEPS = 50;
    /** What others must cover of their whole range meanwhile (guess). */
    private static final double MOVED_SHARE = 0.1;

    /** Share by which a state of charge may rise or fall beyond one full charge or discharge an hour (guess). */
    private static final double JUMP = 0.03;

    private static final double FULL = 0.995;
    private static final double NEVER_FULL = 0.0101;
    private static final long NEAR_MIDNIGHT_SECONDS = 1800;

    private final LogMap.Column column;
    private final Track track;
    private final Faults outOfRange = new Faults();
    private final Faults unread = new Faults();
    private final Faults synced = new Faults();
    private final Faults jumped = new Faults();
    private final Faults restarted = new Faults();
    private final Faults oddResets = new Faults();
    private final Faults stuck = new Faults();
    private double value = Double.NaN;
    private double last = Double.NaN;
    private long lastAt;
    private double runValue = Double.NaN;
    private long runFrom;
    private int runLine;
    private int runRows;
    private double finestStep = Double.MAX_VALUE;
    private final List<Stood> stood = new ArrayList<>();
    private long stuckSeconds;

    /** A stretch of one value. */
    private record Stood(double value, long from, long to, int line) {}

    Gauge(LogMap.Column column) {
        this.column = column;
        this.track = new Track(column.signal());
    }

    LogMap.Column column() {
        return column;
    }

    Track track() {
        return track;
    }

    void clear() {
        track.clear();
        value = Double.NaN;
        last = Double.NaN;
        runValue = Double.NaN;
        runRows = 0;
        stood.clear();
    }

    void unread(int line, String text) {
        unread.add(line, '"' + (text.length() > 20 ? text.substring(0, 20) + "…" : text) + '"');
    }

    /** A written number in base units; NaN when it is no measurement. */
    double checked(double written, int line) {
        double base = column.toBase(written);
        Signal signal = column.signal();
        if (base < signal.least() || base > signal.most()) {
            outOfRange.add(line, plain(written) + (column.unit().isEmpty() ? "" : " " + column.unit()));
            return Double.NaN;
        }
        return base;
    }

    /** The value that a row begins. */
    double value() {
        return value;
    }

    void set(double next) {
        value = next;
    }

    /** Notes a row at an instant. */
    void row(double next, long at, int line, boolean afterGap, int secondOfDay) {
        if (Double.isNaN(next)) {
            return;
        }
        if (column.signal().isCounter()) {
            count(next, at, line, afterGap, secondOfDay);
        } else if (column.signal().isLevel()) {
            level(next, at, line, afterGap);
        } else {
            run(next, at, line);
        }
        last = next;
        lastAt = at;
    }

    private void count(double next, long at, int line, boolean afterGap, int secondOfDay) {
        if (column.counter() == CounterKind.PER_ROW) {
            track.grow(next, at);
            return;
        }
        if (Double.isNaN(last)) {
            track.grow(0, at);
            return;
        }
        double growth = next - last;
        if (growth < 0 && column.counter() == CounterKind.LIFETIME) {
            restarted.add(line, show(last) + " to " + show(next));
            growth = 0;
        } else if (growth < 0) {
            int fromMidnight = Math.min(secondOfDay, 86_400 - secondOfDay);
            if (!afterGap && fromMidnight > NEAR_MIDNIGHT_SECONDS) {
                oddResets.add(line, String.format(Locale.ROOT, "%02d:%02d", secondOfDay / 3600, secondOfDay / 60 % 60));
            }
            growth = next;
        }
        track.grow(growth, at);
    }

    private void level(double next, long at, int line, boolean afterGap) {
        double possible = JUMP + (at - lastAt) / 3600.0;
        if (!Double.isNaN(last) && !afterGap && Math.abs(next - last) > possible) {
            (next >= FULL && next > last ? synced : jumped).add(line, show(last) + " to " + show(next));
        }
        track.level(next, at);
    }

    private void run(double next, long at, int line) {
        if (next == runValue) {
            runRows++;
            return;
        }
        double step = Math.abs(next - runValue);
        finestStep = step < finestStep ? step : finestStep;
        endRun();
        runValue = next;
        runFrom = at;
        runLine = line;
        runRows = 1;
    }

    private void endRun() {
        if (lastAt - runFrom >= STUCK_SECONDS && runRows >= STUCK_ROWS && runValue != 0) {
            stood.add(new Stood(runValue, runFrom, lastAt, runLine));
        }
    }

    /**
     * Ends the last run and leaves out those in which the sensor hung: it usually shows many different values, and others
     * moved far meanwhile. A cabin may stand still for hours under a thermostat, so its sensor is not judged.
     */
    void leaveOutStuck(List<Gauge> all) {
        endRun();
        if (column.signal() == Signal.CABIN_TEMPERATURE) {
            return;
        }
        boolean fine = track.most() - track.least() >= LEAST_STEPS * finestStep;
        boolean never = track.most() == track.least() && column.signal().dimension() != Dimension.TEMPERATURE;
        for (Stood run : stood) {
            if ((fine || never) && all.stream().anyMatch(other -> other != this && other.movedWithin(run))) {
                stuck.add(run.line(), show(run.value()));
                stuckSeconds += run.to() - run.from();
                track.forget(run.from(), run.to());
            }
        }
    }

    private boolean movedWithin(Stood run) {
        Signal signal = column.signal();
        return !signal.isCounter()
                && !signal.isLevel()
                && track.spread(run.from(), run.to()) > MOVED_SHARE * (track.most() - track.least());
    }

    void tell(List<Trap> traps) {
        String name = column.signal().label();
        unread.tell(
                traps,
                f -> name + " is " + f.first() + ", which is not a number" + f.andMore()
                        + "; those values are left out.");
        outOfRange.tell(
                traps,
                f -> name + " is " + f.first() + ", not between "
                        + show(column.signal().least()) + " and "
                        + show(column.signal().most()) + f.andMore()
                        + "; those values are left out. Check the unit in the map.");
        stuck.tell(
                traps,
                f -> name + " stands at " + f.first() + " while others move" + f.andMore() + ", " + hours(stuckSeconds)
                        + " in all, and is left out there: the sensor or its line hangs.");
        if (readsAsEmpty()) {
            traps.add(new Trap(
                    0,
                    name + " is never above " + show(track.most())
                            + ". If the column counts a full bank as 1, write unit: \"1\" in the map."));
        }
        synced.tell(
                traps,
                f -> name + " jumps from " + f.first() + f.andMore()
                        + ": the meter set itself to full. Before that it read too low, or its size of the bank is"
                        + " wrong; charge is counted from the current instead.");
        jumped.tell(
                traps,
                f -> name + " jumps from " + f.first() + f.andMore()
                        + ": more than any current explains. The meter was restarted or set by hand.");
        restarted.tell(
                traps,
                f -> name + " falls from " + f.first() + f.andMore()
                        + ", though it counts for life: it was restarted and is counted on from there. If it begins anew each"
                        + " day, write counter: daily.");
        oddResets.tell(
                traps,
                f -> name + " begins anew at " + f.first() + f.andMore()
                        + ", not at midnight: the device keeps another time. Check the zone in the map.");
    }

    /** A share of one that is mapped as percent would read as nearly empty all the time. */
    private boolean readsAsEmpty() {
        return column.signal().isLevel() && !column.unit().equals("1") && track.most() <= NEVER_FULL;
    }

    static String hours(long seconds) {
        return seconds >= 7200
                ? String.format(Locale.ROOT, "%.1f h", seconds / 3600.0)
                : seconds >= 120 ? String.format(Locale.ROOT, "%.0f min", seconds / 60.0) : seconds + " s";
    }

    private String show(double base) {
        Dimension dimension = column.signal().dimension();
        return dimension.show(base);
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
    }
}
