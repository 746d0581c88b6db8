package ampdays.sim;

import ampdays.battery.Battery;
import ampdays.results.Account;
import ampdays.results.Energy;
import java.util.EnumMap;
import java.util.Map;

/**
 * The account of all energy of one day, in joules. It must close every step; one that does not is an error of the program.
 */
final class Ledger {
    private static final double J_PER_WH = 3600;
    private static final double CLOSES_TO = 1e-9;

    private final double stepS;
    private double solarJ;
    private double shoreJ;
    private double factoryJ;
    private double secondJ;
    private double loadsJ;
    private double coolingJ;
    private double refrigeratorJ;
    private double solarControllerJ;
    private double shoreChargerJ;
    private double factoryChargerJ;
    private double alternatorCableJ;
    private double inverterJ;
    private double bankResistanceJ;
    private double bankChargeJ;
    private double bankStandbyJ;
    private double storedJ;
    private double unservedJ;
    private double curtailedJ;
    private double throughputJ;

    Ledger(double stepS) {
        this.stepS = stepS;
    }

    void enter(Minute m, Battery bank) {
        double secondCableW = m.secondA * m.secondA * m.secondCableOhm;
        double inW = m.solarSourceW + m.shoreSourceW + m.factorySourceW + m.secondSourceW;
        double usedW = m.loadsW + m.coolingW + m.refrigeratorW;
        double solarLossW = m.solarSourceW - m.solarW;
        double shoreLossW = m.shoreSourceW - m.shoreW;
        double factoryLossW = m.factorySourceW - m.factoryW;
        double bankW = bank.storedW() + bank.heatW();
        m.lossesW = solarLossW + shoreLossW + factoryLossW + secondCableW + m.inverterLossW + bank.heatW();
        double residualW =
                inW - usedW - solarLossW - shoreLossW - factoryLossW - secondCableW - m.inverterLossW - bankW;
        double throughputW = inW + usedW + (bankW > 0 ? bankW : -bankW);
        if (!((residualW > 0 ? residualW : -residualW) <= CLOSES_TO * (throughputW + 1))) {
            throw new IllegalStateException("the energy ledger does not close at step " + m.step + ": " + residualW
                    + " W of " + throughputW + " W");
        }
        solarJ += m.solarSourceW * stepS;
        shoreJ += m.shoreSourceW * stepS;
        factoryJ += m.factorySourceW * stepS;
        secondJ += m.secondSourceW * stepS;
        loadsJ += m.loadsW * stepS;
        coolingJ += m.coolingW * stepS;
        refrigeratorJ += m.refrigeratorW * stepS;
        solarControllerJ += solarLossW * stepS;
        shoreChargerJ += shoreLossW * stepS;
        factoryChargerJ += factoryLossW * stepS;
        alternatorCableJ += secondCableW * stepS;
        inverterJ += m.inverterLossW * stepS;
        bankResistanceJ += bank.resistanceW() * stepS;
        bankChargeJ += bank.chargeLossW() * stepS;
        bankStandbyJ += bank.standbyW() * stepS;
        storedJ += bank.storedW() * stepS;
        unservedJ += m.unservedW * stepS;
        curtailedJ += m.curtailedW * stepS;
        throughputJ += throughputW * stepS;
    }

    /** The sums so far. */
    Energy energy() {
        Map<Account, Double> sums = new EnumMap<>(Account.class);
        sums.put(Account.SOLAR, solarJ / J_PER_WH);
        sums.put(Account.SHORE, shoreJ / J_PER_WH);
        sums.put(Account.FACTORY_ALTERNATOR, factoryJ / J_PER_WH);
        sums.put(Account.SECOND_ALTERNATOR, secondJ / J_PER_WH);
        sums.put(Account.LOADS, loadsJ / J_PER_WH);
        sums.put(Account.COOLING, coolingJ / J_PER_WH);
        sums.put(Account.REFRIGERATOR, refrigeratorJ / J_PER_WH);
        sums.put(Account.SOLAR_CONTROLLER, solarControllerJ / J_PER_WH);
        sums.put(Account.SHORE_CHARGER, shoreChargerJ / J_PER_WH);
        sums.put(Account.FACTORY_CHARGER, factoryChargerJ / J_PER_WH);
        sums.put(Account.ALTERNATOR_CABLE, alternatorCableJ / J_PER_WH);
        sums.put(Account.INVERTER, inverterJ / J_PER_WH);
        sums.put(Account.BANK_RESISTANCE, bankResistanceJ / J_PER_WH);
        sums.put(Account.BANK_CHARGE, bankChargeJ / J_PER_WH);
        sums.put(Account.BANK_STANDBY, bankStandbyJ / J_PER_WH);
        sums.put(Account.STORED, storedJ / J_PER_WH);
        sums.put(Account.UNSERVED, unservedJ / J_PER_WH);
        sums.put(Account.CURTAILED, curtailedJ / J_PER_WH);
        sums.put(Account.THROUGHPUT, throughputJ / J_PER_WH);
        return new Energy(sums);
    }
}
