package ampdays.sim;

import ampdays.sun.SunPath;
import ampdays.weather.SeriesInfo;

/** The sun over each interval of a weather series. */
public final class IntervalSun {
    private static final int SUN_STEP_SECONDS = 300;

    private final double[] height;
    private final double[] extraterrestrialWm2;

    private IntervalSun(double[] height, double[] extraterrestrialWm2) {
        this.height = height;
        this.extraterrestrialWm2 = extraterrestrialWm2;
    }

    /**
     * Follows the sun through a series.
     *
     * @param intervals number of intervals from the start of the series
     */
    public static IntervalSun of(SeriesInfo info, int intervals) {
        int step = info.stepSeconds() % SUN_STEP_SECONDS == 0 ? SUN_STEP_SECONDS : info.stepSeconds();
        int perInterval = info.stepSeconds() / step;
        SunPath path = SunPath.of(
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                info.startEpochSecond(),
                step,
                intervals * perInterval);
        double[] extraterrestrialWm2 = new double[intervals];
        for (int i = 0; i < intervals; i++) {
            extraterrestrialWm2[i] = path.extraterrestrialWm2(i * perInterval + perInterval / 2);
        }
        return new IntervalSun(path.meanCosZenith(perInterval), extraterrestrialWm2);
    }

    /** Mean of {@code max(cos z, 0)} over the interval. */
    public double height(int interval) {
        return height[interval];
    }

    /** Normal irradiance outside the atmosphere. */
    public double extraterrestrialWm2(int interval) {
        return extraterrestrialWm2[interval];
    }

    /** A copy of all mean heights. */
    public double[] heights() {
        return height.clone();
    }

    /** A copy of all normal irradiances outside the atmosphere. */
    public double[] extraterrestrialWm2() {
        return extraterrestrialWm2.clone();
    }
}
