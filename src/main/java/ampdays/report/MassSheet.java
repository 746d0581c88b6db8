package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.scenario.Parts;
import ampdays.scenario.PricedPart;
import ampdays.scenario.Values;
import ampdays.study.Comparison.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What the parts of all options weigh, from the masses in force. */
final class MassSheet {
    static final double LEAST_KG = 0.05;

    private MassSheet() {}

    static double sumKg(Values values) {
        return Parts.of(values).massKg();
    }

    /** Part by part for all options. */
    static Sheet sheet(Material material, Say say) {
        List<Column> heads = new ArrayList<>(List.of(Column.words("Part")));
        material.results().forEach(r -> heads.add(Column.numbers(r.option())));
        List<Row> rows = new ArrayList<>();
        for (PricedPart part : PricedPart.values()) {
            if (material.options().stream().anyMatch(o -> part.massKg(material.values(o)) >= LEAST_KG)) {
                rows.add(Row.of(cells(part.label(), material, say, part::massKg)));
            }
        }
        rows.add(new Row(cells("all of these", material, say, MassSheet::sumKg), true));
        return new Sheet(
                "Weights",
                heads,
                rows,
                Form.PLAIN,
                List.of(
                        "From the weights under “Assumptions”; where nobody weighed, the middle of what is usual, without a"
                                + " source. What carries the parts, furniture and wiring, is not in it. Weigh what is built"
                                + " in, keep 10 to 15 % below the permitted weight, and check both axles and the roof load"
                                + " that the vehicle maker allows."));
    }

    private static List<String> cells(String name, Material material, Say say, ToDoubleFunction<Values> kilograms) {
        List<String> cells = new ArrayList<>(List.of(name));
        for (Option option : material.options()) {
            double kg = kilograms.applyAsDouble(material.values(option));
            cells.add(kg < LEAST_KG ? Say.NONE : say.mass(kg));
        }
        return cells;
    }
}
