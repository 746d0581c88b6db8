package ampdays.report;

import ampdays.chart.DriveChart;
import ampdays.chart.OperatingPoints;
import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.study.Comparison.Option;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the alternators work between their cold and their hot curve, how hot they get, and what rules the charge. */
final class AlternatorPart {
    private AlternatorPart() {}

    static Optional<Part> of(Material material, Say say) {
        List<Option> shown = EnergyPart.shown(material)
                .filter(option -> option.alternators().isPresent())
                .toList();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        Stream<Picture> pictures = shown.stream().flatMap(option -> pictures(material, option));
        return Optional.of(
                Part.of("alternators", "Alternators", Stream.concat(pictures, Stream.of(sheet(material, say)))));
    }

    private static Stream<Picture> pictures(Material material, Option option) {
        int number = material.options().indexOf(option);
        String name = Wording.capital(option.result().option());
        return Stream.of(
                new Picture(
                        "operating-points-" + number,
                        Units.of(OperatingPoints.of(material.comparison(), option), material.units()),
                        name
                                + ": how long at which current and speed, between the cold and the hot curve. Nameplate amps are"
                                + " those of a cold unit at high speed."),
                new Picture(
                        "drives-" + number,
                        Units.of(DriveChart.of(material.comparison(), option), material.units()),
                        name + ": temperatures of winding and case, currents, and what holds the charge back."));
    }

    private static Sheet sheet(Material material, Say say) {
        List<Column> heads = new ArrayList<>(List.of(Column.words("What ruled the charge")));
        material.results().forEach(r -> heads.add(Column.numbers(r.option())));
        List<Row> rows = new ArrayList<>();
        List<String> hottest = new ArrayList<>(List.of("hottest case"));
        material.results().forEach(r -> hottest.add(say.celsius(r.alternatorPeakCaseC())));
        rows.add(Row.of(hottest));
        for (Limit limit : Limit.values()) {
            List<String> cells = new ArrayList<>(List.of(limit.label()));
            for (RunResult result : material.results()) {
                cells.add(Say.hours(result.limitHours().getOrDefault(limit, 0.0)));
            }
            if (cells.stream().skip(1).anyMatch(cell -> !cell.equals(Say.NONE))) {
                rows.add(Row.of(cells));
            }
        }
        return new Sheet(
                "Hours by ruling limit",
                heads,
                rows,
                Form.PLAIN,
                List.of("At every minute one limit rules the charging path; the table says for how long each did."));
    }
}
