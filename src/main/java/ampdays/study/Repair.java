package ampdays.study;

import ampdays.results.WiringRule;
import ampdays.study.CircuitDraft.Change;
import ampdays.study.CircuitRules.Breach;
import ampdays.study.CircuitRules.Setting;
import ampdays.wiring.Circuit;
import ampdays.wiring.Conductor;
import ampdays.wiring.End.Point;
import ampdays.wiring.Place;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The smallest changes that mend a circuit, by trying all combinations of remade joints, thicker or better insulated
 * conductors, cooler places, other families and ratings in the order of their cost. A larger rating never goes without a
 * conductor that carries it, since that is one of the rules.
 */
final class Repair {
    private static final double BETTER_INSULATION_C = 125;

    /** Rules that one change clears, whatever else is changed. */
    private static final List<WiringRule> ONE_CURE =
            List.of(WiringRule.ENGINE_GROUND, WiringRule.FIELD_OFF, WiringRule.WRONG_END, WiringRule.DISTANCE);

    private final Setting setting;
    private final CircuitTrace hardest;
    private final Set<WiringRule> before;
    private final Map<WiringRule, List<Change>> single = new EnumMap<>(WiringRule.class);
    private Optional<CircuitDraft> whole = Optional.empty();

    private Repair(Setting setting, CircuitTrace hardest, Set<WiringRule> before) {
        this.setting = setting;
        this.hardest = hardest;
        this.before = before;
    }

    /** @param breaches what is broken now, at least one */
    static Repair of(Circuit circuit, CircuitTrace trace, Setting setting, List<Breach> breaches) {
        Set<WiringRule> before = EnumSet.noneOf(WiringRule.class);
        breaches.forEach(b -> before.add(b.rule()));
        Repair repair = new Repair(setting, trace.hardest(), before);
        repair.search(circuit);
        return repair;
    }

    /** Changes that clear one rule and break none besides; empty when none were found. */
    Optional<List<Change>> remedy(WiringRule rule) {
        return Optional.ofNullable(single.get(rule));
    }

    /** The smallest changes that clear all; empty when none were found. */
    Optional<CircuitDraft> whole() {
        return whole;
    }

    private void search(Circuit circuit) {
        CircuitDraft plain = CircuitDraft.of(circuit);
        CircuitDraft cured = plain;
        for (WiringRule rule : ONE_CURE) {
            if (before.contains(rule)) {
                note(cure(plain, rule));
                cured = cure(cured, rule);
            }
        }
        whole = drafts(cured).stream()
                .filter(draft -> CircuitRules.sound(draft.circuit(), hardest, setting))
                .findFirst();
        int dearest = whole.map(CircuitDraft::cost).orElse(Integer.MAX_VALUE);
        for (CircuitDraft draft : drafts(plain)) {
            if (draft.cost() > dearest || single.keySet().containsAll(before)) {
                break;
            }
            note(draft);
        }
        whole.ifPresent(draft -> note(draft));
    }

    /** Keeps a draft as the remedy of each rule that it clears first, if it breaks none besides. */
    private void note(CircuitDraft draft) {
        Set<WiringRule> left = EnumSet.noneOf(WiringRule.class);
        CircuitRules.broken(draft.circuit(), hardest, setting).forEach(b -> left.add(b.rule()));
        if (before.containsAll(left)) {
            before.stream().filter(r -> !left.contains(r)).forEach(r -> single.putIfAbsent(r, draft.changes()));
        }
    }

    private CircuitDraft cure(CircuitDraft draft, WiringRule rule) {
        return switch (rule) {
            case ENGINE_GROUND -> draft.returnByCable();
            case FIELD_OFF -> draft.fieldOffFirst();
            default -> draft.protectionAt(setting.batteryEnd());
        };
    }

    /** Everything that may be tried from here, the cheapest first. */
    private List<CircuitDraft> drafts(CircuitDraft start) {
        Circuit circuit = start.circuit();
        boolean regulated =
                circuit.joins(Point.SECOND_ALTERNATOR) && circuit.dropLimitShare() < CircuitDraft.SENSED_DROP;
        List<CircuitDraft> starts =
                regulated && before.contains(WiringRule.DROP) ? List.of(start, start.sensedAtBank()) : List.of(start);
        return starts.stream()
                .flatMap(draft -> cables(draft).stream())
                .flatMap(cable -> protections(cable).stream())
                .sorted(Comparator.comparingInt(CircuitDraft::cost))
                .toList();
    }

    private List<CircuitDraft> cables(CircuitDraft start) {
        List<CircuitDraft> drafts = new ArrayList<>();
        for (CircuitDraft joints : joints(start)) {
            for (CircuitDraft route : routes(joints)) {
                for (CircuitDraft insulated : insulations(route)) {
                    List<Conductor> sizes = insulated.circuit().conductor().andLarger();
                    for (int i = 0; i < sizes.size(); i++) {
                        drafts.add(insulated.conductor(sizes.get(i), i));
                    }
                }
            }
        }
        return drafts;
    }

    private static List<CircuitDraft> joints(CircuitDraft draft) {
        return draft.circuit().worstJointOhm() > CircuitDraft.POOR_JOINT_OHM
                ? List.of(draft, draft.goodJoints())
                : List.of(draft);
    }

    private static List<CircuitDraft> routes(CircuitDraft draft) {
        Circuit circuit = draft.circuit();
        boolean hot = circuit.place() == Place.BONNET || circuit.place() == Place.ROOF;
        boolean panels = circuit.joins(Point.SOLAR_PANELS);
        return hot && !panels ? List.of(draft, draft.route(Place.OUTSIDE)) : List.of(draft);
    }

    private static List<CircuitDraft> insulations(CircuitDraft draft) {
        return draft.circuit().insulationC() < BETTER_INSULATION_C
                ? List.of(draft, draft.insulation(BETTER_INSULATION_C))
                : List.of(draft);
    }

    private List<CircuitDraft> protections(CircuitDraft cable) {
        List<CircuitDraft> drafts = new ArrayList<>();
        double floorA = CircuitRules.floorA(hardest);
        double ceilingA = CircuitRules.ceilingA(cable.circuit(), hardest);
        List<Double> fitting = Protection.ratings().stream()
                .filter(r -> r >= floorA && r <= ceilingA)
                .toList();
        Optional<Protection> present = cable.circuit().protection();
        if (present.isEmpty()) {
            drafts.add(cable);
            if (before.contains(WiringRule.UNPROTECTED)) {
                for (double rating : fitting) {
                    kinds().forEach(kind -> drafts.add(cable.kind(kind, setting.nominalV(), rating)));
                }
            }
            return drafts;
        }
        List<CircuitDraft> units = new ArrayList<>(List.of(cable));
        kinds().stream()
                .filter(kind -> kind != present.get().kind())
                .forEach(kind -> units.add(
                        cable.kind(kind, setting.nominalV(), present.get().ratingA())));
        for (CircuitDraft unit : units) {
            for (CircuitDraft placed : unit.circuit().protection().orElseThrow().place() == Place.CABIN
                    ? List.of(unit)
                    : List.of(unit, unit.protectionIn(Place.CABIN))) {
                drafts.add(placed);
                for (int i = 0; i < fitting.size(); i++) {
                    drafts.add(placed.rated(fitting.get(i), i));
                }
            }
        }
        return drafts;
    }

    /** Families that interrupt what is needed here, the plainest first. */
    private List<ProtectionKind> kinds() {
        return List.of(
                        ProtectionKind.BLADE_FUSE,
                        ProtectionKind.STRIP_FUSE,
                        ProtectionKind.POST_FUSE,
                        ProtectionKind.CLASS_T_FUSE,
                        ProtectionKind.MAGNETIC_BREAKER)
                .stream()
                .filter(kind -> CircuitRules.interrupts(kind, setting))
                .toList();
    }
}
