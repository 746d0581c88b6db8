package ampdays.study;

import ampdays.scenario.Variant;
import ampdays.sim.AlternatorBench;
import ampdays.sim.AlternatorBench.Pace;
import ampdays.sim.AlternatorBench.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tag of spare amps: what the alternators of a design give cold, and hot after a soak in under-bonnet air of 93 °C.
 *
 * <p>The hot column follows the method of the public federal specification for ambulances, KKK-A-1822, which has the
 * builder test and tag the amps that are left at 93 °C (200 °F) under the bonnet. Its cold column is at 23 °C, where
 * ratings are tested (ISO 8854).
 *
 * @param option name of the option
 * @param units one per way to the bank
 */
public record HotTest(String option, List<Unit> units) {
    /** Air of the cold column, °C (ISO 8854: 23 ± 5 °C). */
    public static final double COLD_AIR_C = 23;

    /** Air under the bonnet in the hot column, °C (KKK-A-1822: 200 °F). */
    public static final double HOT_AIR_C = 93;

    /** Air in the cabin, around a DC-DC charger that sits there, in the hot column, °C; a guess. */
    public static final double HOT_CABIN_C = 40;

    /** Minutes at full output before the hot column is read. */
    public static final int SOAK_MINUTES = 30;

    private static final double COLD_S = 60;

    public HotTest {
        units = List.copyOf(units);
    }

    /**
     * One way to the bank.
     *
     * @param ratedA nameplate of what its readings are compared with, A
     */
    public record Unit(String name, double ratedA, List<Line> lines) {
        public Unit {
            lines = List.copyOf(lines);
        }
    }

    /** One engine speed. */
    public record Line(String pace, double engineRpm, Reading cold, Reading hot) {}

    /** How one reading is taken, in air of a temperature, for a time. */
    private interface Take {
        Reading read(Pace pace, double airC, double cabinC, double soakS);
    }

    /** Tests the alternators of a variant; empty when it has none. */
    public static Optional<HotTest> of(Variant variant) {
        AlternatorBench bench = AlternatorBench.of(variant);
        List<Unit> units = new ArrayList<>();
        if (bench.hasSecond()) {
            units.add(unit(
                    "second alternator",
                    bench.secondRatedA(),
                    bench,
                    (pace, airC, cabinC, soakS) -> bench.second(pace, airC, soakS)));
        }
        if (bench.hasFactory()) {
            units.add(unit(
                    "factory alternator beyond the vehicle's own load",
                    bench.factoryRatedA(),
                    bench,
                    (pace, airC, cabinC, soakS) -> bench.factorySpare(pace, airC, soakS)));
            units.add(unit("DC-DC charger, into the bank", bench.chargerRatedA(), bench, bench::charger));
        }
        return units.isEmpty() ? Optional.empty() : Optional.of(new HotTest(variant.name(), units));
    }

    private static Unit unit(String name, double ratedA, AlternatorBench bench, Take take) {
        List<Line> lines = new ArrayList<>();
        for (Pace pace : Pace.values()) {
            lines.add(new Line(
                    pace.label(),
                    bench.engineRpm(pace),
                    take.read(pace, COLD_AIR_C, COLD_AIR_C, COLD_S),
                    take.read(pace, HOT_AIR_C, HOT_CABIN_C, SOAK_MINUTES * 60.0)));
        }
        return new Unit(name, ratedA, lines);
    }
}
