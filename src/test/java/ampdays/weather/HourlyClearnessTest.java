package ampdays.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HourlyClearnessTest {
    private static final double OUTSIDE_WM2 = 1366;

    /** Sine of the sun's height in the middle of each hour. */
    private static double[] heights(double latitudeDeg, double declinationDeg) {
        double[] heights = new double[24];
        double latitude = Math.toRadians(latitudeDeg);
        double declination = Math.toRadians(declinationDeg);
        for (int hour = 0; hour < 24; hour++) {
            double angle = Math.toRadians(15 * (hour - 11.5));
            double height = Math.sin(latitude) * Math.sin(declination)
                    + Math.cos(latitude) * Math.cos(declination) * Math.cos(angle);
            heights[hour] = height > 0 ? height : 0;
        }
        return heights;
    }

    /**
     * What the model is for (Aguiar and Collares-Pereira 1992): the trend of the hours adds up to the day it was asked for,
     * to 0.06 over latitudes and seasons. A constant remembered wrongly would show here.
     */
    @ParameterizedTest
    @CsvSource({"33, 0", "33, 23", "33, -20", "50, 0", "15, 10"})
    void hoursOfTheTrendMakeTheDay(double latitudeDeg, double declinationDeg) {
        double[] heights = heights(latitudeDeg, declinationDeg);
        for (double day = 0.1; day < 0.76; day += 0.05) {
            double light = 0;
            double outside = 0;
            for (double height : heights) {
                if (height > 0) {
                    light += height * HourlyClearness.trend(day, height);
                    outside += height;
                }
            }
            assertThat(light / outside).as("day of %.2f", day).isCloseTo(day, within(0.06));
        }
    }

    /** Worked by hand from the printed formulas: day 0.5, sun at sine 0.8. */
    @Test
    void workedExample() {
        assertThat(HourlyClearness.trend(0.5, 0.8)).isCloseTo(0.558, within(0.001));
        assertThat(HourlyClearness.spread(0.5, 0.8)).isCloseTo(0.0989, within(0.0005));
        assertThat(HourlyClearness.memory(0.5)).isCloseTo(0.38 + 0.06 * Math.cos(1.2), within(1e-9));
    }

    /** Identities: the hours add up to the day's light exactly, there is none by night, and clouds make hours differ. */
    @ParameterizedTest
    @CsvSource({"0.1", "0.3", "0.5", "0.7", "0.8"})
    void drawnHoursAddUpToTheDay(double day) {
        double[] heights = heights(33, 10);
        double[] outsideWm2 = new double[24];
        Arrays.fill(outsideWm2, OUTSIDE_WM2);
        double[] ghiWm2 = new double[24];
        double[] before = new double[24];
        Gaussians gaussians = new Gaussians(4);
        for (int i = 0; i < 100; i++) {
            HourlyClearness.draw(day, heights, outsideWm2, 0, gaussians, ghiWm2);
            double light = 0;
            double outside = 0;
            for (int hour = 0; hour < 24; hour++) {
                assertThat(ghiWm2[hour]).isBetween(0.0, OUTSIDE_WM2 * heights[hour]);
                light += ghiWm2[hour];
                outside += OUTSIDE_WM2 * heights[hour];
            }
            assertThat(light / outside).isCloseTo(day, within(1e-12));
            assertThat(ghiWm2).isNotEqualTo(before);
            before = ghiWm2.clone();
        }
    }
}
