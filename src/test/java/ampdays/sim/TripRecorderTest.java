package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.AlternatorWork;
import ampdays.results.AlternatorWork.Pace;
import ampdays.results.CabinHistory;
import ampdays.results.CabinHistory.Sleep;
import ampdays.results.Channel;
import ampdays.results.DayTotals;
import ampdays.results.MinuteLog;
import ampdays.results.Series;
import ampdays.results.TripCurve;
import ampdays.trip.Vehicle;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What charts of a trip read, held against the same run recorded step by step; both are one run, so they must agree. */
class TripRecorderTest {
    private static final RunPlan PLAN = FullVan.variableSpeed().plan(FullVan.weather());
    private static final Simulator.WithCurves RUN = Simulator.runWithCurves(PLAN);
    private static final MinuteLog LOG = Simulator.record(PLAN, 0, PLAN.clock().steps());

    /** The log holds single precision. */
    private static final double LOG_PRECISION = 1e-5;

    @Test
    void thinnedCurvesKeepEveryExtremeInItsPlace() {
        compare(RUN.soc(), Channel.STATE_OF_CHARGE, 100);
        compare(RUN.cabin().outsideC(), Channel.OUTSIDE_AIR, 1);
        compare(RUN.cabin().cabinC(), Channel.CABIN_AIR, 1);
    }

    private static void compare(TripCurve curve, Channel channel, double factor) {
        int buckets = curve.day().size();
        assertThat(buckets).isEqualTo(1200);
        double perBucket = LOG.rows() / (double) buckets;
        for (int bucket = 0; bucket < buckets; bucket++) {
            int from = (int) Math.ceil(bucket * perBucket);
            int to = (int) Math.ceil((bucket + 1) * perBucket);
            double[] values = IntStream.range(from, to)
                    .mapToDouble(row -> LOG.get(channel, row))
                    .sorted()
                    .toArray();
            assertThat(factor * curve.low().get(bucket)).isCloseTo(values[0], within(100 * LOG_PRECISION));
            assertThat(factor * curve.high().get(bucket))
                    .isCloseTo(values[values.length - 1], within(100 * LOG_PRECISION));
        }
    }

    /** Six whole days, people asleep from 22:00 to 06:30: the first night has lost its evening, the last its morning. */
    @Test
    void stretchesAsleepHaveTheirHoursOutOfTheBand() {
        CabinHistory cabin = RUN.cabin();
        assertThat(cabin.sleeps()).hasSize(7);
        assertThat(cabin.sleeps().get(0).fromDay()).isZero();
        assertThat(24 * cabin.sleeps().get(0).toDay()).isCloseTo(6.5, within(1e-9));
        assertThat(24 * (cabin.sleeps().get(6).toDay() - cabin.sleeps().get(6).fromDay()))
                .isCloseTo(2, within(1e-9));
        double warm = 0;
        double cold = 0;
        for (int row = 0; row < LOG.rows(); row++) {
            boolean asleep = PLAN.clock().asleep(row);
            warm += asleep && LOG.get(Channel.CABIN_AIR, row) > cabin.comfortHighC() ? 1 / 60.0 : 0;
            cold += asleep && LOG.get(Channel.CABIN_AIR, row) < cabin.comfortLowC() ? 1 / 60.0 : 0;
        }
        assertThat(cabin.sleeps().stream().mapToDouble(Sleep::tooWarmHours).sum())
                .isCloseTo(warm, within(1e-9));
        assertThat(cabin.sleeps().stream().mapToDouble(Sleep::tooColdHours).sum())
                .isCloseTo(cold, within(1e-9));
        assertThat(warm).as("some hour to tell").isPositive();
    }

    /** Nights that the result calls comfortable are out of the band for at most a twentieth of their time. */
    @Test
    void comfortableNightsAreThoseWithFewHoursOutOfTheBand() {
        List<Sleep> whole = RUN.cabin().sleeps().subList(1, 6);
        long comfortable = whole.stream()
                .filter(sleep -> sleep.tooWarmHours() + sleep.tooColdHours()
                        <= 0.05 * 24 * (sleep.toDay() - sleep.fromDay()) + 1e-9)
                .count();
        assertThat(RUN.result().nights()).isEqualTo(5);
        assertThat(RUN.result().comfortableNights()).isEqualTo((int) comfortable);
    }

    /** Hours of each pace by the timetable: 40 min town, 30 min idle, 45 min highway a day, six days. */
    @Test
    void alternatorsAreSortedByPaceAndCurrent() {
        assertThat(RUN.alternators())
                .extracting(AlternatorWork::name)
                .containsExactly("second alternator", "factory alternator");
        compare(RUN.alternators().get(0), Channel.SECOND_CURRENT);
        compare(RUN.alternators().get(1), Channel.FACTORY_CURRENT);
    }

    private static void compare(AlternatorWork work, Channel channel) {
        assertThat(work.paces()).extracting(Pace::name).containsExactly("idle", "town", "highway");
        double[] hours = {3, 4, 4.5};
        Vehicle[] vehicles = {Vehicle.IDLING, Vehicle.TOWN, Vehicle.HIGHWAY};
        for (int i = 0; i < 3; i++) {
            Pace pace = work.paces().get(i);
            Vehicle vehicle = vehicles[i];
            assertThat(pace.binHours().sum()).isCloseTo(hours[i], within(1e-9));
            double[] currents = IntStream.range(0, LOG.rows())
                    .filter(row -> PLAN.clock().vehicle(row) == vehicle)
                    .mapToDouble(row -> LOG.get(channel, row))
                    .toArray();
            assertThat(pace.meanA())
                    .isCloseTo(DoubleStream.of(currents).average().orElseThrow(), within(0.01));
            double above =
                    DoubleStream.of(currents).filter(a -> a >= 10 * work.binA()).count() / 60.0;
            assertThat(IntStream.range(10, pace.binHours().size())
                            .mapToDouble(pace.binHours()::get)
                            .sum())
                    .isCloseTo(above, within(1e-9));
        }
    }

    /** No current lies above the cold curve at its speed; and the hot curve lies below the cold one. */
    @Test
    void currentsLieBelowTheColdCurve() {
        for (AlternatorWork work : RUN.alternators()) {
            Series rpm = work.rotorRpm();
            for (int i = 0; i < rpm.size(); i++) {
                assertThat(work.hotA().get(i)).isLessThanOrEqualTo(work.coldA().get(i));
            }
            for (Pace pace : work.paces()) {
                int above = (int) Math.ceil(pace.rotorRpm() / rpm.get(1));
                int highestBin = IntStream.range(0, pace.binHours().size())
                        .filter(bin -> pace.binHours().get(bin) > 0)
                        .max()
                        .orElseThrow();
                assertThat(highestBin * work.binA()).isLessThan(work.coldA().get(above));
            }
        }
    }

    @Test
    void daysAreRecordedAsTheyAreInTheWholeRun() {
        List<DayTotals> days =
                List.of(RUN.result().days().get(4), RUN.result().days().get(1));
        List<MinuteLog> logs = Simulator.recordDays(PLAN, days);
        for (int i = 0; i < 2; i++) {
            assertThat(logs.get(i).firstStep()).isEqualTo(days.get(i).firstStep());
            assertThat(logs.get(i).rows()).isEqualTo(1440);
            for (Channel channel : List.of(Channel.BANK_CURRENT, Channel.SECOND_WINDING, Channel.CABIN_AIR)) {
                for (int row = 0; row < 1440; row++) {
                    assertThat(logs.get(i).get(channel, row))
                            .isEqualTo(LOG.get(channel, days.get(i).firstStep() + row));
                }
            }
        }
    }
}
