package ampdays.scenario;

import ampdays.trip.Shade;
import java.util.List;
import java.util.Optional;

/**
 * Something that fails at a moment of the trip: a named kind, changes of the design by path, or both.
 *
 * @param name in tables and charts
 * @param kind when it is a named kind
 * @param changes what is changed from that moment, in the order written
 * @param from when it begins; empty: when the kind begins by its nature
 * @param until when all is as before again; empty: when the kind ends by its nature, else never
 */
public record Failure(
        String name,
        Optional<FailureKind> kind,
        List<Change> changes,
        Optional<TripMoment> from,
        Optional<TripMoment> until) {
    public Failure {
        changes = List.copyOf(changes);
    }

    /** One value of the design, as in an option. */
    public record Change(String path, String text) {}

    /** A kind as it is meant, at its own moment. */
    public static Failure of(FailureKind kind) {
        return new Failure(kind.label(), Optional.of(kind), List.of(), Optional.empty(), Optional.empty());
    }

    /** Why a design cannot suffer it; empty when it can. */
    public Optional<String> whyNot(Values values) {
        return kind.flatMap(k -> k.whyNot(values))
                .or(() -> changes.stream()
                        .map(change -> missing(change.path(), values))
                        .flatMap(Optional::stream)
                        .findFirst());
    }

    /** A component or a load that a path needs and a design has not. */
    private static Optional<String> missing(String path, Values values) {
        String section = path.contains(".") ? path.substring(0, path.indexOf('.')) : path;
        if (Values.isComponent(section) && !values.has(section)) {
            return Optional.of("there is no " + section);
        }
        String load = section.equals("loads") && path.contains(".") ? path.split("\\.", 3)[1] : "";
        return load.isEmpty() || values.isSaid("loads." + load)
                ? Optional.empty()
                : Optional.of("there is no load \"" + load + "\"");
    }

    /** The design before it, with what the kind takes for granted. */
    public Values before(Values values) {
        return kind.map(k -> k.before(values)).orElse(values);
    }

    /**
     * The design while it lasts.
     *
     * @throws IllegalArgumentException with a sentence for the user when a change does not fit
     */
    public Values during(Values values) {
        Values changed = kind.map(k -> k.during(values)).orElse(values);
        for (Change change : changes) {
            changed = changed.with(change.path(), change.text());
        }
        return changed;
    }

    /**
     * What it does to the days while it lasts: nothing but under trees.
     *
     * @param values of the design
     * @param firstDay first day on which it lasts, 0 the trip's first
     * @param endDay first day on which it lasts no longer
     */
    public Variant stay(Variant variant, Values values, int firstDay, int endDay) {
        if (kind.isEmpty() || kind.get() != FailureKind.UNDER_TREES) {
            return variant;
        }
        Shade trees = new Shade(values.number("shade.shade.beam"), values.number("shade.shade.diffuse"));
        return variant.onTrip(variant.name(), TripChanges.parked(variant.trip(), firstDay, endDay, trees));
    }

    /** The same van, parked in full sun with nobody in it through the whole trip. */
    public static Variant parkedInTheSun(Variant variant) {
        return variant.onTrip(variant.name(), TripChanges.away(variant.trip()));
    }
}
