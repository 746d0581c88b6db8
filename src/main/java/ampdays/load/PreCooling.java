package ampdays.load;

import ampdays.units.Require;
import java.util.List;

/**
 * A wish to cool the cabin below its set temperature while energy is cheap, so that its mass carries the cold on.
 *
 * @param toC temperature wanted then, °C
 * @param surplusSun while sun would be lost because the bank takes no more, with no more than that
 * @param driving while the vehicle moves
 * @param windows at these clock times
 */
public record PreCooling(double toC, boolean surplusSun, boolean driving, List<ClockWindow> windows) {
    public PreCooling {
        windows = List.copyOf(windows);
        Require.within("pre-cooling temperature", toC, 5, 45);
        if (!surplusSun && !driving && windows.isEmpty()) {
            throw new IllegalArgumentException("pre-cooling never happens: it has no occasion");
        }
    }

    /** Whether the wish holds by the clock or by driving, without regard to the sun. */
    public boolean holds(boolean moves, int minuteOfDay) {
        if (driving && moves) {
            return true;
        }
        for (int i = 0; i < windows.size(); i++) {
            if (windows.get(i).holds(minuteOfDay)) {
                return true;
            }
        }
        return false;
    }
}
