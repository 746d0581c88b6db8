package ampdays.alternator;

/** Most current that an alternator gives, by rotor speed and winding temperature. */
public sealed interface OutputCurve permits FormulaCurve, PointCurve {
    /** Winding temperature at which cold curves hold, °C (ISO 8854 tests at 23 ± 5 °C). */
    double COLD_C = 25;

    /**
     * Most current, A, from 0: never falls with speed, never rises with winding temperature.
     *
     * @param rotorRpm rotor speed, 1/min, from 0
     * @param windingC winding temperature, °C
     */
    double currentA(double rotorRpm, double windingC);

    /** Winding temperature that its hot curve holds for, °C. */
    double hotWindingC();

    /** End value of the cold curve, A. */
    double endA();
}
