package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Checked against the rule that it states: least distance kept, order kept, moved as little as needed. */
class EndLabelsTest {
    @Test
    void labelsWithRoomStayWhereTheyAre() {
        assertThat(EndLabels.spread(List.of(80.0, 20.0, 50.0), 10, 0, 100)).containsExactly(80.0, 20.0, 50.0);
    }

    @Test
    void twoThatTouchMoveApartEvenly() {
        assertThat(EndLabels.spread(List.of(50.0, 52.0), 10, 0, 100)).containsExactly(46.0, 56.0);
    }

    @Test
    void allAtOnePlaceByTheEdgeStayInside() {
        assertThat(EndLabels.spread(List.of(0.0, 0.0, 0.0), 10, 0, 100)).containsExactly(0.0, 10.0, 20.0);
    }

    @Test
    void tooManyAreSpreadEvenly() {
        assertThat(EndLabels.spread(List.of(1.0, 2.0, 3.0), 80, 0, 100)).containsExactly(0.0, 50.0, 100.0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void neverNearerThanTheGapNeverOutOfOrderNeverOutside(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Double> wanted = Stream.generate(() -> random.nextDouble() * 100)
                .limit(2 + random.nextInt(7))
                .toList();
        List<Double> places = EndLabels.spread(wanted, 11, 3, 97);
        for (int i = 0; i < wanted.size(); i++) {
            assertThat(places.get(i)).isBetween(3 - 1e-9, 97 + 1e-9);
            for (int j = 0; j < wanted.size(); j++) {
                if (wanted.get(i) < wanted.get(j)) {
                    // a ten-millionth of a percent is rounding, not a covered label
                    assertThat(places.get(j) - places.get(i)).isGreaterThanOrEqualTo(11 - 1e-7);
                }
            }
        }
    }
}
