package ampdays.chart;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the values of a scenario are called on a chart, for readers who do not write scenarios. What has no words here keeps its
 * path. Test: {@code KnobTitleTest}.
 */
final class PlainNames {
    static final String HEAT = "weather-offset";

    /** A path and its words; a star in both is the name that stands there. */
    static final Map<String, String> WORDS = read("""
            weather-offset = air hotter than in the weather file
            trip.start = first day of the trip
            trip.days = days of the trip
            trip.drive-hours = driving
            trip.parked-days = days parked in a row

            cabin.roof = roof area
            cabin.walls = wall area
            cabin.floor = floor area
            cabin.glass = window area
            cabin.volume = air in the living area
            cabin.insulation = insulation of roof and walls
            cabin.insulation-conductivity = conductivity of the insulation
            cabin.bridges = heat through ribs and frames
            cabin.floor-transmittance = heat through the floor
            cabin.colour = colour of the van
            cabin.absorptance = sunlight that the paint absorbs
            cabin.walls-sides = walls on the two long sides
            cabin.glass-front = glass at the front
            cabin.glass-sides = glass on both sides
            cabin.glass-transmittance = heat through bare windows
            cabin.glass-solar = sun through bare windows
            cabin.covers = window covers
            cabin.covers-resistance = insulation by the window covers
            cabin.covers-pass = sun that passes the window covers
            cabin.solar-to-air = sun indoors that warms the air first
            cabin.air-changes = draught while parked
            cabin.air-changes-driving = draught while driving
            cabin.leak-area = area of all gaps
            cabin.airing = cabin warm enough for fans to air it
            cabin.air-capacity = heat that the air and linings hold
            cabin.mass-capacity = heat that the furniture holds
            cabin.air-to-mass = heat between the air and the furniture
            cabin.panel-heat = heat of the panels that reaches the roof
            cabin.people = people in the van
            cabin.heading = where the front of the van points
            cabin.set.asleep = set point while asleep
            cabin.set.awake = set point while awake
            cabin.set.aboard = set point while aboard
            cabin.set.away = set point while away
            cabin.comfort.low = least temperature of comfort
            cabin.comfort.high = highest temperature of comfort

            cooling.capacity = size of the air conditioner
            cooling.cop = efficiency (COP) of the air conditioner
            cooling.turn-down = least power of the air conditioner
            cooling.part-load = input of the air conditioner at part load
            cooling.cycling-loss = loss as the air conditioner cycles
            cooling.band = thermostat band of the air conditioner
            cooling.least-run = shortest run of the air conditioner
            cooling.least-rest = shortest rest of the air conditioner
            cooling.cold-start = start of the air conditioner without cold
            cooling.step-down-voltage = voltage at which the cooling steps down
            cooling.step-down = cooling that is left when stepped down
            cooling.cut-out-voltage = voltage at which the cooling stops
            cooling.restart-voltage = voltage at which the cooling restarts
            cooling.start-surge = surge as the air conditioner starts
            cooling.pre-cool.to = temperature of cooling ahead
            cooling.shed-below = charge below which cooling is shed
            dash-cooling.to = temperature that the dash cools to
            dash-cooling.capacity = cooling from the dash
            dash-cooling.cop = efficiency (COP) of the dash cooling

            refrigerator.leak = heat leak of the refrigerator
            refrigerator.compressor = compressor of the refrigerator
            refrigerator.inside = temperature in the refrigerator
            refrigerator.band = thermostat band of the refrigerator
            refrigerator.heat-capacity = heat that the refrigerator holds
            refrigerator.standing = standing draw of the refrigerator
            refrigerator.carnot = efficiency of the refrigerator
            refrigerator.approach = exchangers of the refrigerator off their air
            refrigerator.condenser-rise = warm air behind the refrigerator
            refrigerator.daily-use = doors and warm food, a day
            refrigerator.shopping = warm food after shopping
            refrigerator.shed-below = charge below which the refrigerator is shed

            loads.*.draw = *: draw
            loads.*.use = *: use a day
            loads.*.heat = *: share that heats the cabin
            loads.*.airflow = *: air moved
            loads.*.shed-below = *: charge below which it is shed

            inverter.rated = rating of the inverter
            inverter.idle = idle draw of the inverter
            inverter.linear-loss = loss of the inverter
            inverter.square-loss = further loss of the inverter at full output
            inverter.surge = surge of the inverter

            battery.chemistry = chemistry of the bank
            battery.capacity = size of the bank
            battery.start = charge at the start
            battery.health = capacity left in the bank
            battery.health-resistance = resistance of the bank by its age
            battery.resistance = resistance of the bank
            battery.charge-rate = charge rate of the bank
            battery.absorption = absorption voltage of the bank
            battery.taper-from = charge from which charging tapers
            battery.tail = current of a full bank
            battery.coulombic-efficiency = charge out of the bank over charge in
            battery.self-discharge = self-discharge of the bank
            battery.electronics = electronics of the bank
            battery.cold-capacity = charge within reach at 0 °C
            battery.link = links between strings of the bank
            battery.charge-limit = charge limit of the bank
            battery.discharge-limit = discharge limit of the bank
            battery.trip-wait = wait of the protection once open
            battery.charge-cold = cold that stops charging
            battery.charge-hot = heat that stops charging
            battery.discharge-cold = cold that stops the bank
            battery.discharge-hot = heat that stops the bank
            battery.protection-band = band of the protection
            battery.cut-out = charge at which loads are cut
            battery.cut-out-voltage = voltage at which loads are cut
            battery.reconnect = charge at which loads come back
            battery.shed-band = rise of charge before shed loads come back
            battery.rated-time = hours of the rated capacity
            battery.at-hand = charge at hand in the bank
            battery.well-rate = how fast charge comes to hand
            battery.float = float voltage of the bank
            battery.compensation = charging voltage by temperature
            battery.heat-capacity = heat that the bank holds
            battery.heat-conductance = heat between bank and cabin

            solar.power = power of the panels
            solar.tilt = tilt of the panels
            solar.azimuth = direction that the panels face
            solar.mounting = mounting of the panels
            solar.gap = air below the panels
            solar.temperature-coefficient = loss of the panels by heat
            solar.low-light = loss of the panels in low light
            solar.panel-efficiency = efficiency of the panels
            solar.dirt = dirt on the panels
            solar.dirt-a-day = dirt on the panels, a day
            solar.dirt-most = most dirt on the panels
            solar.mismatch = mismatch of the panels
            solar.wiring = loss in the wires of the panels
            solar.furniture = shadow of vents and racks on the panels
            solar.tracking = tracking by the solar controller
            solar.conversion = efficiency of the solar controller
            solar.string-voltage = voltage of a string of panels
            solar.controller = limit of the solar controller

            factory-alternator.charger = rating of the DC-DC charger
            factory-alternator.charger-efficiency = efficiency of the DC-DC charger
            factory-alternator.charger-least-input = least input voltage of the DC-DC charger
            factory-alternator.charger-heat-capacity = heat that the DC-DC charger holds
            factory-alternator.charger-to-air = cooling of the DC-DC charger
            factory-alternator.charger-derate-from = heat at which the DC-DC charger gives less
            factory-alternator.charger-derate-to = heat at which the DC-DC charger stops
            factory-alternator.vehicle-idle = draw of the vehicle at idle
            factory-alternator.vehicle-driving = draw of the vehicle while driving
            factory-alternator.content-after = time to a content start battery
            factory-alternator.smart-idle = voltage at idle, smart alternator
            factory-alternator.smart-town = voltage in town, smart alternator
            factory-alternator.smart-highway = voltage on the highway, smart alternator

            *-alternator.set-point = voltage set point, * alternator
            *-alternator.cable = cable of the * alternator
            *-alternator.rated = rating of the * alternator
            *-alternator.cut-in = speed of the first amp, * alternator
            *-alternator.curve = rise of output by speed, * alternator
            *-alternator.hot-winding = winding of the hot curve, * alternator
            *-alternator.pulley = pulley ratio, * alternator
            *-alternator.cap = current cap, * alternator
            *-alternator.start-delay = delay after a start, * alternator
            *-alternator.ramp = ramp to full current, * alternator
            *-alternator.cut-back-from = heat of the first cut-back, * alternator
            *-alternator.cut-back-to = heat of the full cut-back, * alternator
            *-alternator.belt = power of the belt, * alternator
            *-alternator.belt-speed = speed of the full belt, * alternator
            *-alternator.efficiency = efficiency of the * alternator
            *-alternator.winding-capacity = heat that the winding holds, * alternator
            *-alternator.case-capacity = heat that the case holds, * alternator
            *-alternator.winding-to-case = heat from winding to case, * alternator
            *-alternator.winding-to-air = cooling of the winding, * alternator
            *-alternator.case-to-air = cooling of the case, * alternator

            engine.idle = engine speed at idle
            engine.fast-idle = engine speed at fast idle
            engine.town = engine speed in town
            engine.highway = engine speed on the highway
            engine.idle-fuel = fuel at idle
            engine.fast-idle-fuel = fuel at fast idle
            engine.idle-rise = heat under the bonnet at idle
            engine.fast-idle-rise = heat under the bonnet at fast idle
            engine.town-rise = heat under the bonnet in town
            engine.highway-rise = heat under the bonnet on the highway
            engine.rise-time = time in which the bonnet warms
            engine.soak-rise = heat under the bonnet after a stop
            engine.soak-time = time in which that heat builds up
            engine.cool-time = time in which the engine cools

            shore-charger.rated = rating of the shore charger
            shore-charger.efficiency = efficiency of the shore charger
            shore-charger.hook-up = limit of the hook-up
            """);

    private static final Pattern NAMED = Pattern.compile("(loads\\.)(.+)(\\.[^.]+)|()([a-z]+)(-alternator\\.[^.]+)");

    private PlainNames() {}

    private static Map<String, String> read(String table) {
        Map<String, String> words = new LinkedHashMap<>();
        table.lines().filter(line -> !line.isEmpty()).forEach(line -> {
            String[] pair = line.split(" = ", 2);
            if (words.put(pair[0], pair[1]) != null) {
                throw new IllegalStateException(pair[0] + " has words twice");
            }
        });
        return Map.copyOf(words);
    }

    /** The words of a path, or the path itself. */
    static String of(String path) {
        String own = WORDS.get(path);
        if (own != null) {
            return own;
        }
        Matcher named = NAMED.matcher(path);
        if (!named.matches()) {
            return path;
        }
        int first = named.group(1) == null ? 4 : 1;
        String words = WORDS.get(named.group(first) + "*" + named.group(first + 2));
        return words == null ? path : words.replace("*", named.group(first + 1));
    }
}
