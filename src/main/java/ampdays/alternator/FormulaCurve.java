package ampdays.alternator;

import ampdays.units.Require;

/**
 * The curve by formula: {@link AlternatorPhysics#curveA} with the end value that meets the rating.
 *
 * @param ratedA current at 6,000 1/min, cold, A
 * @param cutInRpm rotor speed at which it begins to give current, cold, 1/min
 * @param curveRpm how far above that the curve reaches 63 % of its end value, 1/min
 */
public record FormulaCurve(double ratedA, double cutInRpm, double curveRpm) implements OutputCurve {
    public FormulaCurve {
        Require.within("rated current", ratedA, 1, 2000);
        Require.within("cut-in speed", cutInRpm, 100, 5000);
        Require.within("curve speed", curveRpm, 50, 10_000);
    }

    @Override
    public double currentA(double rotorRpm, double windingC) {
        return AlternatorPhysics.curveA(rotorRpm, endA(), cutInRpm, curveRpm, windingC);
    }

    @Override
    public double hotWindingC() {
        return AlternatorPhysics.FIT_HOT_C;
    }

    @Override
    public double endA() {
        return AlternatorPhysics.maxA(ratedA, cutInRpm, curveRpm);
    }
}
