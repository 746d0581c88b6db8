package ampdays.study;

import ampdays.results.Finding.Severity;
import ampdays.results.WiringRule;
import ampdays.wiring.Ampacity;
import ampdays.wiring.CableRun;
import ampdays.wiring.Circuit;
import ampdays.wiring.Circuit.Opening;
import ampdays.wiring.End;
import ampdays.wiring.Fault;
import ampdays.wiring.Harness;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Which rules a circuit breaks. Every limit is applied to every step, so what breaks none stayed within all of them all the
 * trip. More current, heat or length never mends anything here but the short-circuit current further down a cable.
 */
final class CircuitRules {
    /** A joint may be that much warmer than its cable, K; common practice, no source. */
    static final double JOINT_RISE_K = 30;

    /** 7 in, 40 in and 72 in: 33 CFR 183.455; ABYC E-11 for the battery's own conductor. */
    static final double NEAR_M = 0.1778;

    private static final double SHEATHED_M = 1.016;
    private static final double BATTERY_M = 1.8288;

    /** Above this short-circuit current a unit of 20 kA does: ABYC E-11 as quoted by trade articles. */
    static final double LARGE_BANK_A = 10_000;

    static final double LARGE_BANK_INTERRUPT_A = 20_000;

    private final Circuit circuit;
    private final CircuitTrace trace;
    private final Setting setting;
    private final List<Breach> breaches = new ArrayList<>();
    /** Whether the first breach ends the search for more. */
    private boolean first;

    /**
     * What lies around a circuit.
     *
     * @param nominalV nominal voltage of its side, V
     * @param faultA short-circuit current where its protection belongs, A
     * @param upstreamRatingA largest rating of the protection before it on the way to the bank, A; infinite without
     * @param upstreamInterrupts whether a fuse before it can interrupt what the bank gives there
     */
    record Setting(
            double nominalV,
            double elevationM,
            End batteryEnd,
            double faultA,
            double upstreamRatingA,
            boolean upstreamInterrupts) {}

    /**
     * One rule broken.
     *
     * @param firstStep −1 when it does not depend on the trip
     */
    record Breach(
            WiringRule rule,
            Severity severity,
            double worst,
            double limit,
            String unit,
            int firstStep,
            int steps,
            double airC) {
        static Breach standing(WiringRule rule, Severity severity, double worst, double limit, String unit) {
            return new Breach(rule, severity, worst, limit, unit, -1, 0, Double.NaN);
        }
    }

    /** A rule over the steps: how often and how far beyond. */
    private static final class Tally {
        private int first = -1;
        private int steps;
        private double worst;
        private double limit;
        private double airC;
        private double farthest = Double.NEGATIVE_INFINITY;

        void met(int step, double value, double mayBe, double airThereC, double beyond) {
            first = first < 0 ? step : first;
            steps++;
            if (beyond > farthest) {
                farthest = beyond;
                worst = value;
                limit = mayBe;
                airC = airThereC;
            }
        }
    }

    private CircuitRules(Circuit circuit, CircuitTrace trace, Setting setting) {
        this.circuit = circuit;
        this.trace = trace;
        this.setting = setting;
    }

    static List<Breach> broken(Circuit circuit, CircuitTrace trace, Setting setting) {
        CircuitRules rules = new CircuitRules(circuit, trace, setting);
        rules.standing();
        rules.overTheTrip();
        return List.copyOf(rules.breaches);
    }

    /** Whether no rule is broken; told sooner than all that are. */
    static boolean sound(Circuit circuit, CircuitTrace trace, Setting setting) {
        CircuitRules rules = new CircuitRules(circuit, trace, setting);
        rules.first = true;
        rules.standing();
        if (rules.breaches.isEmpty()) {
            rules.overTheTrip();
        }
        return rules.breaches.isEmpty();
    }

    /** What does not depend on the minute. */
    private void standing() {
        if (circuit.protection().isPresent()) {
            protectionStands(circuit.protection().get());
        } else {
            unprotected();
        }
        wayBack();
    }

    private void overTheTrip() {
        Tally load = new Tally();
        Tally drop = new Tally();
        Tally hold = new Tally();
        Tally joint = new Tally();
        Tally glowing = new Tally();
        Protection protection = circuit.protection().orElse(null);
        for (int i = 0; i < trace.size(); i++) {
            if (first && load.steps + drop.steps + hold.steps + joint.steps + glowing.steps > 0) {
                break;
            }
            double currentA = trace.currentA(i);
            double airC = trace.airC(circuit.place(), i);
            int step = trace.step(i);
            double allowedA = circuit.allowedA(airC);
            if (currentA > allowedA) {
                load.met(step, currentA, allowedA, airC, currentA - allowedA);
            }
            double dropShare = CableRun.dropShare(circuit.dropV(airC, currentA), setting.nominalV);
            if (dropShare > circuit.dropLimitShare()) {
                drop.met(step, 100 * dropShare, 100 * circuit.dropLimitShare(), airC, dropShare);
            }
            double jointC = circuit.worstJointC(airC, currentA);
            double riseK = jointC - circuit.conductorC(airC, currentA);
            if (jointC > circuit.insulationC() && currentA > 0) {
                glowing.met(step, jointC, circuit.insulationC(), airC, jointC);
            } else if (riseK > JOINT_RISE_K) {
                joint.met(step, riseK, JOINT_RISE_K, airC, riseK);
            }
            if (protection != null) {
                double holdA = holdA(protection, i);
                if (currentA > holdA) {
                    hold.met(step, currentA, holdA, trace.airC(protection.place(), i), currentA - holdA);
                }
            }
        }
        add(WiringRule.AMPACITY, Severity.DANGER, load, "A");
        add(WiringRule.HOLD, Severity.CAUTION, hold, "A");
        add(WiringRule.JOINT, Severity.DANGER, glowing, "°C");
        if (glowing.steps == 0) {
            add(WiringRule.JOINT, Severity.CAUTION, joint, "K");
        }
        add(WiringRule.DROP, Severity.CAUTION, drop, "%");
    }

    private void add(WiringRule rule, Severity severity, Tally tally, String unit) {
        if (tally.steps > 0) {
            breaches.add(
                    new Breach(rule, severity, tally.worst, tally.limit, unit, tally.first, tally.steps, tally.airC));
        }
    }

    /** What the protection holds in a step at its own temperature, A. */
    private double holdA(Protection protection, int i) {
        double ownC = circuit.protectionC(trace.airC(protection.place(), i), trace.currentA(i));
        return protection.holdA(ownC, setting.elevationM);
    }

    /** A conductor that a smaller protection before it covers needs none of its own; panels give little more than they do. */
    private void unprotected() {
        double ceilingA = ceilingA(circuit, trace);
        if (Harness.side(circuit) != Harness.Side.PANELS && setting.upstreamRatingA > ceilingA) {
            breaches.add(Breach.standing(WiringRule.UNPROTECTED, Severity.DANGER, setting.faultA, ceilingA, "A"));
        }
    }

    /** Largest rating that protects a conductor in the warmest air of the trip, A. */
    static double ceilingA(Circuit circuit, CircuitTrace trace) {
        double allowedA = circuit.allowedA(trace.hottestC(circuit.place()));
        return Math.min(allowedA, Ampacity.thinConductorA(circuit.conductor().areaMm2()));
    }

    /** Smallest rating for what flows for hours, A. */
    static double floorA(CircuitTrace trace) {
        return Protection.CONTINUOUS_SHARE * trace.continuousA();
    }

    private void protectionStands(Protection protection) {
        rating(protection);
        if (protection.interruptA() < neededInterruptA(setting.faultA)) {
            Severity severity = setting.upstreamInterrupts ? Severity.CAUTION : Severity.DANGER;
            breaches.add(Breach.standing(
                    WiringRule.INTERRUPT, severity, setting.faultA / 1000, protection.interruptA() / 1000, "kA"));
        }
        double letThrough = protection.kind().letThroughA2s(protection.ratingA(), setting.faultA);
        double stood = Fault.withstandA2s(circuit.conductor().areaMm2(), circuit.insulationC());
        if (letThrough > stood) {
            breaches.add(
                    Breach.standing(WiringRule.WITHSTAND, Severity.DANGER, letThrough / 1000, stood / 1000, "kA²s"));
        }
        place(protection);
    }

    private void rating(Protection protection) {
        double floorA = floorA(trace);
        double ceilingA = ceilingA(circuit, trace);
        boolean small = protection.ratingA() < floorA;
        boolean large = protection.ratingA() > ceilingA;
        double tableA = Ampacity.tableA(circuit.conductor().areaMm2(), circuit.insulationC())
                * Ampacity.bundleShare(circuit.bundled());
        Severity severity = large && protection.ratingA() > Protection.MOST_OVER_TABLE * tableA
                ? Severity.DANGER
                : Severity.CAUTION;
        if ((small || large) && Protection.ratings().stream().noneMatch(r -> r >= floorA && r <= ceilingA)) {
            breaches.add(Breach.standing(WiringRule.NO_SIZE, severity, floorA, ceilingA, "A"));
        } else if (small) {
            breaches.add(Breach.standing(WiringRule.TOO_SMALL, severity, protection.ratingA(), floorA, "A"));
        } else if (large) {
            breaches.add(Breach.standing(WiringRule.TOO_LARGE, severity, protection.ratingA(), ceilingA, "A"));
        }
    }

    private void place(Protection protection) {
        if (Harness.side(circuit) == Harness.Side.PANELS) {
            return;
        }
        if (protection.near().filter(near -> !near.equals(setting.batteryEnd)).isPresent()) {
            breaches.add(Breach.standing(WiringRule.WRONG_END, Severity.DANGER, Double.NaN, Double.NaN, ""));
            return;
        }
        double mostM = mostDistanceM();
        if (protection.distanceM() > mostM) {
            breaches.add(Breach.standing(
                    WiringRule.DISTANCE, Severity.CAUTION, 1000 * protection.distanceM(), 1000 * mostM, "mm"));
        }
    }

    private double mostDistanceM() {
        End.Point source = setting.batteryEnd.point();
        boolean battery = source == End.Point.BANK || source == End.Point.START_BATTERY;
        if (!circuit.sheathed()) {
            return NEAR_M;
        }
        return battery ? BATTERY_M : SHEATHED_M;
    }

    private void wayBack() {
        boolean alternator = circuit.joins(End.Point.SECOND_ALTERNATOR) || circuit.joins(End.Point.FACTORY_ALTERNATOR);
        if (alternator && circuit.bodyOhm().isPresent() && !circuit.bodySaid()) {
            breaches.add(Breach.standing(WiringRule.ENGINE_GROUND, Severity.CAUTION, Double.NaN, Double.NaN, ""));
        }
        if (circuit.joins(End.Point.SECOND_ALTERNATOR) && circuit.opening() == Opening.UNDER_LOAD) {
            breaches.add(Breach.standing(WiringRule.FIELD_OFF, Severity.CAUTION, Double.NaN, Double.NaN, ""));
        }
    }

    /** Whether a protection of such a family interrupts what is needed here. */
    static boolean interrupts(ProtectionKind kind, Setting setting) {
        return kind.usualInterruptA(setting.nominalV) >= neededInterruptA(setting.faultA);
    }

    private static double neededInterruptA(double faultA) {
        return asksLargeBankRating(faultA) ? LARGE_BANK_INTERRUPT_A : faultA;
    }

    /** Whether such a short asks for the one rating of large banks, not for its own current. */
    static boolean asksLargeBankRating(double faultA) {
        return faultA > LARGE_BANK_A;
    }
}
