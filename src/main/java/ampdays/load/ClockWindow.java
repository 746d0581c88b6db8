package ampdays.load;

import ampdays.units.Require;

/**
 * Local clock times from one minute of the day to another; past midnight when the end lies before the start.
 *
 * @param fromMinute first minute, 0 to 1439
 * @param toMinute first minute after it, 0 to 1440
 */
public record ClockWindow(int fromMinute, int toMinute) {
    public ClockWindow {
        Require.within("window start", fromMinute, 0, 1439);
        Require.within("window end", toMinute, 0, 1440);
        if (fromMinute == toMinute) {
            throw new IllegalArgumentException("a window of the clock is empty");
        }
    }

    public boolean holds(int minuteOfDay) {
        return fromMinute < toMinute
                ? minuteOfDay >= fromMinute && minuteOfDay < toMinute
                : minuteOfDay >= fromMinute || minuteOfDay < toMinute;
    }
}
