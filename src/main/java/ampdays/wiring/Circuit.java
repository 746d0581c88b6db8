package ampdays.wiring;

import ampdays.units.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One run of cable with what protects it.
 *
 * @param name as the designer wrote it
 * @param lengthM length one way, m
 * @param bodyOhm resistance of the way back through engine strap and body, Ω; empty when it goes back by cable
 * @param bodySaid whether that resistance was said, not supposed
 * @param insulationC temperature rating of the insulation, °C
 * @param bundled current-carrying conductors that lie together
 * @param place whose air surrounds the warmest part of the run
 * @param sheathed whether it lies in a sheath or conduit, or in an enclosure
 * @param joints joints that the current passes there and back
 * @param jointOhm resistance of each but the worst, Ω
 * @param worstJointOhm resistance of the worst, Ω
 * @param dropLimitShare largest voltage drop, share of the nominal voltage of its side
 * @param sourceA current that the battery behind it drives into a short, A; empty when it is reckoned
 * @param sensedAtBank whether the regulator of its source senses the voltage behind the drop
 * @param opening what may open a second alternator's run while it charges
 */
public record Circuit(
        String name,
        End from,
        End to,
        double lengthM,
        OptionalDouble bodyOhm,
        boolean bodySaid,
        Conductor conductor,
        double insulationC,
        int bundled,
        Place place,
        boolean sheathed,
        int joints,
        double jointOhm,
        double worstJointOhm,
        double dropLimitShare,
        OptionalDouble sourceA,
        boolean sensedAtBank,
        Opening opening,
        Optional<Protection> protection) {
    /** Copper glows before its insulation is that warm; hotter is not reckoned, °C. */
    private static final double HOTTEST_C = 250;

    /** What may open a run while current flows, its protection apart. */
    public enum Opening {
        NOT_KNOWN("not known"),
        NEVER("never"),
        AFTER_FIELD_OFF("after field-off"),
        UNDER_LOAD("under load");

        private final String label;

        Opening(String label) {
            this.label = label;
        }

        public static List<String> labels() {
            return Arrays.stream(values()).map(o -> o.label).toList();
        }

        public static Optional<Opening> of(String label) {
            return Arrays.stream(values()).filter(o -> o.label.equals(label)).findFirst();
        }
    }

    public Circuit {
        Require.positive("length", lengthM);
        Require.within("insulation", insulationC, 60, 300);
        Require.within("bundle", bundled, 1, 100);
        Require.within("joints", joints, 1, 100);
        Require.notNegative("joint resistance", jointOhm);
        Require.within("worst joint", worstJointOhm, jointOhm, 10);
        Require.within("drop", dropLimitShare, 0.001, 1);
        if (from.equals(to)) {
            throw new IllegalArgumentException("the circuit begins and ends at the same place");
        }
    }

    /** Whether one of its ends is such a point. */
    public boolean joins(End.Point point) {
        return from.point() == point || to.point() == point;
    }

    /** The other end. */
    public End across(End end) {
        return end.equals(from) ? to : from;
    }

    /** What its conductor may carry in air of this temperature, A. */
    public double allowedA(double airC) {
        return Ampacity.allowedA(conductor.areaMm2(), insulationC, bundled, airC);
    }

    /** Temperature of its conductor after long flow, °C. */
    public double conductorC(double airC, double currentA) {
        double c = Ampacity.conductorC(conductor.areaMm2(), insulationC, bundled, airC, currentA);
        return c < HOTTEST_C ? c : HOTTEST_C;
    }

    /** Resistance there and back, joints in it, Ω, at a conductor temperature, °C. */
    public double loopOhm(double conductorC) {
        double ohmPerKm = conductor.ohmPerKm(conductorC);
        double jointsOhm = (joints - 1) * jointOhm + worstJointOhm;
        return bodyOhm.isPresent()
                ? CableRun.wayOhm(lengthM, ohmPerKm) + bodyOhm.getAsDouble() + jointsOhm
                : CableRun.loopOhm(lengthM, ohmPerKm, jointsOhm);
    }

    /** Voltage drop there and back, V. */
    public double dropV(double airC, double currentA) {
        return CableRun.dropV(loopOhm(conductorC(airC, currentA)), currentA);
    }

    /** Temperature of its worst joint, °C; infinite when it runs away. */
    public double worstJointC(double airC, double currentA) {
        double cableC = conductorC(airC, currentA);
        return Joint.steadyC(currentA, worstJointOhm, Joint.kelvinPerWatt(conductor.areaMm2()), cableC, 0);
    }

    /**
     * Temperature of its fuse or breaker, °C: the air there and what its worst joint, taken to be a terminal of it, adds.
     * What a good cable adds at the rated current is in the calibration.
     */
    public double protectionC(double airC, double currentA) {
        return Joint.steadyC(currentA, worstJointOhm, Joint.kelvinPerWatt(conductor.areaMm2()), airC, 0);
    }
}
