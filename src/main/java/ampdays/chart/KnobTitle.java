package ampdays.chart;

import ampdays.results.SweepTable.Column;
import java.util.Map;

/**
 * What the knob of a sweep is called on a chart, for readers who do not write scenarios. The usual knobs have plain words; any
 * other keeps its path. Test: {@code KnobTitleTest}.
 */
final class KnobTitle {
    private static final String HEAT = "weather-offset";

    static final Map<String, String> PLAIN = Map.ofEntries(
            Map.entry(HEAT, "air hotter than in the weather file"),
            Map.entry("trip.start", "first day of the trip"),
            Map.entry("trip.days", "days of the trip"),
            Map.entry("trip.drive-hours", "driving"),
            Map.entry("trip.parked-days", "days parked in a row"),
            Map.entry("battery.capacity", "size of the bank"),
            Map.entry("battery.start", "charge at the start"),
            Map.entry("battery.chemistry", "chemistry of the bank"),
            Map.entry("solar.power", "power of the panels"),
            Map.entry("solar.tilt", "tilt of the panels"),
            Map.entry("solar.mounting", "mounting of the panels"),
            Map.entry("factory-alternator.charger", "rating of the DC-DC charger"),
            Map.entry("factory-alternator.rated", "rating of the factory alternator"),
            Map.entry("second-alternator.rated", "rating of the second alternator"),
            Map.entry("shore-charger.rated", "rating of the shore charger"),
            Map.entry("cooling.capacity", "size of the air conditioner"),
            Map.entry("cooling.cop", "efficiency (COP) of the air conditioner"),
            Map.entry("cabin.covers", "window covers"),
            Map.entry("cabin.insulation", "insulation of roof and walls"),
            Map.entry("cabin.glass", "window area"),
            Map.entry("cabin.colour", "colour of the van"),
            Map.entry("cabin.people", "people in the van"),
            Map.entry("cabin.set.asleep", "set point while asleep"),
            Map.entry("cabin.set.awake", "set point while awake"));

    private KnobTitle() {}

    /** Without the unit. */
    static String of(Column knob) {
        return PLAIN.getOrDefault(knob.path(), knob.path());
    }

    /** With the unit in brackets. */
    static String axis(Column knob) {
        return knob.unit().isEmpty() ? of(knob) : of(knob) + " (" + knob.unit() + ")";
    }

    /** One of its values in words. */
    static String at(Column knob, int place) {
        String amount = knob.amount(place);
        if (!knob.path().equals(HEAT) || !knob.isNumeric()) {
            return of(knob) + " " + amount;
        }
        double byDegrees = knob.number(place);
        return byDegrees == 0
                ? "weather as in the file"
                : "all air " + amount.replaceFirst("^[+-]", "") + (byDegrees > 0 ? " hotter" : " cooler");
    }
}
