package ampdays.units;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The units of each dimension. The first is the one shown; the second is offered beside it in messages.
 *
 * <p>Factors: exact definitions and values of A. Thompson and B. N. Taylor, Guide for the Use of the International
 * System of Units, NIST Special Publication 811 (2008), appendix B.8. Reference test: QuantityTest.
 */
final class Units {
    /** International table British thermal unit, J, exact. */
    private static final double BTU_J = 1055.05585262;
    /** 550 ft·lbf/s with 1 lbf = 4.4482216152605 N, exact. */
    private static final double HORSEPOWER_W = 550 * 0.3048 * 4.4482216152605;
    /** United States gallon, 231 in³, exact. */
    private static final double GALLON_L = 3.785411784;

    private static final double SQUARE_FOOT_M2 = 0.3048 * 0.3048;
    private static final double BTU_PER_HOUR_W = BTU_J / 3600;
    /** Kelvin per degree Fahrenheit. */
    private static final double F_K = 5.0 / 9;

    private static final Map<Dimension, List<Unit>> TABLE = table();

    private Units() {}

    private static Map<Dimension, List<Unit>> table() {
        Map<Dimension, List<Unit>> table = new EnumMap<>(Dimension.class);
        table.put(
                Dimension.POWER,
                List.of(
                        Unit.of("W", 1, "watt", "watts", "Wp"),
                        Unit.of("kW", 1000),
                        Unit.of("BTU/h", BTU_PER_HOUR_W, "Btu/h", "btu/h", "BTU/hr", "Btu/hr"),
                        Unit.of("hp", HORSEPOWER_W)));
        table.put(
                Dimension.ENERGY,
                List.of(Unit.of("Wh", 1), Unit.of("kWh", 1000), Unit.of("MJ", 1e6 / 3600), Unit.of("kJ", 1e3 / 3600)));
        table.put(Dimension.CHARGE, List.of(Unit.of("Ah", 1), Unit.of("mAh", 1e-3)));
        table.put(Dimension.CURRENT, List.of(Unit.of("A", 1, "amp", "amps"), Unit.of("mA", 1e-3), Unit.of("kA", 1e3)));
        table.put(Dimension.VOLTAGE, List.of(Unit.of("V", 1, "volt", "volts"), Unit.of("mV", 1e-3)));
        table.put(Dimension.VOLTAGE_PER_KELVIN, List.of(Unit.of("mV/K", 1e-3, "mV/°C", "mV/C"), Unit.of("V/K", 1)));
        table.put(
                Dimension.RESISTANCE,
                List.of(
                        Unit.of("mΩ", 1e-3, "m\u2126", "mohm"),
                        Unit.of("Ω", 1, "\u2126", "ohm", "ohms"),
                        Unit.of("µΩ", 1e-6, "\u03bc\u03a9", "\u00b5\u2126", "uohm")));
        table.put(
                Dimension.TEMPERATURE,
                List.of(Unit.of("°C", 1, "C", "degC", "℃"), new Unit("°F", F_K, -32, List.of("F", "degF", "℉"))));
        table.put(
                Dimension.TEMPERATURE_DIFFERENCE,
                List.of(Unit.of("K", 1, "°C", "C", "degC"), Unit.of("°F", F_K, "F", "degF")));
        table.put(
                Dimension.LENGTH,
                List.of(
                        Unit.of("m", 1),
                        Unit.of("ft", 0.3048, "feet", "foot", "'"),
                        Unit.of("mm", 1e-3),
                        Unit.of("cm", 1e-2),
                        Unit.of("in", 0.0254, "inch", "inches", "\"")));
        table.put(
                Dimension.THICKNESS,
                List.of(
                        Unit.of("mm", 1e-3, "mm foam"),
                        Unit.of("in", 0.0254, "inch", "inches", "in foam", "inch foam"),
                        Unit.of("cm", 1e-2, "cm foam")));
        table.put(
                Dimension.AREA,
                List.of(
                        Unit.of("m²", 1, "m2", "sq m"),
                        Unit.of("ft²", SQUARE_FOOT_M2, "ft2", "sq ft"),
                        Unit.of("cm²", 1e-4, "cm2")));
        table.put(
                Dimension.VOLUME,
                List.of(
                        Unit.of("m³", 1, "m3"),
                        Unit.of("ft³", SQUARE_FOOT_M2 * 0.3048, "ft3", "cu ft"),
                        Unit.of("L", 1e-3, "l"),
                        Unit.of("gal", GALLON_L * 1e-3)));
        table.put(Dimension.MASS, List.of(Unit.of("kg", 1), Unit.of("lb", 0.45359237, "lbs"), Unit.of("g", 1e-3)));
        table.put(
                Dimension.DURATION,
                List.of(
                        Unit.of("s", 1, "sec"),
                        Unit.of("min", 60, "minutes", "minute"),
                        Unit.of("h", 3600, "hours", "hour"),
                        Unit.of("days", 86_400, "day", "d")));
        table.put(
                Dimension.USE_PER_DAY,
                List.of(
                        Unit.of("h/day", 1, "h/d", "hours/day", "h per day"),
                        Unit.of("min/day", 1.0 / 60, "min/d", "minutes/day", "min per day")));
        table.put(Dimension.LATITUDE, List.of(Unit.of("°", 1, "deg", "°N", "N"), Unit.of("°S", -1, "S")));
        table.put(Dimension.LONGITUDE, List.of(Unit.of("°", 1, "deg", "°E", "E"), Unit.of("°W", -1, "W")));
        table.put(Dimension.ANGLE, List.of(Unit.of("°", 1, "deg", "degrees")));
        table.put(Dimension.SHARE, List.of(Unit.of("%", 1e-2, "percent")));
        table.put(
                Dimension.SPEED, List.of(Unit.of("m/s", 1), Unit.of("mph", 0.44704), Unit.of("km/h", 1 / 3.6, "kph")));
        table.put(Dimension.ROTATION, List.of(Unit.of("rpm", 1, "1/min", "/min", "rev/min")));
        table.put(Dimension.IRRADIANCE, List.of(Unit.of("W/m²", 1, "W/m2")));
        table.put(Dimension.CONDUCTANCE, List.of(Unit.of("W/K", 1), Unit.of("BTU/(h °F)", BTU_PER_HOUR_W / F_K)));
        table.put(
                Dimension.TRANSMITTANCE,
                List.of(
                        Unit.of("W/(m² K)", 1, "W/(m2 K)", "W/m²K", "W/m2K"),
                        Unit.of("BTU/(h ft² °F)", BTU_PER_HOUR_W / F_K / SQUARE_FOOT_M2, "BTU/(h ft2 F)")));
        table.put(
                Dimension.THERMAL_RESISTANCE,
                List.of(
                        Unit.of("m² K/W", 1, "m2 K/W"),
                        Unit.of("h ft² °F/BTU", SQUARE_FOOT_M2 * F_K / BTU_PER_HOUR_W, "h ft2 F/BTU")));
        table.put(Dimension.CONDUCTIVITY, List.of(Unit.of("W/(m K)", 1, "W/mK")));
        table.put(
                Dimension.HEAT_CAPACITY,
                List.of(
                        Unit.of("kJ/K", 1e3),
                        Unit.of("Wh/K", 3600),
                        Unit.of("J/K", 1),
                        Unit.of("BTU/°F", BTU_J / F_K, "BTU/F")));
        table.put(Dimension.AIR_CHANGES, List.of(Unit.of("1/h", 1, "/h", "per hour")));
        table.put(
                Dimension.AIR_FLOW,
                List.of(
                        Unit.of("m³/h", 1, "m3/h"),
                        Unit.of("ft³/min", 60 * SQUARE_FOOT_M2 * 0.3048, "ft3/min", "cfm", "CFM"),
                        Unit.of("L/s", 3.6, "l/s")));
        table.put(Dimension.HEADING, List.of(Unit.of("°", 1, "deg")));
        table.put(Dimension.TEMPERATURE_COEFFICIENT, List.of(Unit.of("%/K", 1e-2, "%/°C", "%/C")));
        table.put(Dimension.CHARGE_RATE, List.of(Unit.of("C", 1, "1/h")));
        table.put(Dimension.SHARE_PER_MONTH, List.of(Unit.of("%/month", 1e-2)));
        table.put(Dimension.FUEL_RATE, List.of(Unit.of("L/h", 1, "l/h"), Unit.of("gal/h", GALLON_L)));
        table.put(Dimension.NUMBER, List.of(Unit.of("", 1)));
        return Collections.unmodifiableMap(table);
    }

    static List<Unit> of(Dimension dimension) {
        return TABLE.get(dimension);
    }

    static Unit shown(Dimension dimension) {
        return of(dimension).get(0);
    }

    /** The unit offered beside the one shown, if there is another that counts the same way. */
    static Optional<Unit> beside(Dimension dimension) {
        return of(dimension).stream().skip(1).filter(u -> u.factor() > 0).findFirst();
    }

    static Optional<Unit> written(Dimension dimension, String spelling) {
        return of(dimension).stream().filter(u -> u.isWritten(spelling)).findFirst();
    }

    /** The dimension in which a spelling is a unit, if there is one. */
    static Optional<Dimension> dimensionOf(String spelling) {
        return Arrays.stream(Dimension.values())
                .filter(d -> d != Dimension.NUMBER && written(d, spelling).isPresent())
                .findFirst();
    }
}
