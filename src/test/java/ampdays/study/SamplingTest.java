package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Bounded;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bounds of shares and places against published values and against drawing again and again. */
class SamplingTest {
    /**
     * R. G. Newcombe (1998), Two-sided confidence intervals for the single proportion, Statistics in Medicine 17, table I,
     * method 3 (from memory), to the four digits printed there.
     */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0, 0.1611", "1, 29, 0.0061, 0.1718"})
    void shareHasTheBoundsOfThePaper(int hits, int count, double low, double high) {
        Bounded share = Sampling.share(hits, count);
        assertThat(share.value()).isEqualTo((double) hits / count);
        assertThat(share.low()).isCloseTo(low, within(0.00005));
        assertThat(share.high()).isCloseTo(high, within(0.00005));
    }

    /** By symmetry the bounds of a share are those of its complement. */
    @Test
    void allIsTheMirrorOfNone() {
        Bounded none = Sampling.share(0, 20);
        Bounded all = Sampling.share(20, 20);
        assertThat(all.high()).isEqualTo(1);
        assertThat(all.low()).isCloseTo(1 - none.high(), within(1e-15));
    }

    /** Places of 1 to 10: a tenth lies at or below 1, half at or below 5, nine tenths at or below 9. */
    @Test
    void placesAreRanks() {
        double[] values = DoubleStream.iterate(10, v -> v - 1).limit(10).toArray();
        assertThat(Sampling.place(0.1, values).value()).isEqualTo(1);
        assertThat(Sampling.place(0.5, values).value()).isEqualTo(5);
        assertThat(Sampling.place(0.9, values).value()).isEqualTo(9);
        values[0] = Double.POSITIVE_INFINITY;
        assertThat(Sampling.place(0.9, values).value()).isEqualTo(9);
        assertThat(Sampling.place(0.9, values).high()).isInfinite();
    }

    /**
     * Of 4,000 samples of 100 even numbers, 95 % within the bounds; ranks are whole, so the true share is up to 1.5 points
     * more or less, and drawing adds 0.7 points (two standard deviations).
     */
    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "0.9"})
    void theTruthLiesWithinTheBoundsAsOftenAsTheySay(double p) {
        Random random = new Random(20);
        int within = 0;
        for (int sample = 0; sample < 4000; sample++) {
            Bounded place = Sampling.place(p, random.doubles(100).toArray());
            within += place.low() <= p && p <= place.high() ? 1 : 0;
        }
        assertThat(within / 4000.0).isBetween(0.93, 0.972);
    }

    /** By hand: off by 4 points is good for tens; the nearest whole percent takes 8 times less, so 64 times as many. */
    @Test
    void digitsFollowFromWhatAShareIsOffBy() {
        assertThat(Digits.unit(0.04)).isCloseTo(0.1, within(1e-12));
        assertThat(Digits.unit(0.05)).isCloseTo(0.1, within(1e-12));
        assertThat(Digits.unit(0.051)).isCloseTo(1, within(1e-12));
        assertThat(Digits.samplesFor(0.01, 0.04, 256)).isCloseTo(64 * 256, within(1e-6));
    }
}
