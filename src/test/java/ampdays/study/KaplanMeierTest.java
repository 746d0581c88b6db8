package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Survival;
import ampdays.results.Survival.Step;
import ampdays.study.KaplanMeier.Life;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * The product-limit estimate against small cases by hand. The eight lives are the example of Kaplan and Meier (1958), section
 * 2 (from memory; the products below are worked out here).
 */
class KaplanMeierTest {
    private static final double ROUNDING = 1e-15;

    private static Life ends(double time) {
        return new Life(time, true);
    }

    private static Life watched(double time) {
        return new Life(time, false);
    }

    /** 7/8, then 4 of 5 still watched, 3 of 4, 1 of 2. */
    @Test
    void eightLivesOfWhichFourEnd() {
        Survival survival = KaplanMeier.of(List.of(
                watched(12.1), ends(0.8), watched(1.0), ends(3.1), watched(2.7), ends(5.4), watched(7.0), ends(9.2)));
        assertThat(survival.steps().stream().map(Step::day)).containsExactly(0.8, 3.1, 5.4, 9.2);
        double[] shares = {7 / 8.0, 7 / 8.0 * 4 / 5, 7 / 8.0 * 4 / 5 * 3 / 4, 7 / 8.0 * 4 / 5 * 3 / 4 / 2};
        for (int i = 0; i < shares.length; i++) {
            assertThat(survival.steps().get(i).share()).isCloseTo(shares[i], within(ROUNDING));
        }
        assertThat(survival.shareAfter(0.79)).isEqualTo(1);
        assertThat(survival.shareAfter(0.8)).isEqualTo(7 / 8.0);
        assertThat(survival.shareAfter(100)).isCloseTo(0.2625, within(ROUNDING));
    }

    /** A life watched until a time still counts among those watched at it; two ends at once are one fall. */
    @Test
    void tiesAreEndsFirst() {
        Survival survival = KaplanMeier.of(List.of(ends(2), ends(2), watched(2), watched(5)));
        assertThat(survival.steps()).containsExactly(new Step(2, 0.5));
    }

    /** Without lives cut short it is the plain share, here of ten trips of which seven end. */
    @Test
    void whereAllAreWatchedEquallyLongItIsThePlainShare() {
        List<Life> lives = DoubleStream.of(1, 2, 3, 4, 5, 6, 7, 14, 14, 14)
                .mapToObj(day -> new Life(day, day < 14))
                .toList();
        Survival survival = KaplanMeier.of(lives);
        for (int day = 0; day <= 7; day++) {
            assertThat(survival.shareAfter(day)).isCloseTo((10 - day) / 10.0, within(ROUNDING));
            assertThat(survival.dayOf(day / 10.0)).isEqualTo(Math.max(1, day));
        }
        assertThat(survival.dayOf(0.71)).isInfinite();
    }

    @Test
    void nobodyEndsOrAllDo() {
        assertThat(KaplanMeier.of(List.of(watched(3), watched(4))).steps()).isEmpty();
        assertThat(KaplanMeier.of(List.of(ends(3), ends(4), ends(4))).shareAfter(4))
                .isZero();
    }
}
