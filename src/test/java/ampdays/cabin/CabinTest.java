package ampdays.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.cooling.Cooler;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.CoolingCurves;
import org.junit.jupiter.api.Test;

/** Identities of the cabin with an air conditioner; they need no source. */
class CabinTest {
    private static final double[] STILL = {0};

    static CabinSpec spec(double leakM2) {
        return new CabinSpec(
                9,
                19,
                8,
                2.5,
                0.025,
                0.035,
                0.3,
                1.2,
                5.8,
                0.3,
                0.65,
                0.3,
                new Covers(Covers.Use.PARKED, 0.5, 0.2),
                new Faces(Double.NaN, 0.8, 0.5, 0.4),
                13,
                0.5,
                5,
                leakM2,
                20,
                60_000,
                600_000,
                150,
                0.3,
                2,
                24,
                24,
                Double.NaN,
                Double.NaN,
                15,
                26);
    }

    private static double toOutsideWK() {
        return CabinPhysics.envelopeWK(spec(0), false) + CabinPhysics.airChangesWK(13, 0.5, 1);
    }

    /** Left alone it falls to the outside temperature with the slower eigenvalue of its two equations. */
    @Test
    void decaysWithTheSlowEigenvalue() {
        Cabin cabin = new Cabin(spec(0), STILL, 1, 45, 0.008, 60);
        double k = toOutsideWK();
        double trace = -(k + 150) / 60_000 - 150.0 / 600_000;
        double determinant = k * 150 / (60_000.0 * 600_000);
        double slow = trace / 2 + Math.sqrt(trace * trace / 4 - determinant);
        double early = 0;
        for (int minute = 1; minute <= 600; minute++) {
            cabin.open(0, false, false, 20, 0, 0, 0);
            cabin.floatFree();
            early = minute == 300 ? cabin.airC() - 20 : early;
        }
        assertThat(Math.log((cabin.airC() - 20) / early) / (300 * 60)).isCloseTo(slow, within(1e-9));
    }

    private static CoolerSpec cooler(boolean variableSpeed, double capacityW) {
        return new CoolerSpec(
                capacityW,
                2.6,
                CoolingCurves.WINDOW,
                variableSpeed,
                0.3,
                0.5,
                0.25,
                1,
                180,
                180,
                0,
                11.7,
                0.6,
                11.4,
                12.5,
                1,
                false);
    }

    /** Held at one temperature it takes UA (To - T) out; a thermostat that cycles takes as much out on average. */
    @Test
    void coolingIsTheGain() {
        for (boolean variableSpeed : new boolean[] {true, false}) {
            Cabin cabin = new Cabin(spec(0), STILL, 1, 24, 0.006, 60);
            Cooler cooler = new Cooler(cooler(variableSpeed, 2000));
            double cooledW = 0;
            double airC = 0;
            double inputW = 0;
            double totalW = 0;
            int minutes = 10 * 1440;
            for (int i = 0; i < minutes + 1440; i++) {
                cabin.open(0, false, false, 36, 0, 0, 0);
                cooler.step(cabin.nodes(), cabin.airC(), cabin.massC(), cabin.q1W(), cabin.q2W(), 24, 14, 36, 13);
                cabin.cooledTo(cooler.node1C(), cooler.node2C());
                cooledW += i >= 1440 ? cooler.sensibleW() / minutes : 0;
                inputW += i >= 1440 ? cooler.inputW() / minutes : 0;
                totalW += i >= 1440 ? (cooler.sensibleW() + cooler.latentW()) / minutes : 0;
                airC += i >= 1440 ? cabin.massC() / minutes : 0;
            }
            double gainW = toOutsideWK() * (36 - airC);
            assertThat(cooledW).isCloseTo(gainW, within(0.005 * gainW));
            // energy of the fixed-speed unit is its duty times its full input
            double fullW = 2000 * CoolingCurves.WINDOW.capacityFactor(14, 36);
            double fullInputW = fullW * CoolingCurves.WINDOW.inputFactor(14, 36) / 2.6;
            if (!variableSpeed) {
                assertThat(inputW / fullInputW).isCloseTo(totalW / fullW, within(1e-9));
            }
        }
    }

    /** A unit too small runs all the time, at its full input, and the air floats at To - Q/UA. */
    @Test
    void dutySaturates() {
        Cabin cabin = new Cabin(spec(0), STILL, 1, 24, 0.006, 60);
        Cooler cooler = new Cooler(cooler(false, 500));
        for (int i = 0; i < 5 * 1440; i++) {
            cabin.open(0, false, false, 45, 0, 0, 0);
            cooler.step(cabin.nodes(), cabin.airC(), cabin.massC(), cabin.q1W(), cabin.q2W(), 24, 14, 45, 13);
            cabin.cooledTo(cooler.node1C(), cooler.node2C());
        }
        double fullW = 500 * CoolingCurves.WINDOW.capacityFactor(14, 45);
        assertThat(cooler.inputW()).isCloseTo(fullW * CoolingCurves.WINDOW.inputFactor(14, 45) / 2.6, within(1e-6));
        assertThat(cabin.airC()).isCloseTo(45 - cooler.sensibleW() / toOutsideWK(), within(1e-3));
    }

    /** Moisture at rest: what people give off leaves with the air changes, w = wo + L/(2.45e6 m). */
    @Test
    void moistureBalances() {
        Cabin cabin = new Cabin(spec(0), new double[] {0, 600}, 1, 25, 0.004, 60);
        for (int i = 0; i < 20 * 1440; i++) {
            cabin.open(0, false, false, 25, 0, 0, 0);
            cabin.moisten(0.008, 90, 0);
        }
        double closedKgS = 13 * 1.2 * 0.5 / 3600;
        assertThat(cabin.humidityRatio()).isCloseTo(0.008 + 90 / 2.45e6 / closedKgS, within(1e-7));
        for (int i = 0; i < 20 * 1440; i++) {
            cabin.open(1, false, false, 25, 0, 0, 0);
            cabin.moisten(0.008, 90, 0);
        }
        double fanKgS = closedKgS + 600 * 1.2 / 3600;
        assertThat(cabin.humidityRatio()).isCloseTo(0.008 + 90 / 2.45e6 / fanKgS, within(1e-7));
    }

    /** A leak of the same flow acts like constant air changes, but for one step's lag. */
    @Test
    void leakActsLikeAirChanges() {
        double flowM3S = 13 * 0.5 / 3600;
        double areaM2 = flowM3S / CabinPhysics.leakM3S(1, 0, 3);
        Cabin leaky = new Cabin(spec(areaM2), STILL, 1, 20, 0.008, 60);
        Cabin steady = new Cabin(spec(0), STILL, 1, 20, 0.008, 60);
        for (int i = 0; i < 1440; i++) {
            leaky.open(0, false, false, 20, 1500, 0, 0);
            leaky.leak(20, 3);
            leaky.floatFree();
            steady.open(0, false, false, 20, 1500, 0, 0);
            steady.floatFree();
        }
        // some 20 K of warmth drive more air through the leak: it must be a little cooler, not more than by that
        double more = CabinPhysics.leakM3S(areaM2, steady.airC() - 20, 3) / flowM3S;
        double atMostK = (steady.airC() - 20) * (more - 1) * CabinPhysics.airChangesWK(13, 0.5, 1) / toOutsideWK();
        assertThat(steady.airC() - leaky.airC()).isBetween(0.5 * atMostK, atMostK);
    }
}
