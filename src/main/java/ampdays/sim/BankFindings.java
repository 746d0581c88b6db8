package ampdays.sim;

import ampdays.battery.BankSpec;
import ampdays.battery.Battery;
import ampdays.battery.ChargeLimit;
import ampdays.results.Finding;
import ampdays.results.Finding.Severity;
import java.util.List;

/** What the bank's protection, its strings and its low state of charge brought about. */
final class BankFindings {
    private static final double NOTABLY_UNEVEN = 1.1;

    private final Findings.Kind loadDump = new Findings.Kind();
    private final Findings.Kind dischargeStopped = new Findings.Kind();
    private final Findings.Kind tooHot = new Findings.Kind();
    private final Findings.Kind strings = new Findings.Kind();
    private final Findings.Kind low = new Findings.Kind();
    private final double nearestShare;
    private final boolean uneven;
    private boolean stoppedBefore;
    private double alternatorBeforeA;

    BankFindings(BankSpec spec) {
        this.nearestShare = nearestShare(spec);
        this.uneven = uneven(spec);
    }

    /** Whether the strings of a bank share its current so unevenly that it is told. */
    static boolean uneven(BankSpec spec) {
        return nearestShare(spec) * spec.strings().count() > NOTABLY_UNEVEN;
    }

    private static double nearestShare(BankSpec spec) {
        return spec.strings().nearestShare(spec.resistanceOhm() * spec.resistanceHealth());
    }

    void minute(Minute m, RunState state) {
        if (uneven || state.shedding.level() > 0 || !state.bank.closed()) {
            eventful(m, state);
        } else {
            stoppedBefore = false;
        }
        alternatorBeforeA = m.secondA;
    }

    private void eventful(Minute m, RunState state) {
        Battery bank = state.bank;
        boolean stopped = bank.chargingStopped();
        boolean tripped = bank.chargeLimit() == ChargeLimit.TRIPPED && m.secondPossibleA > 0;
        if (stopped && !stoppedBefore && (alternatorBeforeA > 0 || tripped)) {
            loadDump.met(m.step, tripped ? m.secondPossibleA : alternatorBeforeA);
        }
        stoppedBefore = stopped;
        if (bank.dischargingStopped()) {
            dischargeStopped.met(m.step, m.unservedW);
        }
        if (stopped && bank.chargeLimit() == ChargeLimit.TOO_HOT) {
            tooHot.met(m.step, bank.temperatureC());
        }
        if (uneven) {
            boolean chargesAtLimit = m.bankLimits
                    && (bank.chargeLimit() == ChargeLimit.RATE || bank.chargeLimit() == ChargeLimit.PROTECTION);
            boolean givesItsLimit = m.servedShare < 1 && bank.protectionHoldsDischarge();
            if (m.bankA != 0 && (chargesAtLimit || givesItsLimit)) {
                strings.met(m.step, (m.bankA > 0 ? m.bankA : -m.bankA) * nearestShare);
            }
        }
        if (state.shedding.level() > 0 && !bank.loadsCut()) {
            low.met(m.step, m.unservedW);
        }
    }

    void addTo(List<Finding> list, TripClock clock) {
        Findings.add(
                list,
                clock,
                loadDump,
                Severity.CAUTION,
                "protection opens under charge from the alternator",
                loadDump.worst(),
                "A",
                "The alternator's voltage can leap when its load goes (load dump) and destroy it and what is connected."
                        + " The regulator must be told to stop first, or a surge suppressor or a starter battery must take"
                        + " it up.");
        Findings.add(
                list,
                clock,
                dischargeStopped,
                Severity.CAUTION,
                "protection stops discharging",
                dischargeStopped.worst(),
                "W",
                "Loads run only on what sources give: mind alarms and refrigerator. Move the bank to a milder place, or"
                        + " draw less at a time.");
        Findings.add(
                list,
                clock,
                tooHot,
                Severity.CAUTION,
                "charging refused: bank too hot",
                tooHot.worst(),
                "°C",
                "Give the bank air or shade; heat ages it as well.");
        Findings.add(
                list,
                clock,
                strings,
                Severity.NOTE,
                "nearest string of the bank at its limit",
                strings.worst(),
                "A",
                "The strings share unevenly: the one nearest to the van's cables carries "
                        + Math.round(100 * nearestShare)
                        + " % and limits all. Connect plus at one end and minus at the other, or use equal cables to bars.");
        Findings.add(
                list,
                clock,
                low,
                Severity.NOTE,
                "loads shed at low charge",
                low.worst(),
                "W",
                "By the order of the scenario: what is marked first goes first, what is marked last stays on until the"
                        + " cut-out.");
    }
}
