package ampdays.sim;

import ampdays.battery.Battery;
import ampdays.results.Account;
import ampdays.results.Energy;
import java.util.EnumMap;
import java.util.Map;

/**
 * The account of all energy of one day: each sum is of the steps' mean powers. It must close every step; one that does not is an error of the program.
 */
final class Ledger {
    static final double CLOSES_TO = 1e-9;

    private final double stepH;
    double solarW;
    double shoreW;
    double factoryW;
    double secondW;
    double loadsW;
    double coolingW;
    double refrigeratorW;
    double solarControllerW;
    double shoreChargerW;
    double factoryChargerW;
    double alternatorCableW;
    double inverterW;
    double bankResistanceW;
    double bankChargeW;
    double bankStandbyW;
    double storedW;
    double unservedW;
    double curtailedW;
    double throughputW;

    Ledger(double stepS) {
        this.stepH = stepS / 3600;
    }

    void enter(Minute m, Battery bank) {
        double inW = m.solarSourceW + m.shoreSourceW + m.factorySourceW + m.secondSourceW;
        double usedW = m.loadsW + m.coolingW + m.refrigeratorW;
        double heatW = bank.heatW();
        m.lossesW = (inW > 0 ? enterSources(m) : 0) + m.inverterLossW + heatW;
        double residualW = inW - usedW - m.lossesW - bank.storedW();
        double movedW = inW + usedW + Math.abs(bank.storedW() + heatW);
        if (!(Math.abs(residualW) <= CLOSES_TO * (movedW + 1))) {
            throw new IllegalStateException(
                    "the energy ledger does not close at step " + m.step + ": " + residualW + " W of " + movedW + " W");
        }
        loadsW += m.loadsW;
        coolingW += m.coolingW;
        refrigeratorW += m.refrigeratorW;
        inverterW += m.inverterLossW;
        bankResistanceW += bank.resistanceW();
        bankChargeW += bank.chargeLossW();
        bankStandbyW += bank.standbyW();
        storedW += bank.storedW();
        unservedW += m.unservedW;
        curtailedW += m.curtailedW;
        throughputW += movedW;
    }

    /** Enters what the sources gave; returns what of it was lost on the way to the bus, W. */
    private double enterSources(Minute m) {
        double solarLossW = m.solarSourceW - m.solarW;
        double shoreLossW = m.shoreSourceW - m.shoreW;
        double factoryLossW = m.factorySourceW - m.factoryW;
        double secondCableW = m.secondA * m.secondA * m.secondCableOhm;
        solarW += m.solarSourceW;
        shoreW += m.shoreSourceW;
        factoryW += m.factorySourceW;
        secondW += m.secondSourceW;
        solarControllerW += solarLossW;
        shoreChargerW += shoreLossW;
        factoryChargerW += factoryLossW;
        alternatorCableW += secondCableW;
        return solarLossW + shoreLossW + factoryLossW + secondCableW;
    }

    /** Adds the sums of another. */
    void add(Ledger other) {
        solarW += other.solarW;
        shoreW += other.shoreW;
        factoryW += other.factoryW;
        secondW += other.secondW;
        loadsW += other.loadsW;
        coolingW += other.coolingW;
        refrigeratorW += other.refrigeratorW;
        solarControllerW += other.solarControllerW;
        shoreChargerW += other.shoreChargerW;
        factoryChargerW += other.factoryChargerW;
        alternatorCableW += other.alternatorCableW;
        inverterW += other.inverterW;
        bankResistanceW += other.bankResistanceW;
        bankChargeW += other.bankChargeW;
        bankStandbyW += other.bankStandbyW;
        storedW += other.storedW;
        unservedW += other.unservedW;
        curtailedW += other.curtailedW;
        throughputW += other.throughputW;
    }

    /** The sums so far. */
    Energy energy() {
        Map<Account, Double> sums = new EnumMap<>(Account.class);
        sums.put(Account.SOLAR, solarW * stepH);
        sums.put(Account.SHORE, shoreW * stepH);
        sums.put(Account.FACTORY_ALTERNATOR, factoryW * stepH);
        sums.put(Account.SECOND_ALTERNATOR, secondW * stepH);
        sums.put(Account.LOADS, loadsW * stepH);
        sums.put(Account.COOLING, coolingW * stepH);
        sums.put(Account.REFRIGERATOR, refrigeratorW * stepH);
        sums.put(Account.SOLAR_CONTROLLER, solarControllerW * stepH);
        sums.put(Account.SHORE_CHARGER, shoreChargerW * stepH);
        sums.put(Account.FACTORY_CHARGER, factoryChargerW * stepH);
        sums.put(Account.ALTERNATOR_CABLE, alternatorCableW * stepH);
        sums.put(Account.INVERTER, inverterW * stepH);
        sums.put(Account.BANK_RESISTANCE, bankResistanceW * stepH);
        sums.put(Account.BANK_CHARGE, bankChargeW * stepH);
        sums.put(Account.BANK_STANDBY, bankStandbyW * stepH);
        sums.put(Account.STORED, storedW * stepH);
        sums.put(Account.UNSERVED, unservedW * stepH);
        sums.put(Account.CURTAILED, curtailedW * stepH);
        sums.put(Account.THROUGHPUT, throughputW * stepH);
        return new Energy(sums);
    }
}
