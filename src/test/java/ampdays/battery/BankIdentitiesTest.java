package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for any bank whatever is asked of it; physics, no source. */
class BankIdentitiesTest {
    private static final int STEPS = 5000;

    static LongStream seeds() {
        return LongStream.range(0, 6);
    }

    private static Battery any(Random random) {
        Bank bank = random.nextBoolean() ? Bank.lithium() : Bank.leadAcid();
        bank.startShare(random.nextDouble())
                .startC(-10 + 60 * random.nextDouble())
                .efficiency(0.98)
                .coldShare(0.8)
                .selfDischarge(0.05)
                .health(0.7 + 0.3 * random.nextDouble())
                .stepS(random.nextBoolean() ? 60 : 300)
                .followsTheCabin();
        return random.nextBoolean() ? bank.battery() : bank.leadAcidBattery();
    }

    /** Energy at the terminals = change of store and the named losses; charge within 0 and 1; limits are never passed. */
    @ParameterizedTest
    @MethodSource("seeds")
    void energyClosesAndLimitsHold(long seed) {
        Random random = new Random(seed);
        Battery bank = any(random);
        double residualJ = 0;
        double throughputJ = 0;
        for (int i = 0; i < STEPS; i++) {
            bank.open();
            double ask = (random.nextDouble() - 0.5) * 3;
            double current = ask > 0 ? ask * bank.chargeMaxA() / 1.5 : ask * bank.dischargeMaxA() / 1.5;
            double ohm = current > 0 ? bank.chargeOhm() : bank.dischargeOhm();
            double busV = bank.emfV() + ohm * current;
            bank.settle(current, busV, 20 + 25 * Math.sin(i / 300.0));
            double flow = busV * current;
            residualJ += Math.abs(flow - bank.storedW() - bank.heatW());
            throughputJ += Math.abs(flow) + 1e-9;
            assertThat(bank.soc()).isBetween(0.0, 1.0);
            assertThat(bank.resistanceW()).isNotNegative();
            assertThat(bank.chargeLossW()).isNotNegative();
            assertThat(bank.standbyW()).isNotNegative();
        }
        assertThat(residualJ / throughputJ).isLessThan(1e-9);
    }

    /** Charge in × coulombic efficiency - charge out = change of charge. */
    @ParameterizedTest
    @MethodSource("seeds")
    void chargeIsCounted(long seed) {
        Random random = new Random(seed);
        LithiumBattery bank = Bank.lithium().efficiency(0.97).startShare(0.5).battery();
        double keptAh = 0;
        for (int i = 0; i < 300; i++) {
            bank.open();
            double ask = random.nextDouble() * 40 - 20;
            double current = ask < bank.chargeMaxA() ? ask : bank.chargeMaxA();
            bank.settle(current, 13, 25);
            keptAh += (current > 0 ? current * 0.97 : current) / 60;
        }
        assertThat((bank.soc() - 0.5) * 100).isCloseTo(keptAh, within(1e-9));
    }

    /** Round trip at one current and a flat voltage: (E - I R)/(E + I R). */
    @ParameterizedTest
    @CsvSource({"13.2, 0.006, 40", "26.4, 0.012, 20", "13.2, 0.02, 10"})
    void roundTrip(double emfV, double ohm, double current) {
        LithiumBattery bank = Bank.lithium()
                .straightCells(4, emfV, emfV)
                .ohm(ohm)
                .absorptionV(100)
                .followsTheCabin()
                .battery();
        double in = 0;
        double out = 0;
        for (int i = 0; i < 40; i++) {
            bank.open();
            double signed = i < 20 ? current : -current;
            double busV = bank.emfV() + bank.chargeOhm() * signed;
            in += i < 20 ? busV * current : 0;
            out += i < 20 ? 0 : busV * current;
            bank.settle(signed, busV, 25);
        }
        assertThat(bank.soc()).isCloseTo(0.5, within(1e-12));
        assertThat(out / in).isCloseTo((emfV - current * ohm) / (emfV + current * ohm), within(1e-9));
    }

    /** A resting lithium bank only discharges itself: 3 % of the capacity in thirty days. */
    @Test
    void atRestOnlyItsOwnDischarge() {
        LithiumBattery bank = Bank.lithium()
                .selfDischarge(0.03)
                .startShare(1)
                .followsTheCabin()
                .battery();
        for (int i = 0; i < 43_200; i++) {
            bank.open();
            bank.settle(0, bank.emfV(), 25);
        }
        assertThat(bank.soc()).isCloseTo(0.97, within(1e-9));
    }

    /** The loss at the start is charge that is not there: a bank of 80 % health gives 80 % of the charge. */
    @Test
    void healthTakesCapacity() {
        LithiumBattery bank = Bank.lithium().health(0.8).startShare(1).battery();
        double drawnAh = 0;
        bank.open();
        while (bank.dischargeMaxA() > 1e-9) {
            double current = Math.min(20, bank.dischargeMaxA());
            bank.settle(-current, 12, 25);
            drawnAh += current / 60;
            bank.open();
        }
        assertThat(drawnAh).isCloseTo(80, within(1e-6));
    }
}
