package ampdays.units;

import java.util.List;
import java.util.stream.Stream;

/** What a number measures, with its base unit: the one that the specification records use. */
public enum Dimension {
    /** Base W. */
    POWER("a power"),
    /** Base Wh. */
    ENERGY("an energy"),
    /** Base Ah. */
    CHARGE("a charge"),
    /** Base A. */
    CURRENT("a current"),
    /** Base V. */
    VOLTAGE("a voltage"),
    /** Base V/K. */
    VOLTAGE_PER_KELVIN("a change of voltage with temperature"),
    /** Base Ω. */
    RESISTANCE("a resistance"),
    /** Base °C. */
    TEMPERATURE("a temperature"),
    /** Base K. */
    TEMPERATURE_DIFFERENCE("a temperature difference"),
    /** Base m. */
    LENGTH("a length"),
    /** Base m; thickness of foam, which may be named. */
    THICKNESS("a thickness"),
    /** Base m². */
    AREA("an area"),
    /** Base m³. */
    VOLUME("a volume"),
    /** Base kg. */
    MASS("a mass"),
    /** Base s. */
    DURATION("a length of time"),
    /** Base h per day. */
    USE_PER_DAY("a time of use per day"),
    /** Base degrees, north positive. */
    LATITUDE("a latitude"),
    /** Base degrees, east positive. */
    LONGITUDE("a longitude"),
    /** Base degrees. */
    ANGLE("an angle"),
    /** Base 1 (100 % = 1). */
    SHARE("a share"),
    /** Base m/s. */
    SPEED("a speed"),
    /** Base revolutions per minute. */
    ROTATION("a speed of rotation"),
    /** Base W/m². */
    IRRADIANCE("an irradiance"),
    /** Base W/K. */
    CONDUCTANCE("a heat conductance"),
    /** Base W/(m² K). */
    TRANSMITTANCE("a transmittance"),
    /** Base m² K/W. */
    THERMAL_RESISTANCE("a thermal resistance"),
    /** Base W/(m K). */
    CONDUCTIVITY("a heat conductivity"),
    /** Base J/K. */
    HEAT_CAPACITY("a heat capacity"),
    /** Base volumes per hour. */
    AIR_CHANGES("a rate of air changes"),
    /** Base m³/h. */
    AIR_FLOW("an air flow"),
    /** Base degrees clockwise from north. */
    HEADING("a heading"),
    /** Base 1/K. */
    TEMPERATURE_COEFFICIENT("a temperature coefficient"),
    /** Base share of capacity per hour. */
    CHARGE_RATE("a charge rate"),
    /** Base share per thirty days. */
    SHARE_PER_MONTH("a share per month"),
    /** Base L/h. */
    FUEL_RATE("a rate of fuel"),
    /** A plain number. */
    NUMBER("a plain number");

    private final String title;

    Dimension(String title) {
        this.title = title;
    }

    /** The dimension with its article, as in "a power". */
    public String title() {
        return title;
    }

    /** The symbol of every unit, the one shown first. */
    public List<String> symbols() {
        return Units.of(this).stream().map(Unit::symbol).toList();
    }

    /** Every spelling that is read, of every unit. */
    public List<String> spellings() {
        return Units.of(this).stream()
                .flatMap(u -> Stream.concat(Stream.of(u.symbol()), u.spellings().stream()))
                .toList();
    }

    /** A value in base units as a number of the unit shown first. */
    public double shown(double base) {
        return Units.shown(this).fromBase(base);
    }

    /** A value in base units as text in the unit shown first, to four significant digits. */
    public String show(double base) {
        return Units.shown(this).show(base, 4);
    }
}
