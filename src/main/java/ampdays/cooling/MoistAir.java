package ampdays.cooling;

/**
 * Wet bulb of moist air at one pressure, by a table made once: the wet bulb is nearly the temperature at which saturated
 * air has the same enthalpy, h = 1.006 T + w (2501 + 1.86 T) kJ per kg of dry air (textbook form, from memory).
 * Saturation pressure by Magnus, 611.2 exp(17.62 T/(243.12 + T)) Pa (WMO guide No. 8, from memory). Off the true wet
 * bulb by less than 0.3 K in the range of rooms (checked against the rating point 26.7 °C / 19.4 °C, 50.7 % humidity).
 * Reference: CoolingTest.
 */
public final class MoistAir {

    private static final int ENTRIES = 400;
    private static final double ENTRY_KJ = 0.5;

    private final double pressurePa;
    private final double[] wetBulbC = new double[ENTRIES + 1];

    /** @param pressurePa air pressure, Pa */
    public MoistAir(double pressurePa) {
        this.pressurePa = pressurePa;
        double temperatureC = -60;
        for (int i = 0; i <= ENTRIES; i++) {
            double wanted = (i - ENTRIES / 8) * ENTRY_KJ;
            while (enthalpy(temperatureC, saturationRatio(temperatureC, pressurePa)) < wanted) {
                temperatureC += 0.005;
            }
            wetBulbC[i] = temperatureC;
        }
    }

    /** Wet bulb, °C, from dry bulb (°C) and humidity ratio (kg water per kg dry air). */
    public double wetBulbC(double dryBulbC, double humidityRatio) {
        double at = enthalpy(dryBulbC, humidityRatio) / ENTRY_KJ + ENTRIES / 8;
        at = at < 0 ? 0 : at > ENTRIES - 1 ? ENTRIES - 1 : at;
        int entry = (int) at;
        return wetBulbC[entry] + (wetBulbC[entry + 1] - wetBulbC[entry]) * (at - entry);
    }

    /** Humidity ratio of saturated air, kg/kg. */
    public double saturationRatio(double temperatureC) {
        return saturationRatio(temperatureC, pressurePa);
    }

    private static double saturationRatio(double temperatureC, double pressurePa) {
        double vapourPa = 611.2 * Math.exp(17.62 * temperatureC / (243.12 + temperatureC));
        return 0.62198 * vapourPa / (pressurePa - vapourPa);
    }

    private static double enthalpy(double temperatureC, double humidityRatio) {
        return 1.006 * temperatureC + humidityRatio * (2501 + 1.86 * temperatureC);
    }
}
