package ampdays.study;

import ampdays.results.Lifted;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.Simulator;
import java.util.Locale;
import java.util.Optional;

/**
 * What a better part would bring: the limit that ruled charging longest, of those that a part can lift, is taken away, or moved
 * by twice the bank or a cable twice as thick, and the trip is run again. What then rules is the next part to look at. Test:
 * {@code LiftTest}.
 *
 * @param values of the design
 * @param ruling empty when only the engine that stands rules
 * @param then the run without it; the run as it is where nothing rules
 * @param next what rules then; empty when no part does
 */
public record Lift(
        String option, Values values, RunResult asItIs, Optional<Limit> ruling, RunResult then, Optional<Limit> next) {
    private static final String FACTORY = "factory-alternator";
    private static final String SECOND = "second-alternator";

    /** Runs a design without its ruling limit. */
    public static Lift of(Variant variant, Values values, RunResult result, Planner planner) {
        Optional<Limit> ruling = Factor.rulingLimit(result, Factor::isLiftable);
        if (ruling.isEmpty()) {
            return new Lift(variant.name(), values, result, ruling, result, Optional.empty());
        }
        Variant lifted;
        try {
            lifted = VariantBuilder.build(variant.name(), Factor.lifted(ruling.get(), values));
        } catch (ScenarioException e) {
            throw new IllegalStateException(
                    "a design without the limit " + ruling.get().label() + ": " + e.problems(), e);
        }
        RunResult then = Simulator.run(planner.under(Sky.AS_IT_IS).apply(lifted));
        return new Lift(variant.name(), values, result, ruling, then, Factor.rulingLimit(then, Factor::isLiftable));
    }

    /** What is handed on. */
    public Lifted told() {
        return new Lifted(
                ruling,
                ruling.map(asItIs.limitHours()::get).orElse(0.0),
                next,
                next.map(then.limitHours()::get).orElse(0.0),
                then,
                words());
    }

    /** In one sentence or two, with the parts that set both limits. */
    public String words() {
        String name = "\"" + option + "\": ";
        if (ruling.isEmpty()) {
            return name
                    + "no part of the van holds its charging back; only more driving, sun or hook-up would bring more.";
        }
        String after = next.map(limit -> limit.equals(ruling.get())
                        ? "it would still rule, " + hours(then, limit)
                        : limit.label() + " would, " + hours(then, limit) + part(limit))
                .orElse("no part would");
        return name + "of the limits that a part can lift, " + ruling.get().label() + " rules longest, "
                + hours(asItIs, ruling.get()) + part(ruling.get()) + ". " + lifted(ruling.get()) + " " + after
                + "; the van " + gain() + ".";
    }

    private static String lifted(Limit limit) {
        return switch (limit) {
            case CABLE -> "With a cable twice as thick";
            case ACCEPTANCE, FULL -> "With twice the bank";
            default -> "Without it";
        };
    }

    private String gain() {
        String before = Verdict.fate(asItIs);
        String after = Verdict.fate(then);
        int nights = then.comfortableNights() - asItIs.comfortableNights();
        return (before.equals(after) ? after + " all the same" : after + " (now it " + before + ")")
                + (nights == 0
                        ? ", comfortable nights stay " + then.comfortableNights()
                        : ", with " + then.comfortableNights() + " comfortable nights (now "
                                + asItIs.comfortableNights() + ")");
    }

    private static String hours(RunResult run, Limit limit) {
        return String.format(Locale.ROOT, "%.0f h", run.limitHours().get(limit));
    }

    /** The part that sets a limit, in brackets; empty where none can be named. */
    private String part(Limit limit) {
        return switch (limit) {
            case CHARGER_RATING, CHARGER_HEAT -> named("a charger of ", FACTORY + ".charger");
            case SHORE_CHARGER -> named("a shore charger of ", "shore-charger.rated");
            case CHARGE_LIMIT, TOO_COLD ->
                values.isSaid("battery.charge-limit")
                        ? named("a bank that takes ", "battery.charge-limit")
                        : named("a bank of " + values.word("battery.capacity") + " that takes ", "battery.charge-rate");
            case ROTOR_SPEED, ALTERNATOR_HEAT, BELT, REGULATOR_CAP, START_RAMP ->
                values.has(SECOND)
                        ? named("an alternator of ", SECOND + ".rated")
                        : named("a factory unit of ", FACTORY + ".rated");
            case CABLE -> named("a cable of ", Factor.rulingCable(values));
            case ACCEPTANCE, FULL -> named("a bank of ", "battery.capacity");
            case ENGINE_OFF, SOLAR_CONTROLLER -> "";
        };
    }

    private String named(String words, String path) {
        String value = values.word(path);
        return value.isEmpty() ? "" : " (" + words + value + ")";
    }
}
