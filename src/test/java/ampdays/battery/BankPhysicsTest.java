package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BankPhysicsTest {
    private static final OpenCircuit CELL = OpenCircuit.LITHIUM_IRON_PHOSPHATE;

    static List<Row> constantPower() {
        return ReferenceTable.rows("constant_power_battery");
    }

    /** Source: table constant_power_battery (bisection). Blank results mean that the power is beyond E²/(4R). */
    @ParameterizedTest
    @MethodSource("constantPower")
    void busVoltageUnderConstantPower(Row row) {
        double emf = row.number("ocv_V");
        double ohm = row.number("r_ohm");
        double power = row.number("terminal_power_W");
        double bus = BankPhysics.busV(emf, ohm, 0, -power);
        if (row.text("terminal_V").isBlank()) {
            assertThat(bus).isNaN();
            return;
        }
        assertThat(bus).isCloseTo(row.number("terminal_V"), within(1e-6));
        assertThat(power / bus).isCloseTo(row.number("current_A"), within(1e-5 * Math.abs(power)));
    }

    /** Twice the voltage at the same power: half the current, a quarter of the drop in percent and of the loss (Ohm's law). */
    @Test
    void doublingTheVoltage() {
        double ohm = 1e-6;
        double power = 600;
        double low = BankPhysics.busV(12.8, ohm, 0, -power);
        double high = BankPhysics.busV(25.6, ohm, 0, -power);
        assertThat(power / low / (power / high)).isCloseTo(2, within(1e-5));
        assertThat((1 - low / 12.8) / (1 - high / 25.6)).isCloseTo(4, within(1e-4));
        assertThat((12.8 - low) * power / low / ((25.6 - high) * power / high)).isCloseTo(4, within(1e-4));
    }

    /** Source: worked example in the equation's text: 13.2 V, 4 mΩ, 2,000 W: 12.5632 V, 159.195 A. */
    @Test
    void workedExample() {
        double bus = BankPhysics.busV(13.2, 0.004, 0, -2000);
        assertThat(bus).isCloseTo(12.5632, within(5e-5));
        assertThat(2000 / bus).isCloseTo(159.195, within(5e-4));
    }

    /** The formula itself, from memory, walked up and down in small steps and in leaps; held beyond -20 and 60 °C. */
    @Test
    void resistanceGrowsInTheCold() {
        BankPhysics.ResistanceFactor factor = new BankPhysics.ResistanceFactor();
        DoubleStream up = DoubleStream.iterate(-30, c -> c <= 70, c -> c + 0.07);
        DoubleStream down = DoubleStream.iterate(70, c -> c >= -30, c -> c - 0.13);
        DoubleStream leaps = DoubleStream.of(60, -20, 25, -40, 24.99, 25.01, 80);
        DoubleStream.concat(DoubleStream.concat(up, down), leaps).forEach(c -> {
            double held = Math.max(-20, Math.min(60, c));
            assertThat(factor.at(c)).as("%f °C", c).isCloseTo(Math.exp(0.02 * (25 - held)), within(1e-5));
        });
        assertThat(factor.at(25)).isCloseTo(1, within(1e-12));
    }

    /** Kirchhoff's laws with current, power and a regulated source together (identity). */
    @Test
    void regulatedSourceBalances() {
        double bus = BankPhysics.regulatedBusV(13.2, 0.002, -20, 150, 14.2, 0.003);
        double regulated = (14.2 - bus) / 0.003;
        double bank = (bus - 13.2) / 0.002;
        assertThat(regulated - 20 + 150 / bus).isCloseTo(bank, within(1e-9));
    }

    /** Without other flows the charge current is (set point - open circuit)/(cable + bank resistance) (Ohm's law). */
    @Test
    void cableLimitIsOhmsLaw() {
        double bus = BankPhysics.regulatedBusV(13.2, 0.002, 0, 0, 14.2, 0.003);
        assertThat((14.2 - bus) / 0.003).isCloseTo(1.0 / 0.005, within(1e-9));
    }

    /**
     * Source: operation manual of a 48 V lithium iron phosphate battery, table 4.3: below 0 °C none; 0 to 10 °C 0.1 C; 10
     * to 25 °C 0.2 C; 25 to 50 °C 0.5 C; 50 to 60 °C 0.1 C; above none.
     */
    @ParameterizedTest
    @CsvSource({"-0.1, 0", "0, 0.1", "7, 0.1", "12, 0.2", "24, 0.2", "25, 0.5", "45, 0.5", "55, 0.1", "61, 0"})
    void chargeCurrentByTemperature(double temperatureC, double cRate) {
        LithiumBattery bank = Bank.lithium().startC(temperatureC).battery();
        bank.open();
        assertThat(bank.chargeMaxA() / 100).isCloseTo(cRate, within(1e-12));
    }

    @Test
    void taperRunsFromTheLimitToTheTail() {
        assertThat(BankPhysics.taperA(0.95, 200, 20, 0.95)).isEqualTo(200);
        assertThat(BankPhysics.taperA(0.975, 200, 20, 0.95)).isCloseTo(110, within(1e-9));
        assertThat(BankPhysics.taperA(1, 200, 20, 0.95)).isCloseTo(20, within(1e-9));
    }

    /** Source: Q/GX 030-2019, appendix A.4, 25 °C column and two others, volts per cell. */
    @ParameterizedTest
    @CsvSource({
        "1.00, 25, 3.375",
        "0.95, 25, 3.329",
        "0.80, 25, 3.328",
        "0.70, 25, 3.327",
        "0.50, 25, 3.290",
        "0.20, 25, 3.253",
        "0.10, 25, 3.210",
        "0.00, 25, 2.928",
        "0.60, -10, 3.292",
        "0.05, 45, 3.117"
    })
    void openCircuitVoltage(double soc, double temperatureC, double cellV) {
        assertThat(CELL.cellV(soc, temperatureC)).isCloseTo(cellV, within(5e-4));
    }

    /**
     * Source: slow-cycle fit of a 1.2 Ah cell (Sunil, Pattipati and Balasingam, IEEE Trans. Instrum. Meas. 2025, data
     * repository): 0.2972 is 3.2772 V, 0.9833 is 3.3511 V, straight between; the two agree within 20 mV from 20 to 95 %.
     */
    @ParameterizedTest
    @CsvSource({"0.30", "0.40", "0.50", "0.60", "0.70", "0.80", "0.90", "0.95"})
    void openCircuitVoltageAgreesWithAnotherCell(double soc) {
        double other = 3.2772 + (soc - 0.2972) / (0.9833 - 0.2972) * (3.3511 - 3.2772);
        assertThat(CELL.cellV(soc, 23)).isCloseTo(other, within(0.020));
    }

    /** Source: specification of a 202 Ah prismatic cell (LP54173207, rev. 0, 2020): 30 to 50 % is 3.275 to 3.304 V. */
    @Test
    void storageVoltageOfAThirdCell() {
        assertThat(CELL.cellV(0.3, 25)).isBetween(3.275, 3.304);
        assertThat(CELL.cellV(0.5, 25)).isBetween(3.275, 3.304);
    }

    /** The slope is that of the curve (identity). */
    @ParameterizedTest
    @CsvSource({"0.021", "0.33", "0.62", "0.97"})
    void slopeIsThatOfTheCurve(double soc) {
        double h = 1e-5;
        double difference = (CELL.cellV(soc + h, 31) - CELL.cellV(soc - h, 31)) / (2 * h);
        assertThat(CELL.slopeV(soc, 31)).isCloseTo(difference, within(1e-6));
    }
}
