package ampdays.sim;

import ampdays.battery.BankSpec;
import ampdays.battery.ChargeSteps;
import ampdays.scenario.Design;
import ampdays.wiring.Fault;

/**
 * What a wiring check must know of the components of a design.
 *
 * @param emfV voltage that drives a short, V
 * @param faultA current that the bank drives into a short at its terminals, estimated, A
 * @param chargeMostA most it may be charged with, by its protection and its cells at their best temperature, all strings
 *     together, A
 * @param secondCableOhm simulated resistance of the second alternator's run, Ω; NaN without one
 * @param factoryCableOhm the same of the run to the DC-DC charger
 */
public record BankTerminals(
        double emfV, double faultA, double chargeMostA, double secondCableOhm, double factoryCableOhm) {
    static BankTerminals of(Design design) {
        BankSpec bank = design.bank();
        int strings = bank.strings().count();
        double stringAh = bank.capacityAh() / strings;
        boolean lithium = bank.chemistry() instanceof BankSpec.Lithium;
        double ohm = bank.resistanceOhm() * bank.resistanceHealth();
        double evenness = 1 / (strings * bank.strings().nearestShare(ohm));
        return new BankTerminals(
                Fault.emfV(lithium, bank.seriesCells()),
                Fault.bankA(lithium, bank.seriesCells(), strings, stringAh),
                evenness * Math.min(bank.chargeLimitA(), rateA(bank)),
                design.second().map(s -> s.cableOhm()).orElse(Double.NaN),
                design.factory().map(f -> f.alternator().cableOhm()).orElse(Double.NaN));
    }

    private static double rateA(BankSpec bank) {
        ChargeSteps steps = bank.chemistry() instanceof BankSpec.Lithium lithium
                ? lithium.chargeSteps()
                : ((BankSpec.LeadAcid) bank.chemistry()).chargeSteps();
        return steps.steps().stream().mapToDouble(ChargeSteps.Step::limit).max().orElse(0);
    }
}
