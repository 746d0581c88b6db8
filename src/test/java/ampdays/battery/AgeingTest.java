package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AgeingTest {
    private static final double DAY_S = 86_400;
    private static final double YEAR_S = 365 * DAY_S;

    static List<Row> use() {
        return ReferenceTable.rows("lfp_cycle_fade_wang2011");
    }

    static List<Row> calendar() {
        return ReferenceTable.rows("lfp_calendar_naumann2018");
    }

    /** Source: table lfp_cycle_fade_wang2011, ten digits. */
    @ParameterizedTest
    @MethodSource("use")
    void fadeByUse(Row row) {
        double loss = AgeingPhysics.useLoss(row.number("c_rate"), row.number("temp_C"), row.number("ah_throughput_Ah"));
        assertThat(100 * loss).isCloseTo(row.number("q_loss_percent"), within(1e-8 * row.number("q_loss_percent")));
    }

    /**
     * Source: the separate fit of the same paper for C/2 in the table's last column. Two fits of one set of tests differ by
     * up to 5 % of the loss.
     */
    @Test
    void theTwoFitsOfThePaperAgree() {
        List<Row> rows = use().stream()
                .filter(row -> !row.text("q_loss_percent_halfC_fit").isBlank())
                .toList();
        assertThat(rows)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(
                                100 * AgeingPhysics.useLoss(0.5, row.number("temp_C"), row.number("ah_throughput_Ah")))
                        .isCloseTo(
                                row.number("q_loss_percent_halfC_fit"),
                                within(0.05 * row.number("q_loss_percent_halfC_fit"))));
    }

    /** Source: J. Wang et al. 2011, the equation worked out with the printed constants, to the digits given. */
    @ParameterizedTest
    @CsvSource({"0.5, 25, 2200, 6.561", "0.5, 25, 4400, 9.606", "0.5, 45, 4400, 21.361", "2, 25, 2200, 5.627"})
    void workedFadeByUse(double cRate, double temperatureC, double throughputAh, double percent) {
        assertThat(100 * AgeingPhysics.useLoss(cRate, temperatureC, throughputAh))
                .isCloseTo(percent, within(6e-4));
    }

    /** Source: the same; five years of one cycle of 80 % a day at 35 °C and C/2: 12.20 %. */
    @Test
    void fiveYearsOfDailyCycles() {
        double throughputAh = 5 * 365 * 0.8 * 2.2;
        assertThat(100 * AgeingPhysics.useLoss(0.5, 35, throughputAh)).isCloseTo(12.20, within(5e-3));
    }

    /** Source: table lfp_calendar_naumann2018, ten digits. */
    @ParameterizedTest
    @MethodSource("calendar")
    void fadeByCalendar(Row row) {
        double soc = row.number("soc");
        double temperatureC = row.number("temp_C");
        double seconds = row.number("days") * DAY_S;
        double loss = row.number("capacity_loss_fraction");
        double growth = row.number("resistance_increase_fraction");
        assertThat(AgeingPhysics.calendarFade(soc, temperatureC) * Math.sqrt(seconds))
                .isCloseTo(loss, within(1e-8 * loss));
        assertThat(AgeingPhysics.resistanceGrowth(soc, temperatureC) * seconds)
                .isCloseTo(growth, within(1e-8 * growth));
    }

    /** Source: M. Naumann et al. 2018, the equation worked out with the printed constants, to the digits given. */
    @ParameterizedTest
    @CsvSource({"25, 0.5, 1, 4.252", "45, 0.5, 1, 6.564", "45, 1, 1, 10.457", "35, 0.8, 10, 18.98"})
    void workedFadeByCalendar(double temperatureC, double soc, double years, double percent) {
        double loss = 100 * AgeingPhysics.calendarFade(soc, temperatureC) * Math.sqrt(years * YEAR_S);
        assertThat(loss).isCloseTo(percent, within(5e-3));
    }

    /** Source: the same; 25 °C, 50 %, a year: resistance +1.68 %. */
    @Test
    void workedGrowthOfResistance() {
        assertThat(100 * AgeingPhysics.resistanceGrowth(0.5, 25) * YEAR_S).isCloseTo(1.68, within(5e-3));
    }

    /** At constant conditions the sum along a run is the paper's closed form (Wang 2011, Naumann 2018). */
    @Test
    void constantConditionsGiveTheClosedForm() {
        Ageing ageing = new Ageing(400, 0, 60);
        int steps = 60 * 24 * 30;
        for (int i = 0; i < steps; i++) {
            ageing.step(-40, 31, 0.6);
        }
        double throughputAh = 40.0 * 24 * 30 * 2.2 / 400;
        double use = AgeingPhysics.useLoss(0.5, 31, throughputAh);
        double calendar = AgeingPhysics.calendarFade(0.6, 31) * Math.sqrt(steps * 60.0);
        assertThat(ageing.useLossShare(1)).isCloseTo(use, within(1e-9 * use));
        assertThat(ageing.calendarLossShare(1)).isCloseTo(calendar, within(1e-9 * calendar));
    }

    /**
     * Two conditions one after the other: the second goes on from the loss that the first has reached, not from its own
     * curve at the same throughput (virtual throughput and time, worked out here by its definition).
     */
    @Test
    void changingConditionsGoOnFromTheLossReached() {
        Ageing ageing = new Ageing(100, 0, 60);
        int hours = 1000;
        for (int i = 0; i < hours * 120; i++) {
            ageing.step(-50, i < hours * 60 ? 20 : 45, i < hours * 60 ? 0.3 : 0.9);
        }
        double throughputAh = hours * 50 * 2.2 / 100;
        double first = AgeingPhysics.useLoss(0.5, 20, throughputAh);
        double virtualAh = Math.pow(first / AgeingPhysics.useLoss(0.5, 45, 1), 1 / 0.55);
        double use = AgeingPhysics.useLoss(0.5, 45, virtualAh + throughputAh);
        assertThat(ageing.useLossShare(1)).isCloseTo(use, within(1e-9));

        double firstDays = AgeingPhysics.calendarFade(0.3, 20) * Math.sqrt(hours * 3600.0);
        double virtualS = Math.pow(firstDays / AgeingPhysics.calendarFade(0.9, 45), 2);
        double calendar = AgeingPhysics.calendarFade(0.9, 45) * Math.sqrt(virtualS + hours * 3600.0);
        assertThat(ageing.calendarLossShare(1)).isCloseTo(calendar, within(1e-9));
    }

    /** Loss never shrinks, whatever the conditions, and a bank that starts worn loses less anew (square-root laws). */
    @Test
    void lossOnlyGrows() {
        Random random = new Random(11);
        Ageing fresh = new Ageing(200, 0, 300);
        Ageing worn = new Ageing(200, 0.1, 300);
        double before = 0;
        for (int hour = 0; hour < 500; hour++) {
            for (int i = 0; i < 12; i++) {
                double current = random.nextDouble() * 100 - 60;
                double temperatureC = random.nextDouble() * 50 - 5;
                double soc = random.nextDouble();
                fresh.step(current, temperatureC, soc);
                worn.step(current, temperatureC, soc);
            }
            double loss = fresh.useLossShare(1) + fresh.calendarLossShare(1);
            assertThat(loss).isGreaterThan(before);
            before = loss;
        }
        assertThat(worn.useLossShare(1) + worn.calendarLossShare(1))
                .isPositive()
                .isLessThan(before);
        assertThat(fresh.useLossShare(10)).isGreaterThan(fresh.useLossShare(1)).isLessThan(10 * fresh.useLossShare(1));
    }
}
