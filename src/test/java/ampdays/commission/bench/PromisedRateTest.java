package ampdays.commission.bench;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.battery.BankSpec;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Outcome;
import ampdays.commission.Sheet;
import ampdays.commission.Sunlight;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Variant;
import ampdays.sim.Van;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The promise of the sheet, kept by simulation: of 1,000 vans, fifty around each of twenty random designs on a random day,
 * 98 in 100 read within the pass band, reading by reading. Vans, days and meters are drawn by another generator than the
 * sheet's own.
 */
class PromisedRateTest {
    private static final int DESIGNS = 20;
    private static final int VANS_EACH = 50;
    private static final String[] BANKS = {
        "lithium iron phosphate 12 V",
        "lithium iron phosphate 24 V",
        "lead-acid AGM 12 V",
        "lead-acid AGM 24 V",
        "lead-acid gel 12 V",
        "lead-acid flooded 12 V"
    };

    /** Of one reading: promised and read, passed, stopped. */
    private static final class Tally {
        private int read;
        private int passed;
        private int stopped;

        private void add(Outcome outcome) {
            read++;
            passed += outcome == Outcome.PASS ? 1 : 0;
            stopped += outcome == Outcome.STOP ? 1 : 0;
        }

        private double passShare() {
            return (double) passed / read;
        }
    }

    @Test
    void soundVansPassAtThePromisedRate() throws ScenarioException {
        Map<String, Tally> byReading = new TreeMap<>();
        Tally all = new Tally();
        int leadAcid = 0;
        for (int design = 0; design < DESIGNS; design++) {
            SplittableRandom random = new SplittableRandom(1000 + design);
            Van van = van(random);
            leadAcid += van.variant().design().bank().chemistry() instanceof BankSpec.LeadAcid ? 1 : 0;
            Conditions told = told(random);
            Sheet sheet = SheetMaker.sheet("test", "test", van.values(), told);
            Tolerances tolerances = new Tolerances(van.values());
            Variant nominal = tolerances.nominal("nominal", told.socShare());
            PanelSun sun = PanelSun.of(told.sun(), nominal);
            VanReadings.Plan plan = VanReadings.Plan.of(nominal, Day.supposed(told, sun));
            for (int i = 0; i < VANS_EACH; i++) {
                Map<String, Double> readings =
                        Items.readings(tolerances, told, sun, plan, () -> random.nextDouble(-1, 1));
                for (Item item : sheet.items().toList()) {
                    Double reading = readings.get(item.id());
                    if (reading != null && Double.isFinite(reading)) {
                        Outcome outcome = item.band().judge(reading);
                        byReading
                                .computeIfAbsent(kind(item.id()), key -> new Tally())
                                .add(outcome);
                        all.add(outcome);
                    }
                }
            }
        }
        // a share of 0.98 over n readings in clumps of fifty: three standard errors, the ranks' own spread in them
        assertThat(leadAcid).as("lead-acid banks of " + DESIGNS).isBetween(6, DESIGNS - 6);
        assertThat(byReading).hasSizeGreaterThan(20);
        byReading.forEach((reading, tally) -> {
            double spread = Math.sqrt(0.98 * 0.02 / tally.read + 0.007 * 0.007 * VANS_EACH / tally.read);
            assertThat(tally.passShare()).as(reading + " of " + tally.read).isGreaterThan(0.98 - 3 * spread);
        });
        assertThat(all.passShare()).isBetween(0.977, 0.992);
        assertThat((double) all.stopped / all.read).isLessThan(0.001);
    }

    /** Loads count together. */
    private static String kind(String id) {
        return id.replaceFirst("^load-\\d+", "load");
    }

    private static Conditions told(SplittableRandom random) {
        double ambientC = random.nextDouble(5, 42);
        return new Conditions(
                ambientC, ambientC + random.nextDouble(15, 45), random.nextDouble(0.3, 0.7), light(random));
    }

    /** Read in the plane, on the level, or a clear sky; at the equator the sun stands 40° high or more from 9 to 15 h. */
    private static Sunlight light(SplittableRandom random) {
        double wm2 = random.nextDouble(300, 850);
        LocalDateTime at =
                LocalDateTime.of(2026, 1, 1, 9, 0).plusDays(random.nextInt(365)).plusMinutes(random.nextInt(360));
        return switch (random.nextInt(3)) {
            case 0 -> Sunlight.inPlane(wm2);
            case 1 -> new Sunlight(Sunlight.Kind.HORIZONTAL, wm2, Optional.of(at));
            default -> new Sunlight(Sunlight.Kind.CLEAR_SKY, Double.NaN, Optional.of(at));
        };
    }

    private static Van van(SplittableRandom random) {
        String[] marks = {"measured", "datasheet", "practice", "guess"};
        Van van = new Van()
                .with("battery.preset", one(random, BANKS))
                .with("battery.capacity", number(random, 150, 900, "Ah") + mark(random, marks))
                .load("alarms", number(random, 0.1, 1, "A"), "always")
                .load("pump", number(random, 5, 12, "A") + mark(random, marks), "awake");
        if (random.nextDouble() < 0.8) {
            van.with("second-alternator.preset", one(random, "large frame", "medium frame", "small frame"))
                    .with("second-alternator.cable", number(random, 1, 8, "mΩ") + mark(random, marks));
        }
        if (random.nextDouble() < 0.8) {
            van.with(
                            "factory-alternator.preset",
                            one(random, "factory 180 A class", "factory 220 A class", "smart 180 A class"))
                    .with("factory-alternator.charger", number(random, 20, 60, "A") + mark(random, marks));
        }
        if (random.nextDouble() < 0.8) {
            van.with("solar.preset", one(random, "framed panels", "bonded panels"))
                    .with("solar.power", number(random, 100, 900, "W") + mark(random, marks));
        }
        if (random.nextDouble() < 0.7) {
            van.with("cooling.preset", one(random, "variable-speed roof unit", "fixed-speed roof unit"));
        }
        if (random.nextDouble() < 0.5) {
            van.with("inverter.preset", "2,000 W class")
                    .load("kettle", number(random, 300, 1500, "W"), "awake")
                    .with("loads.kettle.on", "inverter");
        }
        return van.with("refrigerator.preset", one(random, "90 L compressor", "50 L compressor"))
                .with("shore-charger.preset", "50 A class");
    }

    private static String one(SplittableRandom random, String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private static String mark(SplittableRandom random, String... marks) {
        return " (" + one(random, marks) + ")";
    }

    private static String number(SplittableRandom random, double low, double high, String unit) {
        return String.format(Locale.ROOT, "%.2f %s", random.nextDouble(low, high), unit);
    }
}
