package ampdays.log;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The rows of one device, put in order in time: each holds until the next, or for the usual time before a gap. */
final class Device {
    /** A jump ahead by more than this is believed once enough rows follow. */
    private static final long AHEAD_SECONDS = 86_400;

    private static final int ROWS_THAT_CONVINCE = 50;
    /** Rows before a jump ahead by more than this are of a clock that was not set, if they are few. */
    private static final long NOT_SET_SECONDS = 60 * 86_400L;

    /** The longest log. */
    private static final long MOST_SECONDS = 4 * 366 * 86_400L;

    private static final int GAP_INTERVALS = 3;
    private static final long LEAST_GAP_SECONDS = 60;
    /** The slowest log that is meant: a row each quarter of an hour. */
    private static final long SLOWEST_SECONDS = 900;

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private final List<Gauge> gauges;
    private final ZoneId zone;
    private final boolean stampsEnd;
    private final boolean hasCounter;
    private final List<Row> ahead = new ArrayList<>();
    private final Faults repeated = new Faults();
    private final Faults back = new Faults();
    private final Faults wrongAhead = new Faults();
    private final Faults notSet = new Faults();
    private final Faults tooLong = new Faults();
    private int leftOutAhead;
    private int leftOutBack;
    private boolean isBack;
    private long start = Long.MIN_VALUE;
    private long last = Long.MIN_VALUE;
    private int sameTime;
    private int rows;
    private double usual;
    private long secondLast;
    private int gaps;
    private long gapSeconds;
    private long longest;
    private int longestLine;

    /** A row that waits for others to confirm it. */
    private static final class Row {
        private final long at;
        private final int line;
        private final double[] values;

        Row(long at, int line, double... values) {
            this.at = at;
            this.line = line;
            this.values = values;
        }
    }

    /** @param usualSeconds between rows, as far as the beginning of the log tells */
    Device(List<Gauge> gauges, ZoneId zone, boolean stampsEnd, double usualSeconds) {
        this.gauges = gauges;
        this.zone = zone;
        this.stampsEnd = stampsEnd;
        this.hasCounter = gauges.stream().anyMatch(g -> g.column().signal().isCounter());
        this.usual = Math.max(1, Math.min(SLOWEST_SECONDS, usualSeconds));
    }

    List<Gauge> gauges() {
        return gauges;
    }

    /** Instant of the last row that counts; {@link Long#MIN_VALUE} before the first. */
    long last() {
        return last;
    }

    long start() {
        return start;
    }

    double usualSeconds() {
        return usual;
    }

    int gaps() {
        return gaps;
    }

    long gapSeconds() {
        return gapSeconds;
    }

    long longestGap() {
        return longest;
    }

    int longestGapLine() {
        return longestLine;
    }

    /**
     * Takes the next row.
     *
     * @param values one for each gauge, in base units; NaN where nothing was measured
     */
    void row(long at, int line, double[] values) {
        if (!ahead.isEmpty()) {
            if (at >= ahead.get(0).at) {
                ahead.add(new Row(at, line, values.clone()));
                if (ahead.size() >= ROWS_THAT_CONVINCE) {
                    believeAhead();
                }
                return;
            }
            wrongAhead.add(ahead.get(0).line, stamp(ahead.get(0).at));
            leftOutAhead += ahead.size();
            ahead.clear();
        }
        if (last != Long.MIN_VALUE && at > last + AHEAD_SECONDS) {
            ahead.add(new Row(at, line, values.clone()));
            return;
        }
        accept(at, line, values);
    }

    private void believeAhead() {
        if (ahead.get(0).at - last > NOT_SET_SECONDS && rows < ROWS_THAT_CONVINCE) {
            notSet.add(ahead.get(0).line, stamp(start));
            gauges.forEach(Gauge::clear);
            last = Long.MIN_VALUE;
            start = Long.MIN_VALUE;
            gaps = 0;
            gapSeconds = 0;
            longest = 0;
        }
        List<Row> believed = List.copyOf(ahead);
        ahead.clear();
        believed.forEach(row -> accept(row.at, row.line, row.values));
    }

    private void accept(long at, int line, double[] values) {
        rows++;
        if (last == Long.MIN_VALUE) {
            start = at;
            begin(at, line, values, false);
            return;
        }
        if (at - start > MOST_SECONDS) {
            tooLong.add(line, stamp(at));
            return;
        }
        long lasted = at - last;
        if (lasted < 0) {
            if (!isBack) {
                back.add(line, Gauge.hours(-lasted) + ", from " + stamp(last) + " to " + stamp(at));
                isBack = true;
            }
            leftOutBack++;
            return;
        }
        isBack = false;
        if (lasted == 0) {
            repeated.add(line, stamp(at));
            join(values);
            return;
        }
        boolean gap = lasted > Math.max(LEAST_GAP_SECONDS, GAP_INTERVALS * usual);
        if (gap) {
            gaps++;
            gapSeconds += lasted;
            if (lasted > longest) {
                longest = lasted;
                longestLine = line;
            }
        }
        learn(lasted);
        long held = gap ? Math.min(lasted, Math.round(usual)) : lasted;
        for (int i = 0; i < gauges.size(); i++) {
            Gauge gauge = gauges.get(i);
            double value = stampsEnd ? values[i] : gauge.value();
            if (isFlow(gauge) && !Double.isNaN(value)) {
                long from = stampsEnd ? at - held : last;
                gauge.track().hold(value, from, from + held);
            }
        }
        begin(at, line, values, gap);
    }

    private static boolean isFlow(Gauge gauge) {
        Signal signal = gauge.column().signal();
        return !signal.isCounter() && !signal.isLevel();
    }

    private void begin(long at, int line, double[] values, boolean afterGap) {
        last = at;
        sameTime = 1;
        int secondOfDay = hasCounter
                ? Instant.ofEpochSecond(at).atZone(zone).toLocalTime().toSecondOfDay()
                : 0;
        for (int i = 0; i < gauges.size(); i++) {
            gauges.get(i).set(values[i]);
            gauges.get(i).row(values[i], at, line, afterGap, secondOfDay);
        }
    }

    /** Rows of one time are averaged; what counters grew in each of them is added. */
    private void join(double[] values) {
        sameTime++;
        for (int i = 0; i < gauges.size(); i++) {
            Gauge gauge = gauges.get(i);
            if (!stampsEnd && !Double.isNaN(values[i]) && isFlow(gauge)) {
                double before = Double.isNaN(gauge.value()) ? values[i] : gauge.value();
                gauge.set(before + (values[i] - before) / sameTime);
            }
            if (gauge.column().counter() == CounterKind.PER_ROW && !Double.isNaN(values[i])) {
                gauge.track().grow(values[i], last);
            }
        }
    }

    /** Two intervals alike in a row are the usual one from then on. */
    private void learn(long lasted) {
        if (lasted == secondLast && lasted <= SLOWEST_SECONDS) {
            usual = lasted;
        }
        secondLast = lasted;
    }

    /** Takes what still waits and ends the last interval. */
    void end() {
        if (!ahead.isEmpty()) {
            List<Row> believed = List.copyOf(ahead);
            ahead.clear();
            believed.forEach(row -> accept(row.at, row.line, row.values));
        }
        for (Gauge gauge : gauges) {
            if (!stampsEnd && last != Long.MIN_VALUE && isFlow(gauge) && !Double.isNaN(gauge.value())) {
                gauge.track().hold(gauge.value(), last, last + Math.round(usual));
            }
        }
    }

    void tell(List<Trap> traps) {
        repeated.tell(
                traps,
                f -> "the time " + f.first() + " is that of the row before" + f.andMore()
                        + (stampsEnd
                                ? "; of rows of one time the first counts."
                                : "; rows of one time are taken as their mean."));
        back.tell(
                traps,
                f -> "the clock jumps back by " + f.first() + f.andMore() + "; " + counted(leftOutBack)
                        + " left out until it has caught up. If the log keeps local time, name its zone in the map, so"
                        + " that changes of the clock are known.");
        wrongAhead.tell(
                traps,
                f -> "the clock jumps ahead to " + f.first() + " and back again" + f.andMore() + "; "
                        + counted(leftOutAhead) + " left out.");
        notSet.tell(traps, f -> "before this line the clock was not set (" + f.first() + "); those rows are left out.");
        tooLong.tell(
                traps,
                f -> "from " + f.first()
                        + " on the log is longer than four years; those rows are left out. Cut the file.");
        gauges.forEach(gauge -> gauge.tell(traps));
    }

    private static String counted(int rows) {
        return rows == 1 ? "1 row is" : rows + " rows are";
    }

    private String stamp(long at) {
        return STAMP.format(Instant.ofEpochSecond(at).atZone(zone));
    }
}
