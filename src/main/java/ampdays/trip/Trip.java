package ampdays.trip;

import ampdays.units.Require;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * The days simulated.
 *
 * @param start first day; the trip begins at its local midnight
 * @param kindOfDay for each day the index of its kind in {@code kinds}
 * @param reserveShare state of charge that counts as empty, 0 to 1
 */
public record Trip(LocalDate start, ZoneId zone, List<DayKind> kinds, List<Integer> kindOfDay, double reserveShare) {
    public Trip {
        kinds = List.copyOf(kinds);
        kindOfDay = List.copyOf(kindOfDay);
        Require.within("number of days", kindOfDay.size(), 1, 3660);
        for (int kind : kindOfDay) {
            Require.within("kind of day", kind, 0, kinds.size() - 1);
        }
        Require.share("reserve", reserveShare);
    }

    public int days() {
        return kindOfDay.size();
    }
}
