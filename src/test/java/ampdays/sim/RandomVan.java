package ampdays.sim;

import ampdays.weather.WeatherSeries;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Vans that nobody would think of, from a seed: components, loads, timetable and weather. */
final class RandomVan {
    private static final String[] VEHICLES = {
        "park sun", "park part-shade", "park shade", "park sun hook-up", "idle", "drive town", "drive highway"
    };
    private static final String[] PEOPLE = {"awake", "asleep", "away"};

    private final RandomGenerator random;
    private final Van van = new Van();

    private RandomVan(long seed) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** Any van; everything may be in it. */
    static Van any(long seed) {
        RandomVan made = new RandomVan(seed);
        made.bankAndLoads();
        made.timetable(VEHICLES.length);
        made.supply();
        made.living();
        return made.van;
    }

    /** The same without a refrigerator or cooling, so that nothing asked depends on what the cabin is like. */
    static Van plain(long seed) {
        RandomVan made = new RandomVan(seed);
        made.bankAndLoads();
        made.timetable(VEHICLES.length);
        made.supply();
        return made.van;
    }

    /** Any van that never runs its engine. */
    static Van parked(long seed) {
        RandomVan made = new RandomVan(seed);
        made.bankAndLoads();
        made.timetable(4);
        made.supply();
        made.living();
        return made.van.with("factory-alternator", "none");
    }

    /** Weather from the same seed: nights of -15 °C to days of 50 °C, sun from none to a bright desert. */
    static WeatherSeries weather(long seed) {
        RandomVan made = new RandomVan(seed + 1_000_000);
        double meanC = made.between(-8, 40);
        double swingK = made.between(0, 10);
        double noonWm2 = made.between(0, 1050);
        double windMs = made.between(0, 12);
        return Van.weather(
                hour -> meanC - swingK * Math.cos((hour - 3) * Math.PI / 12),
                hour -> {
                    double height = Math.sin((hour + 0.5 - 6) * Math.PI / 12);
                    return height > 0 ? noonWm2 * height : 0;
                },
                windMs);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private String number(double low, double high, String unit) {
        return String.format(Locale.ROOT, "%.3f %s", between(low, high), unit);
    }

    private String one(String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private void bankAndLoads() {
        van.with("trip.days", Integer.toString(4 + random.nextInt(7)))
                .with("trip.reserve", number(10, 40, "%"))
                .with("battery.preset", "lithium iron phosphate " + one("12 V", "12 V", "24 V"))
                .with("battery.capacity", number(60, 900, "Ah"))
                .with("battery.start", number(15, 100, "%"))
                .with("battery.charge-rate", number(0.2, 1, "C"))
                .with("battery.cut-out", number(2, 9, "%"))
                .with("battery.discharge-limit", number(40, 400, "A"));
        int loads = random.nextInt(5);
        for (int i = 0; i < loads; i++) {
            String name = "load " + i;
            String draw = chance(0.5) ? number(0.1, 25, "A") : number(1, 600, "W");
            van.load(name, draw, one("always", "awake", "asleep", "parked", "07:00-19:00", "19:30-06:15"));
            if (chance(0.3)) {
                van.with("loads." + name + ".use", number(0.1, 6, "h/day"));
            }
        }
        if (chance(0.4)) {
            van.with("inverter.preset", "2,000 W class")
                    .with("inverter.running", one("always", "in use"))
                    .load("kettle", number(100, 1800, "W"), one("always", "awake", "17:00-18:30"))
                    .with("loads.kettle.on", "inverter");
        }
    }

    private void timetable(int vehicles) {
        StringBuilder lines = new StringBuilder();
        int minute = 0;
        while (minute < 1440) {
            lines.append(lines.length() == 0 ? "" : "\n")
                    .append(String.format(Locale.ROOT, "%02d:%02d ", minute / 60, minute % 60))
                    .append(VEHICLES[random.nextInt(vehicles)])
                    .append(", ")
                    .append(one(PEOPLE));
            minute += 5 + random.nextInt(500);
        }
        van.with("trip.timetable.all days", lines.toString());
    }

    private void supply() {
        if (chance(0.7)) {
            van.with("solar.preset", one("framed panels", "bonded panels")).with("solar.power", number(50, 1200, "W"));
            if (chance(0.5)) {
                van.with("solar.controller", number(5, 60, "A"));
            }
        }
        if (chance(0.5)) {
            van.with("factory-alternator.preset", one("factory 180 A class", "factory 220 A class"))
                    .with("factory-alternator.charger", number(10, 120, "A"));
        }
        if (chance(0.5)) {
            van.with("shore-charger.preset", "50 A class").with("shore-charger.rated", number(5, 80, "A"));
        }
    }

    /** Adds a second alternator to a van. */
    static Van withSecondAlternator(Van van, long seed) {
        RandomVan made = new RandomVan(seed + 2_000_000);
        return van.with("second-alternator.preset", made.one("large frame", "medium frame"))
                .with("second-alternator.cable", made.number(1, 25, "mΩ"))
                .with("second-alternator.cap", made.number(40, 250, "A"))
                .with("second-alternator.belt", made.number(1, 8, "kW"));
    }

    private void living() {
        if (chance(0.6)) {
            van.with("refrigerator.preset", one("90 L compressor", "50 L compressor"));
        }
        if (chance(0.6)) {
            van.with("cooling.preset", one("variable-speed roof unit", "fixed-speed roof unit"))
                    .with("cabin.set.asleep", number(20, 27, "°C"))
                    .with("cabin.set.awake", chance(0.5) ? "off" : number(22, 28, "°C"));
        }
    }
}
