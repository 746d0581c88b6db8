package ampdays.sim;

/** One van with every component, in which something happens all day long. */
final class FullVan {
    private FullVan() {}

    static Van with(String cooling) {
        return new Van()
                .with("trip.days", "6")
                .with("trip.timetable.all days", """
                        06:30 drive town, aboard
                        07:10 park sun, away
                        12:00 idle, aboard
                        12:30 park part-shade, awake
                        17:30 drive highway, aboard
                        18:15 park part-shade hook-up, awake
                        20:00 park open, awake
                        22:00 park open, asleep""")
                .with("battery.capacity", "1500 Ah")
                .with("cooling.preset", cooling)
                .with("cabin.set.asleep", "24 °C")
                .with("cabin.set.awake", "26 °C")
                .with("refrigerator.preset", "90 L compressor")
                .with("inverter.preset", "2,000 W class")
                .with("solar.preset", "framed panels")
                .with("solar.power", "400 W")
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "40 A")
                .with("second-alternator.preset", "large frame")
                .with("shore-charger.preset", "50 A class")
                .load("monitors", "0.4 A", "always")
                .load("roof fan", "3 A", "awake")
                .load("laptops", "110 W", "awake")
                .with("loads.laptops.on", "inverter")
                .with("loads.laptops.use", "3 h/day");
    }

    static Van variableSpeed() {
        return with("variable-speed roof unit");
    }

    static Van fixedSpeed() {
        return with("fixed-speed roof unit");
    }

    /** Hot days around 36 °C with sun. */
    static ampdays.weather.WeatherSeries weather() {
        return Van.weather(
                hour -> 33 - 7 * Math.cos((hour - 3) * Math.PI / 12),
                hour -> hour >= 7 && hour < 17 ? 950 * Math.sin((hour - 5.5) * Math.PI / 13) : 0);
    }
}
