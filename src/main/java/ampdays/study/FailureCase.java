package ampdays.study;

import ampdays.scenario.Failure;
import ampdays.scenario.Problem;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.SingleChange;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import java.util.List;
import java.util.Optional;

/**
 * A failure with its place in a trip.
 *
 * @param fromStep first step in which it lasts
 * @param untilStep first step in which it lasts no longer
 * @param firstDay day of {@code fromStep}, 0 the trip's first
 * @param endDay first day after {@code untilStep}
 * @param warmerK how much warmer the air is while it lasts, K; below 0 cooler
 */
record FailureCase(Failure failure, int fromStep, int untilStep, int firstDay, int endDay, double warmerK) {
    Sky sky() {
        return warmerK == 0 ? Sky.AS_IT_IS : Sky.warmer(warmerK);
    }

    /** The values of a changed design before the failure, with what the failure takes for granted. */
    Values before(SingleChange change) {
        return failure.before(change.values());
    }

    /** That design. */
    Variant before(SingleChange change, VariantBuilder designs) throws ScenarioException {
        return built(change, before(change), designs);
    }

    /**
     * The same while it lasts.
     *
     * @throws ScenarioException when what it does contradicts the design
     */
    Variant during(SingleChange change, VariantBuilder designs) throws ScenarioException {
        Values values;
        try {
            values = failure.during(change.values());
        } catch (IllegalArgumentException e) {
            throw new ScenarioException(List.of(new Problem(failure.name(), e.getMessage())));
        }
        return failure.stay(built(change, values, designs), values, firstDay, endDay);
    }

    private static Variant built(SingleChange change, Values values, VariantBuilder designs) throws ScenarioException {
        SingleChange changed = new SingleChange(
                change.words(),
                change.price(),
                change.perTrip(),
                change.currency(),
                change.priceFrom(),
                values,
                change.trip());
        return changed.variant(designs);
    }

    /** A design as no change of it. */
    static SingleChange unchanged(Values values, Variant variant) {
        return new SingleChange(variant.name(), 0, false, "", "", values, Optional.empty());
    }
}
