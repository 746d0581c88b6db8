package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.study.Comparison.Option;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Masses of the parts that a scenario names, from what such parts weigh in the trade: kilograms per unit, lower and upper.
 * Common practice, no source; the shop weighs its own.
 */
final class MassSheet {
    private static final double FOAM_LOW_KG_M3 = 30;
    private static final double FOAM_HIGH_KG_M3 = 45;
    private static final double FEW_CHARGER_A = 80;

    private MassSheet() {}

    /** One part with the band of its mass, kg. */
    record Part(String name, double lowKg, double highKg) {
        double middleKg() {
            return (lowKg + highKg) / 2;
        }
    }

    static List<Part> parts(Values values, Variant variant) {
        List<Part> parts = new ArrayList<>();
        double bankKwh = variant.bankWh() / 1000;
        boolean leadAcid = values.word("battery.chemistry").startsWith("lead");
        parts.add(new Part("bank", bankKwh * (leadAcid ? 25 : 8), bankKwh * (leadAcid ? 32 : 11)));
        if (values.has("solar")) {
            double watts = values.number("solar.power");
            boolean bonded = values.number("solar.gap") < 0.001;
            parts.add(
                    new Part("panels with mounts", watts * (bonded ? 0.015 : 0.06), watts * (bonded ? 0.025 : 0.085)));
        }
        if (values.has("factory-alternator")) {
            boolean few = values.number("factory-alternator.charger") < FEW_CHARGER_A;
            parts.add(new Part("DC-DC charger", few ? 1 : 3, few ? 3 : 7));
        }
        if (values.has("second-alternator")) {
            parts.add(new Part("second alternator, bracket, cable, regulator", 14, 29));
        }
        if (values.has("inverter")) {
            double kilowatts = values.number("inverter.rated") / 1000;
            parts.add(new Part("inverter", 5 * kilowatts, 8 * kilowatts));
        }
        if (values.has("cooling")) {
            parts.add(new Part("air conditioner", 20, 35));
        }
        double foamM3 =
                values.number("cabin.insulation") * (values.number("cabin.roof") + values.number("cabin.walls"));
        parts.add(new Part("foam in roof and walls", foamM3 * FOAM_LOW_KG_M3, foamM3 * FOAM_HIGH_KG_M3));
        return parts;
    }

    static double middleKg(Values values, Variant variant) {
        return parts(values, variant).stream().mapToDouble(Part::middleKg).sum();
    }

    /** Part by part for all options. */
    static Sheet sheet(Material material, Say say) {
        Set<String> names = new LinkedHashSet<>();
        List<List<Part>> byOption = new ArrayList<>();
        for (Option option : material.options()) {
            List<Part> parts = parts(material.values(option), material.variant(option));
            byOption.add(parts);
            parts.forEach(part -> names.add(part.name()));
        }
        List<Column> heads = new ArrayList<>(List.of(Column.words("Part")));
        material.results().forEach(r -> heads.add(Column.numbers(r.option())));
        List<Row> rows = new ArrayList<>();
        for (String name : names) {
            List<String> cells = new ArrayList<>(List.of(name));
            byOption.forEach(parts -> cells.add(parts.stream()
                    .filter(part -> part.name().equals(name))
                    .findFirst()
                    .map(part -> band(part.lowKg(), part.highKg(), say))
                    .orElse(Say.NONE)));
            rows.add(Row.of(cells));
        }
        List<String> sums = new ArrayList<>(List.of("all of these"));
        byOption.forEach(parts -> sums.add(band(
                parts.stream().mapToDouble(Part::lowKg).sum(),
                parts.stream().mapToDouble(Part::highKg).sum(),
                say)));
        rows.add(new Row(sums, true));
        return new Sheet(
                "Weights",
                heads,
                rows,
                Form.PLAIN,
                List.of(
                        "Bands of common practice, no source; the first page has their middle. What carries them, furniture"
                                + " and wiring, is not in it. Weigh what is built in, keep 10 to 15 % below the permitted weight,"
                                + " and check both axles and the roof load that the vehicle maker allows."));
    }

    private static String band(double lowKg, double highKg, Say say) {
        return say.units().range(Dimension.MASS, lowKg, highKg, 2);
    }
}
