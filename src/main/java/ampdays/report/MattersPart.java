package ampdays.report;

import ampdays.chart.TornadoChart;
import ampdays.report.Block.Heading;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Points;
import ampdays.report.Block.Text;
import ampdays.results.Matters;
import ampdays.results.Matters.Input;
import ampdays.scenario.Origin;
import ampdays.scenario.Parameter;
import ampdays.scenario.Registry;
import ampdays.scenario.Value;
import ampdays.units.QuantityException;
import ampdays.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which figures of the recommended design move its answer. */
final class MattersPart {
    private MattersPart() {}

    static Part of(Matters found, UnitSystem units) {
        Matters matters = found.withInputs(
                found.inputs().stream().map(input -> inUnits(input, units)).toList());
        List<String> first = matters.measureFirst().stream()
                .map(input -> input.name() + ": " + input.usual() + " (" + input.source() + "), taken to lie between "
                        + input.low() + " and " + input.high() + ".")
                .toList();
        return Part.of(
                "matters",
                "What matters most",
                Stream.of(
                        new Picture(
                                "one-at-a-time",
                                TornadoChart.of(matters),
                                "What each figure alone does to the answer, from one end of its spread to the other."),
                        new Heading("Measure this first"),
                        first.isEmpty()
                                ? new Text("Nothing: what is left is weather, habits, or what is measured already.")
                                : Points.of(first)));
    }

    private static Input inUnits(Input input, UnitSystem units) {
        return input.worded(
                written(input.name(), input.low(), units),
                written(input.name(), input.usual(), units),
                written(input.name(), input.high(), units));
    }

    /** A value of the scenario, or of a habit, whose temperatures are differences. */
    private static String written(String name, String text, UnitSystem units) {
        Optional<Parameter> parameter = Registry.parameter(name);
        if (parameter.isEmpty()) {
            return new Say(units).sentence(text);
        }
        try {
            Value value = parameter.get().read(text, Origin.DEFAULT);
            return value.dimension()
                    .map(dimension -> units.written(text, dimension, value.number()))
                    .orElse(text);
        } catch (QuantityException e) {
            throw new IllegalStateException(name + " " + e.getMessage(), e);
        }
    }
}
