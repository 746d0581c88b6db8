package ampdays.commission.bench;

import ampdays.alternator.Alternator;
import ampdays.alternator.EngineState;
import ampdays.alternator.FactoryUnit;
import ampdays.battery.Battery;
import ampdays.scenario.Design;

/**
 * Alternators and bank while the engine runs: the components of a run, stepped at a speed and in air that are told. One of
 * the two ways to the bank works at a time, as on a bench where the other is switched off; it is held to what the bank takes
 * besides the base draw. One run, one thread.
 */
final class EngineRun {
    private static final double STEP_S = 10;

    private final Battery bank;
    private final double baseA;
    private final double cabinC;
    /** Null without one. */
    private final Alternator second;

    private final double secondSetPointV;
    private final double secondCableOhm;
    private final double secondStartS;
    /** Null without one. */
    private final FactoryUnit factory;

    private final double factoryCableOhm;
    private double busV;
    private double secondA;
    private double chargerA;
    private String heldBy = "";

    EngineRun(Design design, double densityShare, Day day, double baseA) {
        this.bank = Battery.of(design.bank(), day.ambientC(), STEP_S);
        this.baseA = baseA;
        this.cabinC = day.ambientC();
        this.second = design.second()
                .map(spec -> new Alternator(spec, design.engine(), densityShare, day.ambientC(), STEP_S))
                .orElse(null);
        this.secondSetPointV = design.second().map(s -> s.setPointV()).orElse(0.0);
        this.secondCableOhm = design.second().map(s -> s.cableOhm()).orElse(1.0);
        this.secondStartS =
                design.second().map(s -> s.startDelayS() + s.rampS()).orElse(0.0);
        this.factory = design.factory()
                .map(spec ->
                        new FactoryUnit(spec, design.engine(), densityShare, day.ambientC(), day.ambientC(), STEP_S))
                .orElse(null);
        this.factoryCableOhm =
                design.factory().map(f -> f.alternator().cableOhm()).orElse(1.0);
    }

    /** Which way to the bank works. */
    enum Way {
        SECOND,
        CHARGER
    }

    /** Time from a start until the regulator has ramped up, s. */
    double startS() {
        return secondStartS;
    }

    /**
     * Runs on.
     *
     * @param airC around the alternators, °C
     */
    void on(Way works, EngineState state, double airC, double seconds) {
        for (double s = 0; s < seconds; s += STEP_S) {
            step(works, state, airC);
        }
    }

    private void step(Way works, EngineState state, double airC) {
        bank.open();
        double takesA = bank.chargeMaxA() + baseA;
        chargerA = 0;
        secondA = 0;
        if (factory != null) {
            factory.open(state, airC, cabinC);
            double possibleA = Math.min(factory.chargerCapA(), factory.possibleW() / bank.emfV());
            chargerA = works == Way.CHARGER ? Math.min(possibleA, takesA) : 0;
        }
        if (second != null) {
            second.open(state, airC);
            double restV = bank.emfV() - bank.chargeOhm() * baseA;
            double atSetPointA = Math.max(0, (secondSetPointV - restV) / (secondCableOhm + bank.chargeOhm()));
            double possibleA = second.availableA();
            secondA = works == Way.SECOND ? Math.min(possibleA, Math.min(atSetPointA, takesA)) : 0;
            heldBy = secondA < possibleA ? secondA < takesA ? "the set point" : "the bank" : words(second);
        }
        double intoBankA = secondA + chargerA - baseA;
        busV = bank.emfV() + bank.chargeOhm() * intoBankA;
        if (factory != null) {
            factory.settle(chargerA * busV);
        }
        if (second != null) {
            second.settle(secondA);
        }
        bank.settle(intoBankA, busV, cabinC);
    }

    private static String words(Alternator unit) {
        return switch (unit.limit()) {
            case ROTOR_SPEED -> "its speed";
            case BELT -> "the belt";
            case REGULATOR_CAP -> "the regulator's cap";
            case HEAT -> "heat";
            case START_RAMP -> "the ramp after the start";
        };
    }

    double busV() {
        return busV;
    }

    double soc() {
        return bank.soc();
    }

    /** Current of the second alternator, A. */
    double secondA() {
        return secondA;
    }

    /** What keeps the second alternator from giving more, in words. */
    String heldBy() {
        return heldBy;
    }

    /** Case of the second alternator, °C. */
    double caseC() {
        return second.caseC();
    }

    /** From the second alternator to the bank, both ways, V. */
    double cableDropV() {
        return secondA * secondCableOhm;
    }

    /** Output of the DC-DC charger, A. */
    double chargerA() {
        return chargerA;
    }

    /** Voltage of the vehicle at the take-off point, V. */
    double systemV() {
        return factory.systemV();
    }

    /** From the take-off point to the charger's input, both ways, V. */
    double chargerDropV() {
        return factory.inputA() * factoryCableOhm;
    }
}
