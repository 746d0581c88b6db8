package ampdays.alternator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputCurveTest {
    private static OutputPoint at(double rotorRpm, double currentA) {
        return new OutputPoint(rotorRpm, currentA);
    }

    /** Source: scipy.interpolate.PchipInterpolator (version 1.17.1), the same method; printed to nine decimals. */
    @ParameterizedTest
    @CsvSource({
        "1300, 39.771367193", "1600, 91.775356759", "2100, 156.014344617", "2400, 183.75870552",
        "3000, 213.036533987", "3900, 238.318707162", "5000, 253.947368421", "5900, 259.93"
    })
    void lineThroughPoints(double rotorRpm, double currentA) {
        MonotoneCurve curve =
                MonotoneCurve.through(List.of(at(1100, 0), at(1800, 120), at(2500, 190), at(4000, 240), at(6000, 260)));
        assertThat(curve.at(rotorRpm)).isCloseTo(currentA, within(1e-8));
    }

    /** Source: as above; a level piece between two rises stays level. */
    @ParameterizedTest
    @CsvSource({"1500, 34.375", "2500, 50", "3200, 56.72"})
    void lineDoesNotOvershoot(double rotorRpm, double currentA) {
        MonotoneCurve curve = MonotoneCurve.through(List.of(at(1000, 0), at(2000, 50), at(3000, 50), at(3500, 80)));
        assertThat(curve.at(rotorRpm)).isCloseTo(currentA, within(1e-8));
    }

    private static final PointCurve SMALL_MARINE = new PointCurve(
            List.of(at(1300, 24), at(2500, 50)), List.of(at(1300, 16), at(2500, 41), at(5000, 48)), 863, 130);

    /**
     * Source: data sheet of a 50 A machine (Westerbeke 33A engine manual, p. 83): points typed in come out again, cold at
     * 25 °C and hot at the winding temperature that we take "hot" for.
     */
    @ParameterizedTest
    @CsvSource({"1300, 130, 16", "2500, 130, 41", "5000, 130, 48", "1300, 25, 24", "2500, 25, 50"})
    void typedPointsComeOutAgain(double rotorRpm, double windingC, double currentA) {
        assertThat(SMALL_MARINE.currentA(rotorRpm, windingC)).isCloseTo(currentA, within(1e-9));
    }

    /**
     * Source: the same sheet. From its two cold points alone, the laws of temperature foretell the hot ones. Printed to
     * the ampere, laws fitted to these five points by three numbers: within 2 A.
     */
    @ParameterizedTest
    @CsvSource({"1300, 16", "2500, 41"})
    void coldPointsForetellHotOnes(double rotorRpm, double currentA) {
        PointCurve coldOnly = new PointCurve(List.of(at(1300, 24), at(2500, 50)), List.of(), 863, 130);
        assertThat(coldOnly.currentA(rotorRpm, 130)).isCloseTo(currentA, within(2.0));
    }

    /** A cold curve in close points acts like the formula they were read from, cold and hot (identity). */
    @Test
    void pointsOfTheFormulaActLikeTheFormula() {
        FormulaCurve formula = new FormulaCurve(280, 1100, 1400);
        List<OutputPoint> points = new ArrayList<>(List.of(at(1100, 0)));
        for (int rpm = 1200; rpm <= 8000; rpm += 200) {
            points.add(at(rpm, formula.currentA(rpm, 25)));
        }
        PointCurve typed = new PointCurve(points, List.of(), 1100, 130);
        for (int rpm = 1500; rpm <= 7000; rpm += 125) {
            for (int windingC = 0; windingC <= 160; windingC += 20) {
                assertThat(typed.currentA(rpm, windingC)).isCloseTo(formula.currentA(rpm, windingC), within(0.3));
            }
        }
    }

    /** Never fewer amps with more speed, never more with heat (identity); also beyond the points' own temperatures. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void monotoneInSpeedAndHeat(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        OutputCurve curve = randomCurve(random);
        WindingTable[] tables = new WindingTable[60];
        for (int i = 0; i < tables.length; i++) {
            double rotorRpm = 500 + 150 * i;
            tables[i] = new WindingTable(windingC -> curve.currentA(rotorRpm, windingC));
        }
        for (int i = 0; i < tables.length; i++) {
            for (double windingC = -40; windingC <= 220; windingC += 6.5) {
                double now = curve.currentA(500 + 150 * i, windingC);
                assertThat(now).isNotNegative();
                assertThat(curve.currentA(500 + 150 * i + 40, windingC)).isGreaterThanOrEqualTo(now - 1e-9);
                assertThat(curve.currentA(500 + 150 * i, windingC + 5)).isLessThanOrEqualTo(now + 1e-9);
                assertThat(tables[i].currentA(windingC)).isCloseTo(now, within(0.002 * curve.endA()));
            }
        }
    }

    static OutputCurve randomCurve(RandomGenerator random) {
        double cutIn = 800 + 600 * random.nextDouble();
        if (random.nextBoolean()) {
            return new FormulaCurve(100 + 200 * random.nextDouble(), cutIn, 700 + 1200 * random.nextDouble());
        }
        List<OutputPoint> cold = new ArrayList<>();
        List<OutputPoint> hot = new ArrayList<>();
        double rpm = cutIn + 400;
        double amps = 20 + 60 * random.nextDouble();
        double hotShare = 0.6;
        for (int i = 0; i < 4; i++) {
            cold.add(at(rpm, amps));
            hot.add(at(rpm + 100, amps * hotShare));
            rpm += 300 + 1200 * random.nextDouble();
            amps += 70 * random.nextDouble();
            hotShare += 0.07;
        }
        return new PointCurve(cold, random.nextBoolean() ? hot : List.of(), cutIn, 100 + 50 * random.nextDouble());
    }

    @Test
    void refusesPointsThatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PointCurve(List.of(at(1800, 120), at(2500, 100)), List.of(), 1100, 130))
                .withMessageContaining("must not fall with speed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PointCurve(
                        List.of(at(1800, 120), at(2500, 190)), List.of(at(1800, 130), at(2500, 150)), 1100, 130))
                .withMessageContaining("more than the cold points at 1800 rpm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PointCurve(List.of(at(1000, 20), at(2500, 100)), List.of(), 1100, 130))
                .withMessageContaining("give a lower cut-in");
    }

    /** A cap by speed is straight between its points and level outside them (definition). */
    @ParameterizedTest
    @CsvSource({"1000, 60", "1500, 60", "2000, 105", "2500, 150", "6000, 150"})
    void capBySpeed(double rotorRpm, double currentA) {
        assertThat(OutputPoint.straightA(List.of(at(1500, 60), at(2500, 150)), rotorRpm))
                .isCloseTo(currentA, within(1e-9));
    }
}
