package ampdays.study;

import ampdays.wiring.Circuit;
import ampdays.wiring.Circuit.Opening;
import ampdays.wiring.Conductor;
import ampdays.wiring.End;
import ampdays.wiring.Place;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A circuit with some of its values changed, and these changes as a scenario would say them. Costs order changes by how much
 * of the van they touch: a joint is remade before anything is bought, a route is changed last.
 */
final class CircuitDraft {
    /** A good crimped lug, Ω. */
    static final double GOOD_JOINT_OHM = 0.00005;

    /** Drop that a source sensed behind it may have, share. */
    static final double SENSED_DROP = 0.10;

    /** Joints from here are worth remaking, Ω. */
    static final double POOR_JOINT_OHM = 0.0001;

    private final Circuit circuit;
    private final List<Change> changes;
    private final int cost;

    /**
     * One value of the circuit.
     *
     * @param key below {@code circuits.NAME}
     * @param text as a scenario says it
     */
    record Change(String key, String text) {}

    private CircuitDraft(Circuit circuit, List<Change> changes, int cost) {
        this.circuit = circuit;
        this.changes = List.copyOf(changes);
        this.cost = cost;
    }

    static CircuitDraft of(Circuit circuit) {
        return new CircuitDraft(circuit, List.of(), 0);
    }

    Circuit circuit() {
        return circuit;
    }

    List<Change> changes() {
        return changes;
    }

    int cost() {
        return cost;
    }

    boolean changes(String key) {
        return changes.stream().anyMatch(c -> c.key().equals(key));
    }

    private CircuitDraft with(Edit edit, int further, Change... added) {
        List<Change> all = new ArrayList<>(changes);
        all.addAll(List.of(added));
        return new CircuitDraft(edit.build(circuit), all, cost + further);
    }

    /** What a change may touch; what is null stays. */
    private record Edit(
            Conductor conductor,
            Double insulationC,
            Place place,
            Double jointOhm,
            Boolean byCable,
            Opening opening,
            Protection protection,
            Boolean sensedAtBank) {
        Circuit build(Circuit c) {
            boolean back = byCable != null;
            return new Circuit(
                    c.name(),
                    c.from(),
                    c.to(),
                    c.lengthM(),
                    back ? OptionalDouble.empty() : c.bodyOhm(),
                    c.bodySaid(),
                    conductor == null ? c.conductor() : conductor,
                    insulationC == null ? c.insulationC() : insulationC,
                    c.bundled(),
                    place == null ? c.place() : place,
                    c.sheathed(),
                    c.joints(),
                    jointOhm == null ? c.jointOhm() : jointOhm,
                    jointOhm == null ? c.worstJointOhm() : jointOhm,
                    sensedAtBank == null ? c.dropLimitShare() : SENSED_DROP,
                    c.sourceA(),
                    sensedAtBank == null ? c.sensedAtBank() : sensedAtBank,
                    opening == null ? c.opening() : opening,
                    protection == null ? c.protection() : Optional.of(protection));
        }
    }

    /** All joints made well. */
    CircuitDraft goodJoints() {
        double ohm = Math.min(circuit.jointOhm(), GOOD_JOINT_OHM);
        CircuitDraft draft = with(new Edit(null, null, null, ohm, null, null, null, null), 40);
        List<Change> said = new ArrayList<>(changes);
        if (circuit.jointOhm() > GOOD_JOINT_OHM) {
            said.add(new Change("joint", "0.05 mΩ"));
        }
        said.add(new Change("worst-joint", String.format(Locale.ROOT, "%s mΩ", number(1000 * ohm))));
        return new CircuitDraft(draft.circuit, said, draft.cost);
    }

    CircuitDraft conductor(Conductor size, int steps) {
        return steps == 0
                ? this
                : with(
                        new Edit(size, null, null, null, null, null, null, null),
                        100 + 10 * steps,
                        new Change("conductor", size.label()));
    }

    CircuitDraft insulation(double ratedC) {
        return with(
                new Edit(null, ratedC, null, null, null, null, null, null),
                160,
                new Change("insulation", number(ratedC) + " °C"));
    }

    CircuitDraft route(Place place) {
        return with(new Edit(null, null, place, null, null, null, null, null), 600, new Change("air", place.label()));
    }

    CircuitDraft returnByCable() {
        return with(new Edit(null, null, null, null, true, null, null, null), 100, new Change("return", "cable"));
    }

    /** The regulator or charger senses behind the drop, which then costs heat but no charge. */
    CircuitDraft sensedAtBank() {
        return with(
                new Edit(null, null, null, null, null, null, null, true),
                130,
                new Change("sensed", "at the bank"),
                new Change("drop", "10 %"));
    }

    CircuitDraft fieldOffFirst() {
        return with(
                new Edit(null, null, null, null, null, Opening.AFTER_FIELD_OFF, null, null),
                100,
                new Change("opened", "after field-off"));
    }

    /** Another rating; a larger one always says the conductor beside it. */
    CircuitDraft rated(double ratingA, int steps) {
        Protection p = circuit.protection().orElseThrow();
        if (ratingA == p.ratingA()) {
            return this;
        }
        Protection other =
                new Protection(p.kind(), ratingA, p.calibratedC(), p.interruptA(), p.place(), p.near(), p.distanceM());
        Change rating = new Change("rating", number(ratingA) + " A");
        boolean sayConductor = ratingA > p.ratingA() && !changes("conductor");
        Change[] said = sayConductor
                ? new Change[] {new Change("conductor", circuit.conductor().label()), rating}
                : new Change[] {rating};
        return with(protection(other), 60 + steps, said);
    }

    /** A unit of another family, or the first one. */
    CircuitDraft kind(ProtectionKind kind, double nominalV, double ratingA) {
        Optional<Protection> before = circuit.protection();
        Protection other = new Protection(
                kind,
                before.map(Protection::ratingA).orElse(ratingA),
                kind.usualCalibrationC(),
                kind.usualInterruptA(nominalV),
                before.map(Protection::place).orElse(Place.CABIN),
                before.flatMap(Protection::near),
                before.map(Protection::distanceM).orElse(0.15));
        List<Change> said = new ArrayList<>(List.of(new Change("protection", kind.label())));
        if (before.isEmpty()) {
            said.add(new Change("rating", number(ratingA) + " A"));
        } else {
            said.add(new Change("interrupt", number(other.interruptA() / 1000) + " kA"));
            said.add(new Change("calibrated-at", number(other.calibratedC()) + " °C"));
        }
        return with(protection(other), 110, said.toArray(Change[]::new));
    }

    CircuitDraft protectionIn(Place place) {
        Protection p = circuit.protection().orElseThrow();
        Protection other =
                new Protection(p.kind(), p.ratingA(), p.calibratedC(), p.interruptA(), place, p.near(), p.distanceM());
        return with(protection(other), 90, new Change("protection-air", place.label()));
    }

    /** At the battery's end, as near as wanted. */
    CircuitDraft protectionAt(End end) {
        Protection p = circuit.protection().orElseThrow();
        double distanceM = Math.min(p.distanceM(), 0.15);
        Protection other = new Protection(
                p.kind(), p.ratingA(), p.calibratedC(), p.interruptA(), p.place(), Optional.of(end), distanceM);
        return with(
                protection(other),
                70,
                new Change("protection-near", end.label()),
                new Change("protection-distance", number(1000 * distanceM) + " mm"));
    }

    private static Edit protection(Protection protection) {
        return new Edit(null, null, null, null, null, null, protection, null);
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.replaceFirst("\\.?0+$", "");
    }
}
