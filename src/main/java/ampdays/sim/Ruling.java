package ampdays.sim;

import ampdays.alternator.Alternator;
import ampdays.alternator.AlternatorLimit;
import ampdays.alternator.FactoryUnit;
import ampdays.battery.ChargeLimit;
import ampdays.results.Limit;

/** Names the limit that caps the charging path in a step. */
final class Ruling {
    private Ruling() {}

    static Limit of(Minute m, RunState state, boolean engineRuns) {
        if (m.bankLimits) {
            return ofBank(state);
        }
        if (engineRuns && state.second != null) {
            return m.secondRegulated ? Limit.CABLE : ofAlternator(state.second);
        }
        if (engineRuns && state.factory != null) {
            return ofFactory(m.factoryAtRating, state.factory);
        }
        return m.shoreW > 0 ? Limit.SHORE_CHARGER : Limit.ENGINE_OFF;
    }

    /** The bank's own limit, or the controller's where that clips the sun. */
    static Limit ofCurtailment(Minute m, RunState state) {
        return m.bankLimits ? ofBank(state) : Limit.SOLAR_CONTROLLER;
    }

    private static Limit ofBank(RunState state) {
        return ofBank(state.bank.chargeLimit());
    }

    static Limit ofBank(ChargeLimit limit) {
        return switch (limit) {
            case RATE, PROTECTION, TRIPPED, TOO_HOT -> Limit.CHARGE_LIMIT;
            case TOO_COLD -> Limit.TOO_COLD;
            case NEAR_FULL -> Limit.ACCEPTANCE;
            case FULL -> Limit.FULL;
        };
    }

    static Limit ofFactory(boolean atRating, FactoryUnit factory) {
        boolean ramps = factory.alternator().limit() == AlternatorLimit.START_RAMP;
        if (atRating && !ramps) {
            return factory.chargerIsHot() ? Limit.CHARGER_HEAT : Limit.CHARGER_RATING;
        }
        return factory.cableRules() && !ramps ? Limit.CABLE : ofAlternator(factory.alternator());
    }

    static Limit ofAlternator(Alternator alternator) {
        return switch (alternator.limit()) {
            case ROTOR_SPEED -> Limit.ROTOR_SPEED;
            case BELT -> Limit.BELT;
            case REGULATOR_CAP -> Limit.REGULATOR_CAP;
            case HEAT -> Limit.ALTERNATOR_HEAT;
            case START_RAMP -> Limit.START_RAMP;
        };
    }
}
