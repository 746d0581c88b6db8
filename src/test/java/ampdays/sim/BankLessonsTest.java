package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.Finding;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The kernel in numbered lessons, one feature each: what goes in stands in the test, what must come out stands beside it
 * with its reason. This part: the house bank. Source where none is named: closed forms and identities (charge and energy
 * balance, Ohm's law), worked in the comment. A time that falls on a step's end may be met one step later.
 */
class BankLessonsTest {
    private static final double ONE_STEP_DAYS = 1.0 / 1440 + 1e-9;
    private static final WeatherSeries MILD = Van.dark(25);

    private static Van idealBank() {
        return new Van().lossless();
    }

    /** 1. A constant current: 400 Ah from 100 % to 20 % are 320 Ah, at 10 A 32 hours. */
    @Test
    void lesson01ConstantCurrent() {
        RunResult run = idealBank().load("lamp", "10 A", "always").run(MILD);
        assertThat(run.daysToEmpty()).isCloseTo(32 / 24.0, within(ONE_STEP_DAYS));
    }

    /**
     * 2. A constant power: days to empty are E/(24 L). With 200 Ah at 12.8 V of which 90 % are used, 2,304 Wh, and 60 W
     * that is 1.600 days; here the energy is counted at the open-circuit voltage instead: the mean of the cell maker's
     * table at 25 °C (Q/GX 030-2019, appendix A.4) from 10 to 100 %. Tolerance: the bank stays within 5 K of 25 °C, over
     * which the table changes by less than 0.1 %.
     */
    @Test
    void lesson02ConstantPower() {
        double[] from10PercentV = {
            3.210, 3.230, 3.253, 3.272, 3.284, 3.288, 3.288, 3.289, 3.290, 3.294, 3.310, 3.324, 3.327, 3.328, 3.328,
            3.328, 3.328, 3.329, 3.375
        };
        double meanV = 0;
        for (int i = 1; i < from10PercentV.length; i++) {
            meanV += 4 * (from10PercentV[i - 1] + from10PercentV[i]) / 2 / (from10PercentV.length - 1);
        }
        RunResult run = idealBank()
                .with("battery.capacity", "200 Ah")
                .with("trip.reserve", "10 %")
                .load("computer", "60 W", "always")
                .run(MILD);
        assertThat(run.daysToEmpty() * 12.8 / meanV).isCloseTo(1.600, within(0.001 * 1.6 + ONE_STEP_DAYS));
    }

    /** 3. The reserve is where "empty" is: 200 Ah at 10 A to a reserve of 50 % take 20 hours, to 5 % 38 hours. */
    @ParameterizedTest
    @CsvSource({"50 %, 20", "20 %, 32", "5 %, 38"})
    void lesson03TimeToReserve(String reserve, double hours) {
        RunResult run = idealBank()
                .with("trip.reserve", reserve)
                .load("lamp", "10 A", "always")
                .run(MILD);
        assertThat(run.daysToEmpty()).isCloseTo(hours / 24, within(ONE_STEP_DAYS));
    }

    /**
     * 4. Out by day, back by night: twelve hours at 10 A take 120 Ah, twelve at 8 A give 8 · 12 · 0.97 = 93.12 Ah, so that
     * a day costs 26.88 Ah. After eight days 215.04 of the 320 Ah are gone, and the other 104.96 last 10.496 hours more.
     */
    @Test
    void lesson04SupplyEveryDay() {
        RunResult run = idealBank()
                .with("battery.coulombic-efficiency", "97 %")
                .with("trip.timetable.all days", "00:00 park open, away\n12:00 park open hook-up, away")
                .with("shore-charger.preset", "50 A class")
                .with("shore-charger.rated", "8 A")
                .load("lamp", "10 A", "00:00-12:00")
                .run(MILD);
        assertThat(run.daysToEmpty()).isCloseTo(8 + 10.496 / 24, within(ONE_STEP_DAYS));
    }

    /** 5. Nothing on, nothing coming: 3 % a month are 1 % in ten days, and 15 mA are 3.6 Ah, 0.9 % of 400 Ah. */
    @ParameterizedTest
    @CsvSource({"3 %/month, 0 A, 0.99", "0 %/month, 15 mA, 0.991", "3 %/month, 15 mA, 0.981"})
    void lesson05SelfDischargeOnly(String selfDischarge, String electronics, double endSoc) {
        RunResult run = idealBank()
                .with("battery.self-discharge", selfDischarge)
                .with("battery.electronics", electronics)
                .run(MILD);
        assertThat(run.lowestSoc()).isCloseTo(endSoc, within(1e-9));
        assertThat(run.energy().sourcesWh()).isZero();
        assertThat(run.energy().servedWh()).isZero();
        assertThat(run.energy().lossesWh()).isEqualTo(run.energy().wh(Account.BANK_STANDBY));
    }

    /**
     * 6. Round trip at 40 A either way on the flat part of the curve, E = 13.16 V, through R = 10 mΩ:
     * (E - I R)/(E + I R) = 12.76/13.56. Tolerance: the bank stays within 3 K of 25 °C, which moves R by 6 %, and the pair
     * of voltages by 0.4 %.
     */
    @Test
    void lesson06RoundTrip() {
        RunResult run = idealBank()
                .with("battery.capacity", "4000 Ah")
                .with("battery.start", "50 %")
                .with("battery.resistance", "10 mΩ")
                .with("trip.days", "1")
                .with("trip.timetable.all days", "00:00 park open, away\n12:00 park open hook-up, away")
                .with("shore-charger.preset", "50 A class")
                .with("shore-charger.rated", "40 A")
                .with("shore-charger.efficiency", "100 %")
                .load("lamp", "40 A", "00:00-12:00")
                .run(MILD);
        double efficiency = run.energy().wh(Account.LOADS) / run.energy().wh(Account.SHORE);
        assertThat(efficiency).isCloseTo(12.76 / 13.56, within(0.004));
        assertThat(run.days().get(0).endSoc()).isCloseTo(0.5, within(1e-9));
    }

    /**
     * 7. How fast a bank of 100 Ah that takes 0.5 C may be charged, by its temperature. Source: operation manual of a 48 V
     * battery, table 4.3, as shares of its warm rate: none below 0 °C, 0.2 to 10, 0.4 to 25, 1 to 50, 0.2 to 60 °C.
     */
    @ParameterizedTest
    @CsvSource({"-5, 0", "5, 10", "15, 20", "30, 50", "52, 10", "62, 0"})
    void lesson07ChargeLimitByTemperature(double bankC, double chargeA) {
        List<Double> currentsA = new ArrayList<>();
        RunResult run = onHookUp()
                .with("battery.capacity", "100 Ah")
                .with("battery.start", "50 %")
                .run(Van.dark(bankC), (m, state) -> currentsA.add(m.bankA));
        assertThat(currentsA.get(0)).isCloseTo(chargeA, within(1e-9));
        assertThat(run.limitHours()).containsKey(bankC < 0 ? Limit.TOO_COLD : Limit.CHARGE_LIMIT);
    }

    private static Van onHookUp() {
        return idealBank()
                .with("trip.timetable.all days", "00:00 park open hook-up, away")
                .with("shore-charger.preset", "50 A class")
                .with("shore-charger.rated", "80 A");
    }

    /**
     * 8. A frozen bank refuses charge and takes it again only from +3 °C; once charging, it goes on down to 0 °C. Nights
     * of -7 °C and days of +17 °C pass both thresholds daily.
     */
    @Test
    void lesson08ColdBankWaitsForThreeDegrees() {
        double[] beforeC = {-7};
        List<Double> firstChargedC = new ArrayList<>();
        List<Double> chargedC = new ArrayList<>();
        boolean[] charging = {false};
        RunResult run = onHookUp()
                .with("battery.heat-conductance", "50 W/K")
                .with("trip.days", "3")
                .with("battery.start", "50 %")
                .with("shore-charger.rated", "8 A")
                .load("lamp", "20 A", "02:00-08:00")
                .with("loads.lamp.heat", "0 %")
                .run(Van.weather(hour -> 5 - 12 * Math.cos(hour * Math.PI / 12), hour -> 0), (m, state) -> {
                    if (m.bankA > 0 && !charging[0]) {
                        firstChargedC.add(beforeC[0]);
                    }
                    if (m.bankA > 0) {
                        chargedC.add(beforeC[0]);
                    }
                    charging[0] = m.bankA > 0 || (charging[0] && beforeC[0] >= 0);
                    beforeC[0] = state.bank.temperatureC();
                });
        assertThat(firstChargedC).hasSizeGreaterThanOrEqualTo(3).allMatch(c -> c >= 3 && c < 3.5);
        assertThat(chargedC).allMatch(c -> c >= 0).anyMatch(c -> c < 1);
        assertThat(names(run)).contains("charging refused: bank too cold");
    }

    private static List<String> names(RunResult run) {
        return run.findings().stream().map(Finding::kind).toList();
    }

    /**
     * 9. Near full: from 95 % the limit falls straight from 50 A to the tail of 5 A at 100 %, so at 97.5 % it is 27.5 A.
     * Full, the bank takes nothing but what it drains itself.
     */
    @Test
    void lesson09TaperNearFull() {
        List<Double> currentsA = new ArrayList<>();
        RunResult run = onHookUp()
                .with("battery.capacity", "100 Ah")
                .with("battery.start", "97.5 %")
                .with("battery.electronics", "20 mA")
                .with("trip.days", "1")
                .run(Van.dark(30), (m, state) -> currentsA.add(m.bankA));
        assertThat(currentsA.get(0)).isCloseTo(27.5, within(1e-9));
        assertThat(currentsA.get(1439)).isCloseTo(0.02, within(1e-9));
        assertThat(run.days().get(0).endSoc()).isCloseTo(1, within(1e-12));
        assertThat(run.limitHours()).containsOnlyKeys(Limit.ACCEPTANCE, Limit.FULL);
    }

    /**
     * 10. Absorption: behind 20 mΩ a bank of 13.16 V held to 13.6 V takes (13.6 - 13.16)/0.02 = 22 A, although 40 A are
     * offered. Tolerance: the table's 1 mV per cell over 20 mΩ are 0.2 A.
     */
    @Test
    void lesson10AbsorptionVoltage() {
        List<Double> currentsA = new ArrayList<>();
        onHookUp()
                .with("battery.start", "50 %")
                .with("battery.resistance", "20 mΩ")
                .with("battery.absorption", "13.6 V")
                .with("shore-charger.rated", "40 A")
                .run(MILD, (m, state) -> {
                    currentsA.add(m.bankA);
                    assertThat(m.busV).isLessThanOrEqualTo(13.6 + 1e-9);
                });
        assertThat(currentsA.get(0)).isCloseTo(22, within(0.2));
    }

    /**
     * 11. At its low cut-out, 10 %, the bank drops its loads; it takes them back from 30 %. From 20 % at midnight 20 A take
     * 10 of 100 Ah in half an hour: off at 00:30. On the hook-up from 12:00 on, 40 A bring 20 Ah in half an hour: on again
     * at 12:30. A step of grace on either side.
     */
    @Test
    void lesson11CutOutAndReconnect() {
        List<Double> servedW = new ArrayList<>();
        RunResult run = idealBank()
                .with("battery.capacity", "100 Ah")
                .with("battery.start", "20 %")
                .with("battery.cut-out", "10 %")
                .with("battery.reconnect", "30 %")
                .with("trip.days", "1")
                .with("trip.timetable.all days", "00:00 park open, away\n12:00 park open hook-up, away")
                .with("shore-charger.preset", "50 A class")
                .with("shore-charger.rated", "40 A")
                .load("lamp", "20 A", "always")
                .run(Van.dark(32), (m, state) -> servedW.add(m.loadsW));
        assertThat(servedW.subList(0, 29)).allMatch(w -> w > 0);
        assertThat(servedW.subList(31, 749)).containsOnly(0.0);
        assertThat(servedW.subList(751, 1440)).allMatch(w -> w > 0);
        assertThat(names(run)).contains("bank at its low cut-out");
    }

    /** 12. A bank that gives 50 A at most serves half of a load of 100 A; the other half is unserved. */
    @Test
    void lesson12DischargeLimit() {
        RunResult run = idealBank()
                .with("battery.discharge-limit", "50 A")
                .with("trip.days", "1")
                .load("heater", "100 A", "00:00-01:00")
                .run(MILD, (m, state) -> assertThat(m.bankA).isGreaterThanOrEqualTo(-50));
        double servedWh = run.servedWhByUse().get("heater");
        assertThat(run.unservedWhByUse().get("heater")).isCloseTo(servedWh, within(1e-9 * servedWh));
        assertThat(run.days().get(0).endSoc()).isCloseTo(1 - 50.0 / 400, within(1e-9));
        assertThat(names(run)).contains("loads ask for more than the bank can give");
    }
}
