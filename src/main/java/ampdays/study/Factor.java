package ampdays.study;

import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.scenario.Values;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * A cause that can be taken away from a design, to see what then remains.
 *
 * @param label what it is called when it is at work
 * @param away the values of the design without it
 * @param sky the sky without it
 */
record Factor(String label, UnaryOperator<Values> away, Sky sky) {
    private static final String FACTORY = "factory-alternator";
    private static final String SECOND = "second-alternator";
    private static final List<String> ALTERNATORS = List.of(FACTORY, SECOND);
    private static final String SHORE = "shore-charger";
    private static final double LEAST_CABLE_OHM = 1e-5;
    private static final double MOST_BANK_AH = 100_000;

    /**
     * The causes of a design: its cooling, warm nights, cloud, the limit that ruled charging longest among those that a
     * better part would lift, and the losses of cables and converters.
     */
    static List<Factor> of(Values values, RunResult result) {
        List<Factor> factors = new ArrayList<>();
        if (values.has("cooling")) {
            factors.add(new Factor("cooling", v -> v.without("cooling"), Sky.AS_IT_IS));
        }
        factors.add(new Factor("warm nights", v -> v, new Sky(false, true)));
        factors.add(new Factor("cloud and haze", v -> v, new Sky(true, false)));
        rulingLimit(result, Factor::isCause)
                .ifPresent(limit -> factors.add(new Factor(limit.label(), v -> lifted(limit, v), Sky.AS_IT_IS)));
        factors.add(new Factor("losses of cables and converters", Factor::lossless, Sky.AS_IT_IS));
        return factors;
    }

    /** Of some limits the one that ruled longest. */
    static Optional<Limit> rulingLimit(RunResult result, Predicate<Limit> among) {
        return result.limitHours().entrySet().stream()
                .filter(entry -> among.test(entry.getKey()))
                .max(Map.Entry.<Limit, Double>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey);
    }

    /** Whether a limit is a cause of the draw: not a bank too small to take more, and cables are a cause of their own. */
    static boolean isCause(Limit limit) {
        return switch (limit) {
            case START_RAMP,
                    ROTOR_SPEED,
                    ALTERNATOR_HEAT,
                    BELT,
                    REGULATOR_CAP,
                    CHARGER_RATING,
                    CHARGER_HEAT,
                    SHORE_CHARGER,
                    CHARGE_LIMIT,
                    TOO_COLD -> true;
            case ENGINE_OFF, SOLAR_CONTROLLER, CABLE, ACCEPTANCE, FULL -> false;
        };
    }

    /** Whether another part takes a limit away or moves it. */
    static boolean isLiftable(Limit limit) {
        return switch (limit) {
            case ENGINE_OFF, SOLAR_CONTROLLER -> false;
            case CABLE, ACCEPTANCE, FULL -> true;
            default -> isCause(limit);
        };
    }

    /** The design with a limit so far out of the way that another one rules; with twice the bank, or a cable twice as thick. */
    static Values lifted(Limit limit, Values v) {
        return switch (limit) {
            case START_RAMP -> alternators(v, Map.of("start-delay", "0 s", "ramp", "0 s"));
            case ROTOR_SPEED -> alternators(withoutPoints(v), Map.of("cut-in", "100 rpm", "curve", "50 rpm"));
            case ALTERNATOR_HEAT -> alternators(v, Map.of("cut-back-from", "200 °C", "cut-back-to", "250 °C"));
            case BELT -> alternators(v, Map.of("belt", "50 kW"));
            case REGULATOR_CAP -> alternators(without(v, "cap-points"), Map.of("cap", "2000 A"));
            case CHARGER_RATING -> section(v, FACTORY, Map.of("charger", "1000 A"));
            case SHORE_CHARGER -> section(v, SHORE, Map.of("rated", "1000 A"));
            case CHARGER_HEAT ->
                section(v, FACTORY, Map.of("charger-derate-from", "150 °C", "charger-derate-to", "200 °C"));
            case CHARGE_LIMIT ->
                section(
                        v.without("battery.charge-limits"),
                        "battery",
                        Map.of("charge-rate", "10 C", "charge-limit", "100000 A"));
            case TOO_COLD -> section(v, "battery", Map.of("charge-cold", "-60 °C", "charge-limits", "-60 °C 0.5 C"));
            case CABLE -> v.with(rulingCable(v), Math.max(LEAST_CABLE_OHM, v.number(rulingCable(v)) / 2));
            case ACCEPTANCE, FULL -> v.with("battery.capacity", Math.min(MOST_BANK_AH, 2 * v.bankAh()));
            case ENGINE_OFF, SOLAR_CONTROLLER ->
                throw new IllegalArgumentException("no part of the van lifts the limit " + limit.label());
        };
    }

    /** With a second alternator it is that one's cable that may hold the charge back. */
    static String rulingCable(Values v) {
        return (v.has(SECOND) ? SECOND : FACTORY) + ".cable";
    }

    private static Values withoutPoints(Values v) {
        return without(without(v, "curve-points"), "hot-points");
    }

    private static Values without(Values v, String key) {
        Values changed = v;
        for (String alternator : ALTERNATORS) {
            changed = changed.without(alternator + "." + key);
        }
        return changed;
    }

    private static Values alternators(Values v, Map<String, String> changes) {
        Values changed = v;
        for (String alternator : ALTERNATORS) {
            changed = section(changed, alternator, changes);
        }
        return changed;
    }

    /** Cables without resistance, as far as the model goes, and converters that give what they take. */
    static Values lossless(Values v) {
        Values changed = section(v, "solar", Map.of("wiring", "0 %", "conversion", "100 %"));
        changed = section(changed, FACTORY, Map.of("cable", "0.01 mΩ", "charger-efficiency", "100 %"));
        changed = section(changed, SECOND, Map.of("cable", "0.01 mΩ"));
        changed = section(changed, SHORE, Map.of("efficiency", "100 %"));
        return section(changed, "inverter", Map.of("idle", "0 W", "linear-loss", "0 %", "square-loss", "0 %"));
    }

    /** Changes within a section, where the design has it. */
    private static Values section(Values v, String section, Map<String, String> changes) {
        Values changed = v;
        if (v.has(section)) {
            for (Map.Entry<String, String> change : changes.entrySet()) {
                changed = changed.with(section + "." + change.getKey(), change.getValue());
            }
        }
        return changed;
    }
}
