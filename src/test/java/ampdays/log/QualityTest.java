package ampdays.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.log.LogMap.Column;
import ampdays.log.LogMap.Time;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a log's quality says, on logs whose truth is known by construction; sums by hand. */
class QualityTest {
    private static final long START = 1_783_468_800L;
    private static final List<Column> COLUMNS = List.of(
            column(Signal.BANK_VOLTAGE, true, null),
            column(Signal.BANK_CURRENT, true, null),
            column(Signal.STATE_OF_CHARGE, true, null),
            column(Signal.ENERGY_OUT, true, CounterKind.LIFETIME),
            column(Signal.CHARGE_IN, true, CounterKind.PER_ROW));

    private static final List<Column> SUN =
            List.of(column(Signal.SOLAR_POWER, true, null), column(Signal.SOLAR_ENERGY, true, CounterKind.LIFETIME));

    private static Column column(Signal signal, boolean chargeIsPlus, CounterKind counter) {
        return new Column(signal, signal.label(), "", 1, 0, "", chargeIsPlus, counter);
    }

    private static LogBuilder builder(List<Column> columns, double usualSeconds) {
        LogMap map = new LogMap(new Time("t", "", TimeForm.EPOCH_SECONDS, ZoneOffset.UTC, false), "", true, columns);
        return new LogBuilder(map, Map.of("", usualSeconds));
    }

    /** A bank of some size that runs down at night and up by day, at a sampling, with a meter that counts rightly. */
    private static MeteredLog days(double capacityAh, int stepS, double counterFactor, boolean turned) {
        LogBuilder builder = builder(
                List.of(
                        COLUMNS.get(0),
                        column(Signal.BANK_CURRENT, !turned, null),
                        COLUMNS.get(2),
                        COLUMNS.get(3),
                        COLUMNS.get(4)),
                stepS);
        SplittableRandom random = new SplittableRandom(7);
        double ah = 0.8 * capacityAh;
        double outWh = 5000;
        for (long at = 0; at < 4 * 86_400L; at += stepS) {
            double amps = (at / 43_200) % 2 == 0 ? -8 : 7 + random.nextDouble();
            double volts = 13 + 0.02 * amps;
            builder.row("", (int) (2 + at / stepS), Long.toString(START + at), new double[] {
                volts, amps, ah / capacityAh, outWh, amps > 0 ? amps * stepS / 3600 : 0
            });
            ah += amps * stepS / 3600;
            outWh += amps < 0 ? -amps * volts * stepS / 3600 * counterFactor : 0;
        }
        return builder.log("log.csv");
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 60, 300, 900})
    void aRightMeterAgreesWithItselfAtAnySampling(int stepS) {
        Quality quality = Quality.of(days(300, stepS, 1, false));
        assertThat(quality.coverage()).allSatisfy(c -> assertThat(c.share()).isGreaterThan(0.99));
        assertThat(quality.checks()).hasSize(2);
        // by hand: 8 A at 12.84 V over four half days, and 7.5 A over the others
        assertThat(quality.checks().get(0).summed()).isCloseTo(8 * 12.84 * 48, within(0.01 * 8 * 12.84 * 48));
        assertThat(quality.checks().get(1).summed()).isCloseTo(7.5 * 48, within(0.01 * 7.5 * 48));
        assertThat(quality.checks()).allMatch(Quality.Check::agrees);
        assertThat(quality.capacityAh()).isCloseTo(300, within(3.0));
        assertThat(quality.signDoubt()).isEmpty();
    }

    @Test
    void aCounterThatIsTenPercentShortDoesNotAgree() {
        Quality quality = Quality.of(days(300, 60, 0.9, false));
        assertThat(quality.checks().get(0).agrees()).isFalse();
        assertThat(quality.checks().get(0).apart()).isCloseTo(-0.1, within(0.005));
    }

    @Test
    void aCurrentMappedTheWrongWayIsDoubted() {
        assertThat(Quality.of(days(300, 60, 1, true)).signDoubt())
                .get()
                .asString()
                .contains("Exchange charge and discharge");
    }

    /** By hand: 60 W, so 1 Wh a minute, and rows each minute but for 20; between the other rows both are the same. */
    @Test
    void whatACounterGrewByInAGapIsNotHeldAgainstTheFlow() {
        LogBuilder builder = builder(SUN, 60);
        for (int minute = 0; minute < 60; minute++) {
            if (minute <= 20 || minute > 40) {
                builder.row("", 2 + minute, Long.toString(START + 60L * minute), new double[] {60, 100.0 + minute});
            }
        }
        MeteredLog log = builder.log("log.csv");
        assertThat(log.facts().gaps()).isEqualTo(1);
        assertThat(log.coverage(Signal.SOLAR_POWER)).isCloseTo(40.0 / 60, within(1e-9));
        Quality.Check check = Quality.of(log).checks().get(0);
        assertThat(check.summed()).isCloseTo(20 + 18, within(1e-9));
        assertThat(check.counted()).isCloseTo(20 + 18, within(1e-9));
    }

    /** By hand as before; the rows are all there, but in half of the hour the cell of the flow is blank or a dash. */
    @Test
    void whatACounterGrewByBesideBlankCellsIsNotHeldAgainstTheFlow() {
        LogBuilder builder = builder(SUN, 60);
        for (int minute = 0; minute < 60; minute++) {
            double watts = minute < 30 ? 60 : Double.NaN;
            builder.row("", 2 + minute, Long.toString(START + 60L * minute), new double[] {watts, 100.0 + minute});
        }
        Quality.Check check = Quality.of(builder.log("log.csv")).checks().get(0);
        assertThat(check.summed()).isCloseTo(30, within(1e-9));
        assertThat(check.counted()).isCloseTo(30, within(1e-9));
        assertThat(check.agrees()).isTrue();
    }

    /** By hand: rows each second, 30 W in the first half of each minute and 90 W in the second. */
    @Test
    void secondsAreAveragedToMinutes() {
        LogBuilder builder = builder(List.of(column(Signal.SOLAR_POWER, true, null)), 1);
        for (int second = 0; second < 600; second++) {
            builder.row("", 2 + second, Long.toString(START + second), new double[] {second % 60 < 30 ? 30 : 90});
        }
        MeteredLog log = builder.log("log.csv");
        assertThat(log.minutes()).isEqualTo(10);
        assertThat(log.value(Signal.SOLAR_POWER, 4)).isCloseTo(60, within(1e-9));
        assertThat(log.seconds(Signal.SOLAR_POWER, 9)).isEqualTo(60);
    }
}
