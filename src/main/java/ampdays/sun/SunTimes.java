package ampdays.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;

/**
 * Sunrise, noon and sunset of one UTC day, for a flat horizon and the sun's centre at −0.833 degrees. Sunrise and sunset are
 * empty where the sun stays up or down all day.
 */
public record SunTimes(Optional<Instant> sunrise, Instant noon, Optional<Instant> sunset) {
    /**
     * By the solar position algorithm (I. Reda and A. Andreas, 2008, NREL/TP-560-34302, appendix A.2). Test:
     * {@code SunTimesTest}.
     *
     * @param date UTC day whose noon is sought
     * @param latitudeDeg north positive
     * @param longitudeDeg east positive
     */
    public static SunTimes of(LocalDate date, double latitudeDeg, double longitudeDeg) {
        SunriseResult result = SPA.calculateSunriseTransitSet(
                date.atStartOfDay(ZoneOffset.UTC), latitudeDeg, longitudeDeg, DeltaT.estimate(date));
        Instant noon = result.transit().toInstant();
        if (result instanceof SunriseResult.RegularDay day) {
            return new SunTimes(
                    Optional.of(day.sunrise().toInstant()),
                    noon,
                    Optional.of(day.sunset().toInstant()));
        }
        return new SunTimes(Optional.empty(), noon, Optional.empty());
    }
}
