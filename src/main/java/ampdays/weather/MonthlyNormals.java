package ampdays.weather;

import java.util.List;
import java.util.Optional;

/**
 * The usual weather of a place, month by month.
 *
 * @param title name of the place or kind of place
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 * @param elevationM above the sea
 * @param utcOffsetHours of its local standard time
 * @param months January to December
 */
public record MonthlyNormals(
        String title,
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        double utcOffsetHours,
        List<Month> months) {
    public MonthlyNormals {
        months = List.copyOf(months);
        if (months.size() != 12) {
            throw new IllegalArgumentException("Monthly normals have 12 months, not " + months.size() + ".");
        }
    }

    /**
     * Means of one month.
     *
     * @param ghiKwhM2 global horizontal irradiation of a day
     * @param maxC highest air temperature of a day
     * @param minC lowest air temperature of a day
     * @param windMs wind speed at 10 m height
     * @param dewPointC dew point
     * @param spread how single days differ, if known
     */
    public record Month(
            double ghiKwhM2, double maxC, double minC, double windMs, double dewPointC, Optional<DaySpread> spread) {
        public Month {
            if (!(ghiKwhM2 >= 0 && ghiKwhM2 <= 12)) {
                throw new IllegalArgumentException(
                        "A day's global irradiation is 0 to 12 kWh/m², not " + ghiKwhM2 + ".");
            }
            if (!(maxC >= minC && minC >= -80 && maxC <= 60)) {
                throw new IllegalArgumentException(
                        "A day's highest and lowest temperature are -80 to 60 °C in this order" + ", not " + maxC
                                + " and " + minC + ".");
            }
            if (!(windMs >= 0 && windMs <= 30 && dewPointC >= -80 && dewPointC <= 40)) {
                throw new IllegalArgumentException(
                        "Wind is 0 to 30 m/s and dew point -80 to 40 °C, not " + windMs + " and " + dewPointC + ".");
            }
        }
    }

    /**
     * How far single days lie from what is usual for their date, as standard deviations.
     *
     * @param clearness of the day's clearness, its light over that outside the atmosphere
     * @param maxK of the highest temperature
     * @param minK of the lowest temperature
     * @param dewPointK of the dew point
     */
    public record DaySpread(double clearness, double maxK, double minK, double dewPointK) {
        /** No place spreads more. */
        static final double MOST_CLEARNESS = 0.4;

        public DaySpread {
            if (!(clearness >= 0 && clearness <= MOST_CLEARNESS)) {
                throw new IllegalArgumentException("The spread of daily clearness is a share, 0 to " + MOST_CLEARNESS
                        + ", not " + clearness + ".");
            }
            if (!(maxK >= 0 && maxK <= 15 && minK >= 0 && minK <= 15 && dewPointK >= 0 && dewPointK <= 15)) {
                throw new IllegalArgumentException("Spreads of daily temperatures are 0 to 15 K, not " + maxK + ", "
                        + minK + " and " + dewPointK + ".");
            }
        }
    }
}
