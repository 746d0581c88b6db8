package ampdays.study;

import ampdays.results.WiringRule;
import ampdays.study.CircuitDraft.Change;
import ampdays.study.CircuitRules.Breach;
import ampdays.study.CircuitRules.Setting;
import ampdays.wiring.Circuit;
import ampdays.wiring.Conductor;
import ampdays.wiring.Protection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What was found on a circuit, in plain words. */
final class WiringWords {
    static final String MOUNT_QUESTION =
            "Does the second alternator's bracket leave the place of the engine's air-conditioning compressor, and of a second"
                    + " one for the rear, free? Ask for the body-builder document of the vehicle: its number, the belt's torque"
                    + " limit, approved brackets.";
    static final String OPENING_QUESTION =
            "Can a switch, a contactor or the bank's own protection part the second alternator from the bank while it charges?"
                    + " The field must go off first. Write it as opened: never, after field-off, or under load.";
    static final String BREAKER_QUESTION =
            "Do thermal breakers have screws of the torque and studs of the size that their maker wants? Heat of a small or"
                    + " loose terminal trips them long before their rating; remake the joint before anything else.";

    private final Circuit circuit;
    private final Setting setting;
    private final CircuitTrace trace;

    WiringWords(Circuit circuit, Setting setting, CircuitTrace trace) {
        this.circuit = circuit;
        this.setting = setting;
        this.trace = trace;
    }

    static String faultQuestion(double faultA) {
        return text(
                "What does the bank's maker say of its short-circuit current? %.1f kA is an estimate, and a lithium"
                        + " bank may give more; write it as fault-current.",
                faultA / 1000);
    }

    static String chargeLimit(double givesA, double takesA) {
        return text(
                "it can give %.0f A, the bank may be charged with %.0f A; if the bank's protection opens under charge,"
                        + " the alternator's voltage leaps up",
                givesA, takesA);
    }

    static String milliohm(double ohm) {
        return text("%.1f mΩ", 1000 * ohm);
    }

    String measured(Breach b) {
        Protection p = circuit.protection().orElse(null);
        String size = circuit.conductor().label();
        return switch (b.rule()) {
            case AMPACITY ->
                text(
                        "%s A in air of %.0f °C; %s of %.0f °C may carry %s A there",
                        amps(b.worst()), b.airC(), size, circuit.insulationC(), amps(b.limit()));
            case DROP ->
                text(
                        "%.1f %% of %.1f V there and back; at most %.1f %%%s",
                        b.worst(), setting.nominalV(), b.limit(), circuit.sensedAtBank() ? ", sensed behind it" : "");
            case UNPROTECTED ->
                text("a short draws %.1f kA, and nothing opens before the cable burns", b.worst() / 1000);
            case WRONG_END ->
                "it sits at " + p.near().orElseThrow() + "; " + setting.batteryEnd()
                        + " feeds a short from the other end";
            case TOO_SMALL -> text("rated %s A; 125 %% of the hardest hour is %s A", amps(b.worst()), amps(b.limit()));
            case TOO_LARGE ->
                text(
                        "rated %s A; %s may carry %s A in the warmest air, %.0f °C",
                        amps(b.worst()), size, amps(b.limit()), trace.hottestC(circuit.place()));
            case NO_SIZE ->
                text(
                        "at least %.1f A for its current, at most %.1f A for %s in air of %.0f °C",
                        b.worst(), b.limit(), size, trace.hottestC(circuit.place()));
            case HOLD ->
                text(
                        "%s A; in air of %.0f °C a %s of %s A with its worst joint of %s holds %s A",
                        amps(b.worst()),
                        b.airC(),
                        p.kind().label(),
                        amps(p.ratingA()),
                        milliohm2(circuit.worstJointOhm()),
                        amps(b.limit()));
            case INTERRUPT ->
                text(
                        "a short draws %.1f kA there%s; a %s interrupts %.1f kA%s",
                        b.worst(),
                        CircuitRules.asksLargeBankRating(setting.faultA())
                                ? text(
                                        ", and above %.0f kA a rating of %.0f kA is asked",
                                        CircuitRules.LARGE_BANK_A / 1000, CircuitRules.LARGE_BANK_INTERRUPT_A / 1000)
                                : "",
                        p.kind().label(),
                        b.limit(),
                        setting.upstreamInterrupts() ? ", a fuse before it more" : "");
            case WITHSTAND -> text("a short lets %.0f kA²s through; %s stands %.0f kA²s", b.worst(), size, b.limit());
            case JOINT -> joint(b);
            case DISTANCE ->
                text(
                        "%.0f mm (%.0f in) of cable before it; at most %.0f mm (%.0f in)",
                        b.worst(), b.worst() / 25.4, b.limit(), b.limit() / 25.4);
            case ENGINE_GROUND ->
                "all its current returns through engine strap and body, whose resistance nobody measured";
            case FIELD_OFF -> "it may be opened while the alternator charges; its voltage then leaps to tens of volts";
            case CHARGE_LIMIT, SIMULATED_CABLE ->
                throw new IllegalStateException(b.rule() + " is no matter of a circuit");
        };
    }

    private String joint(Breach b) {
        String ohm = milliohm2(circuit.worstJointOhm());
        if (Double.isInfinite(b.worst())) {
            return "a joint of " + ohm + " heats itself without end";
        }
        return b.unit().equals("K")
                ? text("a joint of %s is %.0f K warmer than its cable; at most %.0f K", ohm, b.worst(), b.limit())
                : text("a joint of %s reaches %.0f °C; the insulation stands %.0f °C", ohm, b.worst(), b.limit());
    }

    private static String milliohm2(double ohm) {
        return text("%.2f mΩ", 1000 * ohm);
    }

    static String remedy(List<Change> changes) {
        return changes.stream().map(c -> c.key() + " " + c.text()).collect(Collectors.joining(", "));
    }

    String noRemedy(WiringRule rule) {
        List<Conductor> larger = circuit.conductor().andLarger();
        return rule == WiringRule.AMPACITY
                        || rule == WiringRule.NO_SIZE
                        || rule == WiringRule.DROP
                        || rule == WiringRule.TOO_LARGE
                ? "no size up to " + larger.get(larger.size() - 1).label()
                        + " does; a cooler or shorter route, two runs with a fuse each, or less current"
                : "no single change found; see this circuit's other findings";
    }

    /** Whole amps from 10, one decimal below. */
    private static String amps(double a) {
        return Math.abs(a) < 10 ? text("%.1f", a) : text("%.0f", a);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
