package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A bank of one voltage, without resistance, is a bucket of energy. Source: table energy_bucket, daily sums in closed form
 * over whole series of days; a bank that takes the same surplus or lack minute by minute must end every day as full, and
 * curtail and leave unserved as much. What the table loses on the way out is put on the load here, because our bank loses
 * its charge on the way in.
 */
class EnergyBucketTest {
    private static final double VOLTS = 12.8;
    private static final int STEPS = 1440;

    /** Ten printed digits of a number below 30 kWh, added up over a day's steps: 1e-8 kWh. */
    @Test
    void endsEveryDayLikeTheTable() {
        List<Row> rows = ReferenceTable.rows("energy_bucket");
        assertThat(rows).hasSize(300);
        LithiumBattery bank = null;
        for (Row row : rows) {
            bank = row.number("day") == 0 ? bucket(row) : bank;
            assertThat(offKWh(bank, row)).as(row.toString()).isLessThan(1e-8);
        }
    }

    private static double rangeKWh(Row row) {
        return row.number("capacity_kWh") - row.number("floor_kWh");
    }

    private static LithiumBattery bucket(Row row) {
        return Bank.lithium()
                .capacityAh(rangeKWh(row) * 1000 / VOLTS)
                .straightCells(4, VOLTS, VOLTS)
                .ohm(1e-12)
                .efficiency(row.number("eta_charge"))
                .steps(ChargeSteps.ANY_TEMPERATURE.times(1e6))
                .chargeLimitA(1e6)
                .dischargeLimitA(1e6)
                .startShare((row.number("start_kWh") - row.number("floor_kWh")) / rangeKWh(row))
                .followsTheCabin()
                .battery();
    }

    /** Runs a day; the largest difference from the table, kWh. */
    private static double offKWh(LithiumBattery bank, Row row) {
        double netKWh = row.number("pv_kWh") - row.number("load_kWh");
        double out = row.number("eta_discharge");
        double amperes = (netKWh > 0 ? netKWh : netKWh / out) * 1000 / 24 / VOLTS;
        double missedAh = 0;
        for (int i = 0; i < STEPS; i++) {
            bank.open();
            double least = -bank.dischargeMaxA();
            double most = bank.chargeMaxA();
            double current = amperes > most ? most : amperes < least ? least : amperes;
            bank.settle(current, VOLTS, 25);
            missedAh += (amperes - current) * 24 / STEPS;
        }
        double missedKWh = missedAh * VOLTS / 1000;
        double curtailedKWh = missedKWh > 0 ? missedKWh : 0;
        double unservedKWh = missedKWh < 0 ? -missedKWh * out : 0;
        return Math.max(
                Math.abs(row.number("floor_kWh") + bank.soc() * rangeKWh(row) - row.number("stored_end_kWh")),
                Math.max(
                        Math.abs(curtailedKWh - row.number("curtailed_kWh")),
                        Math.abs(unservedKWh - row.number("unserved_kWh"))));
    }
}
