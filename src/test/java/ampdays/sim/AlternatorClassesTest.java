package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.sim.AlternatorBench.Pace;
import ampdays.sim.AlternatorBench.Reading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The generic classes of second alternators against the shares of nameplate that the trade reckons with. Source of every
 * band: common practice, no source, but where a comment names one. The regulator's cap is at the nameplate, so that the
 * machine itself is seen. Days of 35 and 45 °C with the engine's default rises give under-bonnet air of 75 and 85 °C at
 * idle, 55 and 65 °C on the road.
 */
class AlternatorClassesTest {
    private static final double MINUTE_S = 60;
    private static final double HALF_HOUR_S = 1800;

    private static AlternatorBench bench(String preset, double ratedA) {
        return AlternatorBench.of(new Van()
                .with("second-alternator.preset", preset)
                .with("second-alternator.cap", ratedA + " A")
                .variant());
    }

    private static double share(String preset, double ratedA, Pace pace, double airC, double soakS) {
        return bench(preset, ratedA).second(pace, airC, soakS).currentA() / ratedA;
    }

    /** Idle, cold, first minutes: 40 to 60 %; a large frame with a low cut-in 50 to 65 %. */
    @ParameterizedTest
    @CsvSource({"large frame, 280, 0.50, 0.65", "medium frame, 200, 0.40, 0.60", "small frame, 150, 0.40, 0.60"})
    void idleCold(String preset, double ratedA, double low, double high) {
        assertThat(share(preset, ratedA, Pace.IDLE, 23, MINUTE_S)).isBetween(low, high);
    }

    /** Idle, soaked for 20 to 30 min, on a day of 35 to 45 °C: 25 to 45 %. */
    @ParameterizedTest
    @CsvSource({
        "large frame, 280, 75",
        "large frame, 280, 85",
        "medium frame, 200, 75",
        "medium frame, 200, 85",
        "small frame, 150, 75",
        "small frame, 150, 85"
    })
    void idleHot(String preset, double ratedA, double airC) {
        assertThat(share(preset, ratedA, Pace.IDLE, airC, HALF_HOUR_S)).isBetween(0.25, 0.45);
    }

    /** High idle of 1,100 to 1,300 1/min, hot: 50 to 70 %. */
    @ParameterizedTest
    @CsvSource({
        "large frame, 280, 75",
        "large frame, 280, 85",
        "medium frame, 200, 75",
        "medium frame, 200, 85",
        "small frame, 150, 75",
        "small frame, 150, 85"
    })
    void fastIdleHot(String preset, double ratedA, double airC) {
        assertThat(share(preset, ratedA, Pace.FAST_IDLE, airC, HALF_HOUR_S)).isBetween(0.50, 0.70);
    }

    /** Cruise, cold: 90 to 100 % (manuals of makers). */
    @ParameterizedTest
    @CsvSource({"large frame, 280", "medium frame, 200", "small frame, 150"})
    void cruiseCold(String preset, double ratedA) {
        assertThat(share(preset, ratedA, Pace.CRUISE, 23, MINUTE_S)).isBetween(0.90, 1.0);
    }

    /** Cruise, hot and steady: 65 to 85 % (75 %: a maker's loss of a quarter). */
    @ParameterizedTest
    @CsvSource({
        "large frame, 280, 55",
        "large frame, 280, 65",
        "medium frame, 200, 55",
        "medium frame, 200, 65",
        "small frame, 150, 55",
        "small frame, 150, 65"
    })
    void cruiseHot(String preset, double ratedA, double airC) {
        assertThat(share(preset, ratedA, Pace.CRUISE, airC, HALF_HOUR_S)).isBetween(0.65, 0.85);
    }

    /**
     * Source: service data of two makers of cars (2017, 2018): with engine and generator hot, in 20 °C air, at least 70 %
     * of nominal; others call 60 % a pass. A machine is sound at both, and it can not give more than its nameplate.
     */
    @ParameterizedTest
    @CsvSource({"large frame, 280", "medium frame, 200", "small frame, 150"})
    void passesTheWorkshopTest(String preset, double ratedA) {
        double riseOnTheRoadK = 20;
        assertThat(share(preset, ratedA, Pace.CRUISE, 20 + riseOnTheRoadK, HALF_HOUR_S))
                .isBetween(0.70, 1.0);
    }

    /**
     * Source: thin air cools less, in proportion to its density (general engineering, from memory): 0.69 of it is left at
     * 3,000 m, and a machine that its heat holds back gives less, but not less than that share of its output.
     */
    @ParameterizedTest
    @CsvSource({"large frame, 280", "medium frame, 200", "small frame, 150"})
    void thinAirCostsOutput(String preset, double ratedA) {
        Van van = new Van().with("second-alternator.preset", preset).with("second-alternator.cap", ratedA + " A");
        Reading atSea = AlternatorBench.of(van.variant()).second(Pace.FAST_IDLE, 75, HALF_HOUR_S);
        Reading high = AlternatorBench.of(van.with("place.elevation", "3000 m").variant())
                .second(Pace.FAST_IDLE, 75, HALF_HOUR_S);
        assertThat(high.currentA() / atSea.currentA()).isBetween(0.69, 0.99);
        assertThat(high.caseC()).isGreaterThan(atSea.caseC());
    }
}
