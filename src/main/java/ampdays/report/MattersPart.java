package ampdays.report;

import ampdays.chart.TornadoChart;
import ampdays.report.Block.Heading;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Points;
import ampdays.report.Block.Text;
import ampdays.results.Matters;
import java.util.List;
import java.util.stream.Stream;

/** Which figures of the recommended design move its answer. */
final class MattersPart {
    private MattersPart() {}

    static Part of(Matters matters) {
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
}
