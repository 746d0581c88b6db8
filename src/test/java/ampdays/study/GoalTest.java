package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Metric;
import ampdays.results.RunResult;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Goals as they are written, on invented runs: 14 days, reserve 20 %, lowest charge 5 %, 13 nights. No outside source. */
class GoalTest {
    private static final List<Metric> METRICS = Metric.all(List.of("alarms and monitors", "lights"));
    private static final RunResult EMPTY = VerdictTest.run("a", 7, false, 9);
    private static final RunResult HOLDS = VerdictTest.run("b", Double.NaN, true, 13);

    private static boolean reached(String text, RunResult run) {
        return Goal.read(text, METRICS).stream().allMatch(goal -> goal.isReached(run));
    }

    @ParameterizedTest
    @CsvSource({
        "holds, false, true",
        "daysToEmpty >= 7, true, true",
        "daysToEmpty > 7, false, true",
        "daysToEmpty >= 168 h, true, true",
        "daysToEmpty>=7 days, true, true",
        "days to empty (days) ≥ 7.01, false, true",
        "daysToEmpty <= 7, true, false",
        "daysToEmpty >= tripDays, false, true",
        "lowestSoc >= 5 %, true, true",
        "lowestSoc < 5 %, false, false",
        "lowestSoc >= reserve, false, false",
        "comfortableNights >= nights, false, true",
        "comfortableNights >= 9 and daysToEmpty >= 7, true, true",
        "comfortableNights >= 10 and daysToEmpty >= 7, false, true",
        "unservedWh.alarms and monitors <= 0.1 kWh and holds, false, true",
        "alternatorPeakCaseC <= 110 °C, true, true",
        "alternatorPeakCaseC <= 230 °F, true, true",
        "alternatorPeakCaseC >= 20 °C, false, false",
        "trendPerDay >= -1.5 %, true, true",
        "fuelLitres <= 0 gal, true, true",
        "limitHours.charger rating <= 60 min, true, true",
    })
    void aGoalIsReachedOrNot(String text, boolean ofEmpty, boolean ofHolding) {
        assertThat(reached(text, EMPTY)).isEqualTo(ofEmpty);
        assertThat(reached(text, HOLDS)).isEqualTo(ofHolding);
    }

    @Test
    void joinedGoalsAreReadApart() {
        assertThat(Goal.read("holds and unservedWh.alarms and monitors <= 0 and lowestSoc >= 30 %", METRICS))
                .extracting(Goal::text)
                .containsExactly("holds", "unservedWh.alarms and monitors <= 0", "lowestSoc >= 30 %");
    }

    /** By hand: 7 days of 10 wanted are short by 0.3 of the bound; never empty counts one whole bound at most. */
    @Test
    void marginsCompareRuns() {
        Goal goal = Goal.read("daysToEmpty >= 10", METRICS).get(0);
        assertThat(goal.margin(EMPTY)).isEqualTo(-0.3, within(1e-12));
        assertThat(goal.margin(HOLDS)).isEqualTo(1);
    }

    /** By their order: of runs that do not hold the one comes nearer that lasts longer, then whose charge stays higher, then falls less. */
    @Test
    void runsThatDoNotHoldAreOrdered() {
        Goal goal = Goal.read("holds", METRICS).get(0);
        double[] margins = Stream.of(
                        VerdictTest.failing(0.06, 0.19, -0.0),
                        VerdictTest.failing(7, 0.05, 0.001),
                        VerdictTest.failing(7, 0.06, -0.03),
                        VerdictTest.failing(7 + 1 / 1440.0, 0, -0.03),
                        VerdictTest.failing(14, 0.20, -0.03),
                        VerdictTest.failing(Double.NaN, 0.3, -0.02),
                        VerdictTest.failing(Double.NaN, 0.3, -0.01),
                        VerdictTest.failing(Double.NaN, 0.301, Double.NaN))
                .mapToDouble(goal::margin)
                .toArray();
        assertThat(margins).isSorted().doesNotHaveDuplicates();
        assertThat(margins[margins.length - 1]).isNegative();
        assertThat(goal.margin(HOLDS)).isZero();
    }

    /** On 14 days nobody has seen 20. */
    @Test
    void whatTheTripCannotShowIsNotReached() {
        assertThat(reached("daysToEmpty >= 20", HOLDS)).isFalse();
        assertThat(reached("daysToEmpty <= 20", HOLDS)).isFalse();
    }
}
