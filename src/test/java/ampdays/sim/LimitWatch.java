package ampdays.sim;

import ampdays.alternator.AlternatorSpec;
import ampdays.battery.BankSpec;
import ampdays.battery.ChargeSteps;
import ampdays.scenario.Design;

/** Looks at every step for a limit that is not kept, as far as possible from the specification and not from the kernel. */
final class LimitWatch implements Recorder {
    static final int NONE = -1;

    private static final double ROUNDING = 1e-9;

    private final BankSpec bank;
    private final double solarA;
    private final double shoreA;
    private final double factoryA;
    private final AlternatorSpec second;
    private double bankBeforeC = Double.NaN;
    private int brokenAtStep = NONE;

    LimitWatch(RunPlan plan) {
        Design design = plan.variant().design();
        bank = design.bank();
        solarA = design.solar().map(s -> s.controller().mostA()).orElse(0.0);
        shoreA = design.shore().map(s -> s.ratedA()).orElse(0.0);
        factoryA = design.factory().map(s -> s.charger().ratedA()).orElse(0.0);
        second = design.second().orElse(null);
    }

    @Override
    public void minute(Minute m, RunState state) {
        double bankC = Double.isNaN(bankBeforeC) ? m.outsideC : bankBeforeC;
        bankBeforeC = state.bank.temperatureC();
        boolean kept = bankKeepsItsLimits(m, state, bankC)
                && upTo(m.solarW, solarA * m.busV)
                && upTo(m.solarW, m.solarPossibleW)
                && upTo(m.shoreW, shoreA * m.busV)
                && upTo(m.shoreW, m.shorePossibleW)
                && upTo(m.factoryW, factoryA * m.busV)
                && upTo(m.factoryW, m.factoryPossibleW)
                && secondKeepsItsLimits(m)
                && upTo(m.servedShare, 1);
        if (!kept && brokenAtStep == NONE) {
            brokenAtStep = m.step;
        }
    }

    private boolean bankKeepsItsLimits(Minute m, RunState state, double bankC) {
        return upTo(state.bank.soc(), 1)
                && m.bankA <= byTemperatureA(bankC) + ROUNDING
                && m.bankA <= bank.chargeLimitA() + ROUNDING
                && m.bankA <= state.bank.chargeMaxA() + ROUNDING
                && m.bankA >= -bank.dischargeLimitA() - ROUNDING
                && (m.bankA <= 0 || m.busV <= bank.absorptionV() + ROUNDING);
    }

    private double byTemperatureA(double bankC) {
        double limitA = 0;
        for (ChargeSteps.Step step :
                ((BankSpec.Lithium) bank.chemistry()).chargeSteps().steps()) {
            limitA = bankC >= step.fromC() ? step.limit() : limitA;
        }
        boolean open = bankC < bank.protection().chargeColdC()
                || bankC > bank.protection().chargeHotC();
        return open ? 0 : limitA;
    }

    private boolean secondKeepsItsLimits(Minute m) {
        if (second == null) {
            return m.secondA == 0;
        }
        return upTo(m.secondA, m.secondPossibleA)
                && upTo(m.secondA, second.capA())
                && (m.secondA == 0 || m.busV + m.secondA * second.cableOhm() <= second.setPointV() + ROUNDING);
    }

    /** From nothing up to what is allowed, but for rounding. */
    private static boolean upTo(double value, double most) {
        return value >= 0 && value <= most * (1 + ROUNDING) + ROUNDING;
    }

    /** First step in which a limit was not kept, or {@link #NONE}. */
    int brokenAtStep() {
        return brokenAtStep;
    }
}
