package ampdays.audit;

import ampdays.load.ClockWindow;
import ampdays.load.Occasion;
import java.util.List;

/**
 * How long and when an appliance runs, as far as it was told.
 *
 * @param hoursPerDay hours of use a day; NaN when not told
 * @param when the times as written; empty when not told
 * @param occasion when it may run
 * @param windows clock times that narrow the occasion
 */
public record Use(double hoursPerDay, String when, Occasion occasion, List<ClockWindow> windows) {
    public static final Use UNKNOWN = new Use(Double.NaN, "", Occasion.ALWAYS, List.of());
    public static final Use ALWAYS = new Use(Double.NaN, "always", Occasion.ALWAYS, List.of());

    private static final int MINUTES_PER_DAY = 1440;

    public Use {
        windows = List.copyOf(windows);
    }

    /** Whether the hours a day are told, by themselves or by clock times. */
    public boolean isKnown() {
        return !Double.isNaN(hoursPerDay) || hasHours();
    }

    /** Whether it is told at which hours of the clock it may run. */
    public boolean hasHours() {
        return !windows.isEmpty() || (occasion == Occasion.ALWAYS && !when.isEmpty());
    }

    /** Hours a day; NaN when not known. */
    public double knownHoursPerDay() {
        double allowed = hasHours() ? allowedMinutes(0, MINUTES_PER_DAY) / 60.0 : 24;
        if (Double.isNaN(hoursPerDay)) {
            return hasHours() ? allowed : Double.NaN;
        }
        return Math.min(hoursPerDay, allowed);
    }

    /** Share of an hour of the clock during which it runs, spread evenly over the times it may; 0 where not known. */
    double shareOf(int hour) {
        if (!hasHours()) {
            return 0;
        }
        double allowed = allowedMinutes(0, MINUTES_PER_DAY);
        return allowedMinutes(60 * hour, 60 * hour + 60) * knownHoursPerDay() / allowed;
    }

    private int allowedMinutes(int from, int to) {
        int minutes = 0;
        for (int minute = from; minute < to; minute++) {
            int now = minute;
            if (windows.isEmpty() || windows.stream().anyMatch(w -> w.holds(now))) {
                minutes++;
            }
        }
        return minutes;
    }
}
