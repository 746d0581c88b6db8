package ampdays.weather;

import ampdays.weather.MonthlyNormals.DaySpread;

/**
 * Temperature and dew point through one invented year.
 *
 * <p>Each day has a low at dawn and a high three hours past noon, with half cosines between (common practice, no source); the
 * dew point passes to the next day's around midnight and never exceeds the temperature.
 */
final class SyntheticDays {
    private static final int DAYS = DailyNormals.DAYS;
    private static final int HOURS_NOON_TO_HOTTEST = 3;
    private static final double DEW_POINT_CHANGE_HOURS = 6;
    /** Guards against a dawn warmer than the noon after it. */
    private static final double LEAST_SWING_K = 1;

    private final Usual usual;
    private final double[] maxC = new double[DAYS];
    private final double[] minC = new double[DAYS];
    private final double[] dewPointC = new double[DAYS];

    /** What all years of a place share: what is usual on each day, how far days lie from it, when a day is coldest and hottest. */
    static final class Usual {
        private final double[] maxC;
        private final double[] minC;
        private final double[] dewPointC;
        private final DaySpread[] spreads;
        private final int[] dawnHour = new int[DAYS];
        private final int[] hottestHour = new int[DAYS];

        /**
         * From monthly means.
         *
         * @param sunHeight mean of {@code max(cos z, 0)} in each hour of the year
         */
        Usual(double[] maxC, double[] minC, double[] dewPointC, DaySpread[] spreads, double[] sunHeight) {
            this.maxC = DailyNormals.of(maxC);
            this.minC = DailyNormals.of(minC);
            this.dewPointC = DailyNormals.of(dewPointC);
            this.spreads = spreads.clone();
            for (int day = 0; day < DAYS; day++) {
                int noon = noonHour(day, sunHeight);
                dawnHour[day] = noon - hoursFromDawnToNoon(day, sunHeight);
                hottestHour[day] = noon + HOURS_NOON_TO_HOTTEST;
            }
        }

        /** Hours from first light to noon; six where the sun does not set or rise. */
        private static int hoursFromDawnToNoon(int day, double[] sunHeight) {
            int light = 0;
            for (int hour = 24 * day; hour < 24 * (day + 1); hour++) {
                light += sunHeight[hour] > 0 ? 1 : 0;
            }
            return light > 4 && light < 20 ? light / 2 : 6;
        }

        /** The full hour next to the middle of the day's light, 10 to 15. */
        private static int noonHour(int day, double[] sunHeight) {
            double sum = 0;
            double moment = 0;
            for (int h = 0; h < 24; h++) {
                sum += sunHeight[24 * day + h];
                moment += sunHeight[24 * day + h] * (h + 0.5);
            }
            long noon = Math.round(sum > 0 ? moment / sum : 12);
            return (int) Math.min(15, Math.max(10, noon));
        }
    }

    /**
     * The days of one year.
     *
     * @param departures of each day, as {@link DayMemory} draws them
     */
    SyntheticDays(Usual usual, double[][] departures) {
        this.usual = usual;
        for (int day = 0; day < DAYS; day++) {
            DaySpread spread = usual.spreads[DailyNormals.monthOf(day)];
            maxC[day] = usual.maxC[day] + spread.maxK() * departures[day][DayMemory.HIGH];
            minC[day] = usual.minC[day] + spread.minK() * departures[day][DayMemory.LOW];
            dewPointC[day] = usual.dewPointC[day] + spread.dewPointK() * departures[day][DayMemory.DEW_POINT];
        }
    }

    /** Temperature at a full hour. */
    double airC(int day, int hour) {
        int dawn = usual.dawnHour[day];
        int hottest = usual.hottestHour[day];
        if (hour < dawn) {
            int before = (day + DAYS - 1) % DAYS;
            double falling = hour + 24.0 - usual.hottestHour[before];
            return between(highC(before), minC[day], falling / (dawn + 24 - usual.hottestHour[before]));
        }
        if (hour < hottest) {
            return between(minC[day], highC(day), (double) (hour - dawn) / (hottest - dawn));
        }
        int after = (day + 1) % DAYS;
        return between(highC(day), minC[after], (double) (hour - hottest) / (usual.dawnHour[after] + 24 - hottest));
    }

    /** Dew point at a full hour. */
    double dewPointC(int day, int hour) {
        double fromMidnight = hour < 12 ? hour : hour - 24;
        int before = (hour < 12 ? day + DAYS - 1 : day) % DAYS;
        double passed = Math.min(1, Math.max(0, 0.5 + fromMidnight / DEW_POINT_CHANGE_HOURS));
        double drawn = dewPointC[before] + passed * (dewPointC[(before + 1) % DAYS] - dewPointC[before]);
        return Math.min(drawn, airC(day, hour));
    }

    /**
     * Adds to monthly means by how much the highest and lowest hour and the mean dew point of each day differ from the high,
     * low and dew point that were drawn for it.
     *
     * @param sumsK by quantity and month
     * @param years over which the mean goes
     */
    void addStrayedK(double[][] sumsK, int years) {
        for (int day = 0; day < DAYS; day++) {
            double highestC = Double.NEGATIVE_INFINITY;
            double lowestC = Double.POSITIVE_INFINITY;
            double dewPointSumC = 0;
            for (int hour = 0; hour < 24; hour++) {
                double air = airC(day, hour);
                highestC = Math.max(highestC, air);
                lowestC = Math.min(lowestC, air);
                dewPointSumC += dewPointC(day, hour);
            }
            int month = DailyNormals.monthOf(day);
            double weight = 1.0 / (years * DailyNormals.date(day).lengthOfMonth());
            sumsK[0][month] += weight * (highestC - maxC[day]);
            sumsK[1][month] += weight * (lowestC - minC[day]);
            sumsK[2][month] += weight * (dewPointSumC / 24 - dewPointC[day]);
        }
    }

    private double highC(int day) {
        return Math.max(maxC[day], minC[day] + LEAST_SWING_K);
    }

    private static double between(double from, double to, double share) {
        return from + (to - from) * (1 - StrictMath.cos(Math.PI * share)) / 2;
    }
}
