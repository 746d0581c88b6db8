package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Every boundary in a range is found exactly, from both sides; by definition of a boundary, no outside source. */
class BoundaryTest {
    @Test
    void everyStepUpAndDownIsFound() {
        for (int last = 1; last <= 70; last++) {
            for (int step = 1; step <= last; step++) {
                int first = step;
                assertThat(Boundary.between(0, last, at -> at >= first)).isEqualTo(first);
                assertThat(Boundary.between(last, 0, at -> at < first)).isEqualTo(first - 1);
            }
        }
        assertThat(Boundary.between(0, 999_999, at -> at >= 123_457)).isEqualTo(123_457);
    }

    /** Where it is not monotone, still a place where it is true beside one where it is not. */
    @Test
    void anyBoundaryWillDo() {
        int found = Boundary.between(0, 90, at -> at / 10 % 2 == 1);
        assertThat(found / 10 % 2).isEqualTo(1);
        assertThat((found - 1) / 10 % 2).isZero();
    }
}
