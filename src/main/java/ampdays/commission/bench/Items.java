package ampdays.commission.bench;

import ampdays.commission.Band;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Symptom;
import ampdays.commission.bench.SampledReadings.Pass;
import ampdays.commission.bench.SampledReadings.Stop;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Makes the lines of a sheet: what the van as designed would read, and bands from vans drawn within the tolerances. */
final class Items {
    private static final long SEED = 20_250_708;

    private final Variant variant;
    private final VanReadings nominal;
    private final Tolerances tolerances;
    private final PanelSun sun;
    private final Map<String, List<Double>> drawn = new HashMap<>();

    private Items(Variant variant, VanReadings nominal, Tolerances tolerances, PanelSun sun) {
        this.variant = variant;
        this.nominal = nominal;
        this.tolerances = tolerances;
        this.sun = sun;
    }

    /**
     * Draws vans and reads them all.
     *
     * @throws ScenarioException when the design cannot be built, or its panels not be judged at that time
     */
    static Items of(String option, Values values, Conditions told) throws ScenarioException {
        Tolerances tolerances = new Tolerances(values);
        Variant variant = tolerances.nominal(option, told.socShare());
        PanelSun sun = PanelSun.of(told.sun(), variant);
        Day supposed = Day.supposed(told, sun);
        VanReadings.Plan plan = VanReadings.Plan.of(variant, supposed);
        VanReadings nominal = new VanReadings(variant, supposed, plan);
        Items items = new Items(variant, nominal, tolerances, sun);
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
        for (int van = 0; van < SampledReadings.VANS; van++) {
            readings(tolerances, told, sun, plan, () -> 2 * random.nextDouble() - 1)
                    .forEach((id, reading) -> items.drawn
                            .computeIfAbsent(id, key -> new ArrayList<>())
                            .add(reading));
        }
        return items;
    }

    /** What one drawn van reads on a drawn day, before the meter. */
    static Map<String, Double> readings(
            Tolerances tolerances, Conditions told, PanelSun sun, VanReadings.Plan plan, Day.Draw draw)
            throws ScenarioException {
        Day day = Day.drawn(told, sun, draw);
        Variant van = tolerances.draw("drawn", day.socShare(), draw);
        return metered(new VanReadings(van, day, plan).values(), draw);
    }

    /** The same as meters show it. */
    private static Map<String, Double> metered(Map<String, Double> readings, Day.Draw draw) {
        Map<String, Double> shown = new HashMap<>();
        readings.forEach((id, value) -> shown.put(id, value + draw.next() * Meters.halfWidth(unit(id), value)));
        return shown;
    }

    /** Unit in which a simulated reading counts. */
    static String unit(String id) {
        String kind = id.substring(id.indexOf('.') + 1);
        if (kind.equals("rate")) {
            return "K/min";
        }
        if (kind.equals("cable")) {
            return "mV";
        }
        if (kind.equals("case") || kind.equals("cabin")) {
            return "°C";
        }
        if (kind.equals("power")) {
            return "W";
        }
        if (kind.equals("energy")) {
            return "Wh";
        }
        return kind.equals("voltage") || kind.endsWith("-input") || kind.endsWith("-drop") ? "V" : "A";
    }

    Variant variant() {
        return variant;
    }

    VanReadings nominal() {
        return nominal;
    }

    Tolerances tolerances() {
        return tolerances;
    }

    PanelSun sun() {
        return sun;
    }

    /** A reading that is simulated; empty when this van does not have it. */
    Optional<Item> predicted(String id, Symptom symptom, String what, String where, Pass pass, Stop stop) {
        return predicted(id, symptom, what, where, pass, stop, Double.POSITIVE_INFINITY, "");
    }

    /**
     * A reading that is simulated; empty when this van does not have it.
     *
     * @param stopAbove stops above it, whatever the van
     * @param scalesWith id of the current that it is in proportion to; empty for none
     */
    Optional<Item> predicted(
            String id,
            Symptom symptom,
            String what,
            String where,
            Pass pass,
            Stop stop,
            double stopAbove,
            String scalesWith) {
        double value = nominal.values().getOrDefault(id, Double.NaN);
        SampledReadings sampled = new SampledReadings(drawn.getOrDefault(id, List.of()));
        if (!Double.isFinite(value) || sampled.size() < SampledReadings.VANS / 2) {
            return Optional.empty();
        }
        String unit = unit(id);
        int decimals = decimals(unit, value);
        Band band = sampled.band(pass, stop).stoppingAbove(stopAbove).rounded(decimals);
        return Optional.of(
                new Item(id, symptom, what, where, dimension(unit), unit, decimals, value, band, scalesWith));
    }

    /** A reading with a limit of practice. */
    static Item limited(
            String id,
            Symptom symptom,
            String what,
            String where,
            String unit,
            double predicted,
            Band band,
            String scalesWith) {
        double size = Double.isFinite(predicted) ? predicted : band.passTo();
        int decimals = decimals(unit, size);
        return new Item(
                id,
                symptom,
                what,
                where,
                dimension(unit),
                unit,
                decimals,
                predicted,
                band.rounded(decimals),
                scalesWith);
    }

    static Item question(String id, String what, String where, boolean noStops) {
        return new Item(id, Symptom.CHECK, what, where, Optional.empty(), "", 0, 1, Band.yes(noStops), "");
    }

    private static int decimals(String unit, double size) {
        return switch (unit) {
            case "V" -> 2;
            case "A" -> size < 20 ? 1 : 0;
            case "K/min" -> 1;
            default -> 0;
        };
    }

    private static Optional<Dimension> dimension(String unit) {
        return switch (unit) {
            case "A" -> Optional.of(Dimension.CURRENT);
            case "V", "mV" -> Optional.of(Dimension.VOLTAGE);
            case "°C" -> Optional.of(Dimension.TEMPERATURE);
            case "K" -> Optional.of(Dimension.TEMPERATURE_DIFFERENCE);
            case "W" -> Optional.of(Dimension.POWER);
            case "Wh" -> Optional.of(Dimension.ENERGY);
            case "Ah" -> Optional.of(Dimension.CHARGE);
            default -> Optional.empty();
        };
    }
}
