package ampdays.alternator;

import ampdays.units.Require;
import java.util.List;

/**
 * One alternator with its regulator, belt and heat.
 *
 * @param ratedA rated current, cold, at 6,000 rotor revolutions per minute (ISO 8854), A
 * @param curve most current by rotor speed and winding temperature
 * @param pulleyRatio rotor revolutions per engine revolution
 * @param setPointV voltage the regulator holds at its sense point, V
 * @param capA current the regulator allows, A
 * @param capPoints what it allows by rotor speed besides, straight between the points; may be empty
 * @param startDelayS seconds after the engine starts before it gives current, s
 * @param rampS seconds from there to full current, s
 * @param cutBackFromC case temperature at which the regulator begins to cut back, °C
 * @param cutBackToC case temperature at which nothing is left, °C
 * @param beltW shaft power the belt carries at {@code beltRpm} rotor speed and above, W
 * @param beltRpm rotor speed below which that power falls in proportion (a torque limit), 1/min
 * @param halfLoadEfficiency efficiency at half the rated current at the mean of the test speeds of (EU) 2017/785
 * @param windingJK heat capacity of windings and rectifier, J/K
 * @param caseJK heat capacity of the case, J/K
 * @param windingToCaseWK conductance between them, W/K
 * @param windingToAirWK conductance of the windings to the air at 6,000 1/min and sea-level air, W/K
 * @param caseToAirWK the same of the case
 * @param cableOhm resistance of the run from alternator to bank, both ways, Ω
 */
public record AlternatorSpec(
        double ratedA,
        OutputCurve curve,
        double pulleyRatio,
        double setPointV,
        double capA,
        List<OutputPoint> capPoints,
        double startDelayS,
        double rampS,
        double cutBackFromC,
        double cutBackToC,
        double beltW,
        double beltRpm,
        double halfLoadEfficiency,
        double windingJK,
        double caseJK,
        double windingToCaseWK,
        double windingToAirWK,
        double caseToAirWK,
        double cableOhm) {
    public AlternatorSpec {
        Require.within("rated current", ratedA, 1, 2000);
        Require.within("pulley ratio", pulleyRatio, 0.5, 6);
        Require.positive("set point", setPointV);
        Require.positive("regulator cap", capA);
        capPoints = List.copyOf(capPoints);
        OutputPoint.rising("regulator's cap", capPoints);
        Require.notNegative("start delay", startDelayS);
        Require.notNegative("ramp", rampS);
        if (!(cutBackToC > cutBackFromC)) {
            throw new IllegalArgumentException("the cut-back must end at a higher temperature than it begins at");
        }
        Require.positive("belt power", beltW);
        Require.positive("belt speed", beltRpm);
        Require.within("efficiency", halfLoadEfficiency, 0.3, 0.9);
        Require.positive("heat capacity of the windings", windingJK);
        Require.positive("heat capacity of the case", caseJK);
        Require.positive("winding to case conductance", windingToCaseWK);
        Require.positive("winding to air conductance", windingToAirWK);
        Require.positive("case to air conductance", caseToAirWK);
        Require.positive("cable resistance", cableOhm);
    }

    /** Current the regulator allows at a rotor speed, A. */
    public double capA(double rotorRpm) {
        double bySpeedA = OutputPoint.straightA(capPoints, rotorRpm);
        return bySpeedA < capA ? bySpeedA : capA;
    }
}
