package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ChargingTest {
    static List<Row> table() {
        return ReferenceTable.rows("cc_cv_linear_ocv").stream()
                .filter(row -> row.number("soc_end") < 0.999)
                .toList();
    }

    /**
     * Source: table cc_cv_linear_ocv (closed form). Its heading: a one-minute integrator should match the times within one
     * step and the charge within 1e-3. Rows that end above 99.9 % are left out, where our room left to full comes first.
     */
    @ParameterizedTest
    @MethodSource("table")
    void constantCurrentThenConstantVoltage(Row row) {
        double stepH = 1 / 60.0;
        LithiumBattery bank = Bank.lithium()
                .capacityAh(row.number("q_Ah"))
                .straightCells(4, row.number("ocv0_V"), row.number("ocv0_V") + row.number("ocv_slope_V"))
                .ohm(row.number("r_ohm"))
                .absorptionV(row.number("v_cv_V"))
                .steps(ChargeSteps.ANY_TEMPERATURE.times(row.number("i_cc_A")))
                .startShare(row.number("soc0"))
                .startC(25)
                .followsTheCabin()
                .battery();
        int steps = 0;
        int atConstantCurrent = 0;
        double socAtTurn = row.number("soc0");
        bank.open();
        while (bank.chargeMaxA() > row.number("i_tail_A") && steps < 100_000) {
            if (bank.chargeLimit() == ChargeLimit.RATE) {
                atConstantCurrent++;
            }
            double current = bank.chargeMaxA();
            bank.settle(current, bank.emfV() + current * bank.chargeOhm(), 25);
            socAtTurn = bank.chargeLimit() == ChargeLimit.RATE ? bank.soc() : socAtTurn;
            steps++;
            bank.open();
        }
        double currentSocStep = row.number("i_cc_A") * stepH / row.number("q_Ah");
        assertThat(atConstantCurrent * stepH).isCloseTo(row.number("t_cc_h"), within(stepH + 1e-9));
        assertThat(steps * stepH).isCloseTo(row.number("t_cc_h") + row.number("t_cv_h"), within(stepH + 1e-9));
        assertThat(socAtTurn).isCloseTo(row.number("soc_cc_end"), within(currentSocStep + 1e-9));
        assertThat(bank.soc()).isCloseTo(row.number("soc_end"), within(1e-3));
    }

    /** The pack's own limits: each step holds from its temperature on, below the first nothing (definition). */
    @ParameterizedTest
    @CsvSource({"-3, 0, TOO_COLD", "1, 20, RATE", "9.9, 20, RATE", "10, 90, RATE", "44, 90, RATE", "46, 0, TOO_HOT"})
    void ownLimitsByTemperature(double temperatureC, double amperes, ChargeLimit limit) {
        ChargeSteps own = new ChargeSteps(
                List.of(new ChargeSteps.Step(0, 20), new ChargeSteps.Step(10, 90), new ChargeSteps.Step(45, 0)));
        LithiumBattery bank = Bank.lithium().steps(own).startC(temperatureC).battery();
        bank.open();
        assertThat(bank.chargeMaxA()).isEqualTo(amperes);
        assertThat(bank.chargeLimit()).isEqualTo(limit);
    }

    /** Common practice, no source: refused below 0 °C until +3 °C; refused above 60 °C until 57 °C. */
    @ParameterizedTest
    @CsvSource({"-1, 2.9, 3.1", "61, 57.1, 56.9"})
    void protectionHasABand(double stopsC, double stillC, double againC) {
        LithiumBattery bank = Bank.lithium().startC(stopsC).followsTheCabin().battery();
        bank.open();
        assertThat(bank.chargingStopped()).isTrue();
        assertThat(bank.chargeMaxA()).isZero();
        bank.settle(0, 13, stillC);
        bank.open();
        assertThat(bank.chargingStopped()).isTrue();
        bank.settle(0, 13, againC);
        bank.open();
        assertThat(bank.chargingStopped()).isFalse();
        assertThat(bank.chargeMaxA()).isPositive();
    }

    /** The same for discharging; set here to -20 and 60 °C. */
    @ParameterizedTest
    @CsvSource({"-21, -17.1, -16.9", "61, 57.1, 56.9"})
    void dischargeStopHasABand(double stopsC, double stillC, double againC) {
        LithiumBattery bank = Bank.lithium().startC(stopsC).followsTheCabin().battery();
        bank.open();
        assertThat(bank.dischargeMaxA()).isZero();
        bank.settle(0, 13, stillC);
        bank.open();
        assertThat(bank.dischargingStopped()).isTrue();
        bank.settle(0, 13, againC);
        bank.open();
        assertThat(bank.dischargeMaxA()).isPositive();
    }

    /** A protection that trips stays open for its wait, here two minutes, and only where the limit is its own. */
    @Test
    void overCurrentOpensTheProtection() {
        LithiumBattery bank = Bank.lithium().chargeLimitA(30).trips().battery();
        bank.open();
        assertThat(bank.trips(false, false)).isFalse();
        assertThat(bank.trips(true, false)).isTrue();
        assertThat(bank.chargeMaxA()).isZero();
        assertThat(bank.dischargeMaxA()).isPositive();
        bank.settle(0, 13, 25);
        bank.open();
        assertThat(bank.chargingStopped()).isTrue();
        bank.settle(0, 13, 25);
        bank.open();
        assertThat(bank.chargeMaxA()).isEqualTo(30);
        assertThat(Bank.lithium().chargeLimitA(30).battery().trips(true, false)).isFalse();
    }

    /** Source: manual of a 25 Ah pack of 24 V: at 0 °C 80 % and more of the capacity can be drawn, at 25 °C all. */
    @ParameterizedTest
    @CsvSource({"25, 1", "30, 1", "0, 0.8", "12.5, 0.9"})
    void capacityInTheCold(double temperatureC, double share) {
        LithiumBattery bank = Bank.lithium()
                .coldShare(0.8)
                .startShare(1)
                .startC(temperatureC)
                .followsTheCabin()
                .battery();
        double drawnAh = 0;
        bank.open();
        while (!bank.loadsCut() && bank.dischargeMaxA() > 0) {
            double current = Math.min(33, bank.dischargeMaxA());
            bank.settle(-current, 12, temperatureC);
            drawnAh += current / 60;
            bank.open();
        }
        assertThat(drawnAh).isCloseTo(100 * share, within(1e-6));
    }
}
