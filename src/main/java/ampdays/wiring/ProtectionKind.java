package ampdays.wiring;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Families of fuses and breakers. Interrupt ratings are those of trade articles and makers' pages at 12 to 58 V; where
 * they fall with the voltage, straight between 14 and 58 V (guess). A designer who knows the unit writes its own.
 */
public enum ProtectionKind {
    /** Times and slope: ISO 8820-3 (600 % for at most 0.1 s), by a maker's page. */
    BLADE_FUSE("blade fuse", 1000, 1000, 0.1),
    BOLT_DOWN_FUSE("bolt-down fuse", 2500, 1000, 1),
    STRIP_FUSE("strip fuse", 6000, 2000, 1),
    POST_FUSE("post fuse", 10_000, 2000, 1),
    CLASS_T_FUSE("class T fuse", 20_000, 20_000, 0.1),
    /** Interrupt rating and time at six times the rating: from memory. */
    THERMAL_BREAKER("thermal breaker", 3000, 3000, 2),
    /** Hydraulic-magnetic; the same. */
    MAGNETIC_BREAKER("magnetic breaker", 5000, 5000, 0.05);

    private static final double LOW_V = 14.6;
    private static final double HIGH_V = 58;

    /** Opening of a contact under a short, s; from memory. */
    private static final double CONTACT_S = 0.02;

    private final String label;
    private final double interruptLowA;
    private final double interruptHighA;
    private final double sixfoldS;

    ProtectionKind(String label, double interruptLowA, double interruptHighA, double sixfoldS) {
        this.label = label;
        this.interruptLowA = interruptLowA;
        this.interruptHighA = interruptHighA;
        this.sixfoldS = sixfoldS;
    }

    public String label() {
        return label;
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(ProtectionKind::label).toList();
    }

    public static Optional<ProtectionKind> of(String label) {
        return Arrays.stream(values()).filter(k -> k.label.equals(label)).findFirst();
    }

    public boolean isBreaker() {
        return this == THERMAL_BREAKER || this == MAGNETIC_BREAKER;
    }

    /** Usual interrupt rating at the nominal voltage of a circuit, A. */
    public double usualInterruptA(double nominalV) {
        double share = (nominalV - LOW_V) / (HIGH_V - LOW_V);
        double kept = share < 0 ? 0 : share > 1 ? 1 : share;
        return interruptLowA + kept * (interruptHighA - interruptLowA);
    }

    /** Air that the rating is told for, °C, unless the maker says otherwise. */
    public double usualCalibrationC() {
        return this == THERMAL_BREAKER ? 40 : 25;
    }

    /**
     * Largest energy let through while a short is cleared, per ohm, A²s: what six times the rating gives in the longest
     * time that the family may take for it; a breaker's contact needs its time besides. A short draws at least as much, and
     * a fuse's melting energy does not grow with it. Test: ProtectionTest.
     *
     * @param ratingA rating, A
     * @param faultA current of the short, A
     */
    public double letThroughA2s(double ratingA, double faultA) {
        double melting = 36 * ratingA * ratingA * sixfoldS;
        double contact = isBreaker() ? faultA * faultA * CONTACT_S : 0;
        return melting > contact ? melting : contact;
    }
}
