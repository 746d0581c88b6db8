package ampdays.weather;

import java.util.ArrayList;
import java.util.List;

/**
 * What a weather series is and where and when it holds.
 *
 * @param source name for tables and messages
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 * @param elevationM above the sea; negative below it
 * @param utcOffsetHours of its local standard time
 * @param startEpochSecond beginning of the first interval; of a typical year as if the year were
 *     {@link WeatherSeries#NOMINAL_YEAR}
 * @param stepSeconds length of an interval; divides a day
 * @param typicalYear whether only month, day and time count, so that the series serves any year
 * @param instantShare where in its interval the temperature, humidity and wind of a row hold: 0 start, 0.5 middle, 1 end
 * @param notes what was derived or repaired, in plain sentences
 */
public record SeriesInfo(
        String source,
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        double utcOffsetHours,
        long startEpochSecond,
        int stepSeconds,
        boolean typicalYear,
        double instantShare,
        List<String> notes) {
    public SeriesInfo {
        within("latitude", latitudeDeg, -90, 90);
        within("longitude", longitudeDeg, -180, 180);
        within("elevation", elevationM, -500, 9000);
        within("offset from UTC in hours", utcOffsetHours, -12, 14);
        within("place of the instant in its interval", instantShare, 0, 1);
        if (stepSeconds < 1 || WeatherSeries.DAY_SECONDS % stepSeconds != 0) {
            throw new IllegalArgumentException(
                    "The interval of a weather series divides a day; " + stepSeconds + " s does not.");
        }
        notes = List.copyOf(notes);
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "The " + what + " of a weather series is " + least + " to " + most + ", not " + value + ".");
        }
    }

    /** Offset of local standard time from UTC. */
    public long utcOffsetSeconds() {
        return Math.round(utcOffsetHours * 3600);
    }

    /** The same with another beginning. */
    SeriesInfo startingAt(long epochSecond) {
        return new SeriesInfo(
                source,
                latitudeDeg,
                longitudeDeg,
                elevationM,
                utcOffsetHours,
                epochSecond,
                stepSeconds,
                typicalYear,
                instantShare,
                notes);
    }

    /** The same with more notes at the end. */
    public SeriesInfo withNotes(List<String> more) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(more);
        return new SeriesInfo(
                source,
                latitudeDeg,
                longitudeDeg,
                elevationM,
                utcOffsetHours,
                startEpochSecond,
                stepSeconds,
                typicalYear,
                instantShare,
                all);
    }
}
