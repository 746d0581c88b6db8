package ampdays.sim;

import ampdays.battery.Banks;
import ampdays.results.Limit;

/**
 * The account of several vans side by side while only panels give: what {@link Ledger} and {@link Totals} add up then, one
 * sum of each van in every array, to the last bit the same.
 */
final class FleetSums {
    private final int vans;
    private final double stepH;
    private final double[] movedW;

    /** How much better than it must each account closes in a step, W. */
    final double[] margin;

    private final double[] solarW;
    private final double[] solarControllerW;
    private final double[] loadsW;
    private final double[] coolingW;
    private final double[] refrigeratorW;
    private final double[] inverterW;
    private final double[] bankResistanceW;
    private final double[] bankChargeW;
    private final double[] bankStandbyW;
    private final double[] storedW;
    private final double[] curtailedW;
    private final double[] throughputW;
    private final double[] dischargedA;
    private final double[] coolingAskedW;
    private final double[] refrigeratorAskedW;
    private final double[] engineOffH;
    private final double[] patternH;
    private final double[] patternVh;
    private final double[] peakCaseC;

    FleetSums(int vans, double stepS) {
        this.vans = vans;
        this.stepH = stepS / 3600;
        movedW = new double[vans];
        margin = new double[vans];
        solarW = new double[vans];
        solarControllerW = new double[vans];
        loadsW = new double[vans];
        coolingW = new double[vans];
        refrigeratorW = new double[vans];
        inverterW = new double[vans];
        bankResistanceW = new double[vans];
        bankChargeW = new double[vans];
        bankStandbyW = new double[vans];
        storedW = new double[vans];
        curtailedW = new double[vans];
        throughputW = new double[vans];
        dischargedA = new double[vans];
        coolingAskedW = new double[vans];
        refrigeratorAskedW = new double[vans];
        engineOffH = new double[vans];
        patternH = new double[vans];
        patternVh = new double[vans];
        peakCaseC = new double[vans];
    }

    /** Takes a van's sums over. */
    void load(int van, Totals totals) {
        Ledger day = totals.ledger;
        solarW[van] = day.solarW;
        solarControllerW[van] = day.solarControllerW;
        loadsW[van] = day.loadsW;
        coolingW[van] = day.coolingW;
        refrigeratorW[van] = day.refrigeratorW;
        inverterW[van] = day.inverterW;
        bankResistanceW[van] = day.bankResistanceW;
        bankChargeW[van] = day.bankChargeW;
        bankStandbyW[van] = day.bankStandbyW;
        storedW[van] = day.storedW;
        curtailedW[van] = day.curtailedW;
        throughputW[van] = day.throughputW;
        dischargedA[van] = totals.dischargedA;
        coolingAskedW[van] = totals.coolingAskedW;
        refrigeratorAskedW[van] = totals.refrigeratorAskedW;
        engineOffH[van] = totals.ruledH(Limit.ENGINE_OFF);
        peakCaseC[van] = totals.peakCaseC;
    }

    /** Gives a van its sums back, but for those of its pattern. */
    void store(int van, Totals totals) {
        Ledger day = totals.ledger;
        day.solarW = solarW[van];
        day.solarControllerW = solarControllerW[van];
        day.loadsW = loadsW[van];
        day.coolingW = coolingW[van];
        day.refrigeratorW = refrigeratorW[van];
        day.inverterW = inverterW[van];
        day.bankResistanceW = bankResistanceW[van];
        day.bankChargeW = bankChargeW[van];
        day.bankStandbyW = bankStandbyW[van];
        day.storedW = storedW[van];
        day.curtailedW = curtailedW[van];
        day.throughputW = throughputW[van];
        totals.dischargedA = dischargedA[van];
        totals.coolingAskedW = coolingAskedW[van];
        totals.refrigeratorAskedW = refrigeratorAskedW[van];
        totals.setRuledH(Limit.ENGINE_OFF, engineOffH[van]);
        totals.peakCaseC = peakCaseC[van];
    }

    /** Takes over how long a pattern of loads has run. */
    void loadPattern(int van, PatternHours hours, int pattern) {
        patternH[van] = hours.hours[pattern];
        patternVh[van] = hours.voltHours[pattern];
    }

    void storePattern(int van, PatternHours hours, int pattern) {
        hours.hours[pattern] = patternH[van];
        hours.voltHours[pattern] = patternVh[van];
    }

    /** Whether the accounts of a step close: {@link #margin}. */
    void close(FleetBus bus, Banks banks) {
        double[] inW = bus.sourceW;
        double[] busSolarW = bus.solarW;
        double[] usedByLoadsW = bus.loadsW;
        double[] usedByCoolingW = bus.coolingW;
        double[] usedByRefrigeratorW = bus.refrigeratorW;
        double[] inverterLossW = bus.inverterLossW;
        double[] heatW = banks.heatW();
        double[] bankW = banks.storedW();
        for (int i = 0; i < vans; i++) {
            double usedW = usedByLoadsW[i] + usedByCoolingW[i] + usedByRefrigeratorW[i];
            double lossesW = inW[i] - busSolarW[i] + inverterLossW[i] + heatW[i];
            double residualW = inW[i] - usedW - lossesW - bankW[i];
            movedW[i] = inW[i] + usedW + Math.abs(bankW[i] + heatW[i]);
            margin[i] = Ledger.CLOSES_TO * (movedW[i] + 1) - Math.abs(residualW);
        }
    }

    /** Adds the step up. */
    void add(FleetBus bus, Banks banks) {
        addFlows(bus);
        addBanks(banks);
        addTotals(bus);
    }

    private void addFlows(FleetBus bus) {
        double[] inW = bus.sourceW;
        double[] busSolarW = bus.solarW;
        double[] usedByLoadsW = bus.loadsW;
        double[] usedByCoolingW = bus.coolingW;
        double[] usedByRefrigeratorW = bus.refrigeratorW;
        double[] lostInInverterW = bus.inverterLossW;
        double[] lostSunW = bus.curtailedW;
        for (int i = 0; i < vans; i++) {
            solarW[i] += inW[i];
            solarControllerW[i] += inW[i] - busSolarW[i];
            loadsW[i] += usedByLoadsW[i];
            coolingW[i] += usedByCoolingW[i];
            refrigeratorW[i] += usedByRefrigeratorW[i];
            inverterW[i] += lostInInverterW[i];
            curtailedW[i] += lostSunW[i];
            throughputW[i] += movedW[i];
        }
    }

    private void addBanks(Banks banks) {
        double[] resistanceW = banks.resistanceW();
        double[] chargeLossW = banks.chargeLossW();
        double[] standbyW = banks.standbyW();
        double[] bankW = banks.storedW();
        for (int i = 0; i < vans; i++) {
            bankResistanceW[i] += resistanceW[i];
            bankChargeW[i] += chargeLossW[i];
            bankStandbyW[i] += standbyW[i];
            storedW[i] += bankW[i];
        }
    }

    private void addTotals(FleetBus bus) {
        double[] currentA = bus.bankA;
        double[] askedByCoolingW = bus.coolingW;
        double[] askedByRefrigeratorW = bus.refrigeratorW;
        double[] takesAll = bus.takesAll;
        double[] busV = bus.busV;
        for (int i = 0; i < vans; i++) {
            dischargedA[i] -= Math.min(currentA[i], 0);
            coolingAskedW[i] += askedByCoolingW[i];
            refrigeratorAskedW[i] += askedByRefrigeratorW[i];
            engineOffH[i] += takesAll[i] * stepH;
            patternH[i] += stepH;
            patternVh[i] += busV[i] * stepH;
        }
    }

    /** Enters the cases of one kind of alternator, °C. */
    void addCases(double[] caseC) {
        for (int i = 0; i < vans; i++) {
            peakCaseC[i] = Math.max(peakCaseC[i], caseC[i]);
        }
    }
}
