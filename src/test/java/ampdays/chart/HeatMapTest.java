package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.chart.HeatMap.Segment;
import ampdays.chart.HeatMap.Tile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** Contours against surfaces whose level lines are known in closed form. */
class HeatMapTest {
    private static final List<Double> AT = List.of(0.0, 1.0, 2.0, 3.0, 4.0);

    private static HeatMap map(DoubleBinaryOperator days) {
        List<List<Double>> rows = new ArrayList<>();
        for (double y : AT) {
            rows.add(AT.stream().map(x -> days.applyAsDouble(x, y)).toList());
        }
        return new HeatMap(
                "", "", "", "", AT, AT, rows, Collections.nCopies(5, Collections.nCopies(5, Tile.DAYS)), List.of());
    }

    private static double length(List<Segment> segments) {
        return segments.stream()
                .mapToDouble(s -> Math.hypot(s.x2() - s.x1(), s.y2() - s.y1()))
                .sum();
    }

    /** On the plane z = x + y interpolation is exact: the level 2.5 is the line x + y = 2.5, of length 2.5 √2. */
    @Test
    void thePlaneHasStraightContours() {
        List<Segment> segments = map((x, y) -> x + y).contour(2.5);
        assertThat(segments).allSatisfy(s -> {
            assertThat(s.x1() + s.y1()).isCloseTo(2.5, within(1e-12));
            assertThat(s.x2() + s.y2()).isCloseTo(2.5, within(1e-12));
        });
        assertThat(length(segments)).isCloseTo(2.5 * Math.sqrt(2), within(1e-12));
    }

    /** Around a single peak on a grid of points the contour at half its height is a square with sides of √2 / 2. */
    @Test
    void aPeakHasAClosedContour() {
        List<Segment> segments = map((x, y) -> x == 2 && y == 2 ? 1 : 0).contour(0.5);
        assertThat(segments).hasSize(4);
        assertThat(length(segments)).isCloseTo(4 * Math.sqrt(0.5), within(1e-12));
    }

    /** Where two opposite corners are high, their mean decides: above the level, the high corners are joined. */
    @Test
    void aSaddleIsCutByItsMean() {
        HeatMap saddle = new HeatMap(
                "",
                "",
                "",
                "",
                List.of(0.0, 1.0),
                List.of(0.0, 1.0),
                List.of(List.of(1.0, 0.0), List.of(0.0, 1.0)),
                Collections.nCopies(2, Collections.nCopies(2, Tile.DAYS)),
                List.of());
        assertThat(saddle.contour(0.25))
                .allSatisfy(s -> assertThat(Math.signum(s.x1() - s.y1())).isEqualTo(Math.signum(s.x2() - s.y2())));
        assertThat(saddle.contour(0.75))
                .allSatisfy(
                        s -> assertThat(Math.signum(s.x1() + s.y1() - 1)).isEqualTo(Math.signum(s.x2() + s.y2() - 1)));
        assertThat(saddle.contour(0.25)).hasSize(2);
    }

    @Test
    void noContourBesideWhatIsNeverEmpty() {
        assertThat(map((x, y) -> x + y > 3 ? Double.NaN : x + y).contour(3.5)).isEmpty();
    }
}
