package ampdays.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.PresetReader;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.VariantBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RefrigeratorTest {
    private static RefrigeratorSpec preset(String... more) {
        Values values = Values.empty(PresetReader.presets())
                .with("place.latitude", "0°")
                .with("place.longitude", "0°")
                .with("place.zone", "UTC")
                .with("weather", "none.csv")
                .with("trip.start", "2025-07-01")
                .with("trip.days", "1")
                .with("trip.timetable", "00:00 park open, awake")
                .with("cabin.preset", "high-roof van, insulated")
                .with("battery.preset", "lithium iron phosphate 12 V")
                .with("battery.capacity", "100 Ah")
                .with("refrigerator.preset", "90 L compressor");
        for (int i = 0; i < more.length; i += 2) {
            values = values.with(more[i], more[i + 1]);
        }
        try {
            return VariantBuilder.build("test", values).design().refrigerator().orElseThrow();
        } catch (ScenarioException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Mean of ten days in which people are up for sixteen hours. */
    private static double dailyWh(RefrigeratorSpec spec, double ambientC) {
        Refrigerator box = new Refrigerator(spec, 60);
        double joules = 0;
        for (int i = 0; i < 15 * 1440; i++) {
            box.step(ambientC, i % 1440 >= 420 && i % 1440 < 1380, true);
            joules += i >= 5 * 1440 ? box.askedW() * 60 : 0;
        }
        return joules / 3600 / 10;
    }

    /** Source: one seller's figures for compressor refrigerators (common practice). */
    @ParameterizedTest
    @CsvSource({"21, 300, 400", "29, 400, 600", "38, 600, 900"})
    void ninetyLitresByAmbient(double ambientC, double leastWh, double mostWh) {
        assertThat(dailyWh(preset(), ambientC)).isBetween(leastWh, mostWh);
    }

    /**
     * Source: household refrigerators, 20 to 33 °C: 15 to 53 % more (Int. J. Energy Engineering), and the Carnot-type
     * model beside it: E(33)/E(20) within 1.15 to 2.4, E(38)/E(25) within 1.4 to 2.1; it rises ever faster.
     */
    @Test
    void growthWithAmbient() {
        assertThat(dailyWh(preset(), 33) / dailyWh(preset(), 20)).isBetween(1.15, 2.4);
        assertThat(dailyWh(preset(), 38) / dailyWh(preset(), 25)).isBetween(1.4, 2.1);
        double slope = 0;
        for (int ambientC = 18; ambientC <= 42; ambientC += 4) {
            double next = dailyWh(preset(), ambientC + 4) - dailyWh(preset(), ambientC);
            assertThat(next).isGreaterThan(slope);
            slope = next;
        }
    }

    /** A niche without vents costs more, and the more the hotter (identity: a warmer condenser). */
    @Test
    void closedNiche() {
        double mild = dailyWh(preset("refrigerator.box", "closed"), 22) / dailyWh(preset(), 22);
        assertThat(preset("refrigerator.box", "closed").condenserRiseK()).isEqualTo(12);
        assertThat(mild).isBetween(1.1, 1.5);
    }

    /** Warm food brings its heat once: over two days the compressor carries it off at its coefficient (balance). */
    @Test
    void warmFoodIsCarriedOff() {
        RefrigeratorSpec spec = preset("refrigerator.shopping", "100 Wh", "refrigerator.daily-use", "0 Wh");
        Refrigerator stocked = new Refrigerator(spec, 60);
        Refrigerator without = new Refrigerator(spec, 60);
        stocked.stock();
        double moreWh = 0;
        for (int i = 0; i < 2 * 1440; i++) {
            stocked.step(28, false, true);
            without.step(28, false, true);
            moreWh += (stocked.askedW() - without.askedW()) / 60;
        }
        double cop = Refrigerator.cop(4, 31, spec.approachK(), spec.carnotShare());
        // one cycle of the thermostat, 2 K of 60 kJ/K, is 33 Wh of heat
        assertThat(moreWh * cop).isCloseTo(100, within(34.0));
    }
}
