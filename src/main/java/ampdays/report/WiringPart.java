package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Heading;
import ampdays.report.Block.Point;
import ampdays.report.Block.Points;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import ampdays.units.Dimension;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Cables, fuses and breakers of the options whose circuits the scenario names. */
final class WiringPart {
    private final Say say;

    private WiringPart(Say say) {
        this.say = say;
    }

    static Part of(List<WiringResult> results, Say say) {
        WiringPart part = new WiringPart(say);
        List<Block> blocks = new ArrayList<>();
        for (WiringResult result : results) {
            blocks.add(new Heading(Wording.capital(result.option())));
            blocks.add(part.sheet(result));
            if (!result.findings().isEmpty()) {
                blocks.add(
                        new Points(result.findings().stream().map(part::point).toList()));
            }
            if (!result.questions().isEmpty()) {
                blocks.add(Points.of(result.questions()));
            }
        }
        return Part.of("wiring", "Wiring and protection", blocks.stream());
    }

    private Point point(WiringFinding finding) {
        return new Point(
                Wording.capital(finding.severity().name().toLowerCase(Locale.ROOT)) + ", " + finding.where() + ".",
                say.sentence(Wording.capital(finding.rule().title()) + ". " + Wording.capital(finding.measured())
                        + ". Remedy: " + finding.remedy() + "."));
    }

    private Sheet sheet(WiringResult result) {
        List<Row> rows = result.rows().stream().map(this::row).toList();
        return new Sheet(
                "Circuits of " + Say.quoted(result.option()),
                List.of(
                        Column.words("Circuit"),
                        Column.words("Conductor"),
                        Column.numbers("One way"),
                        Column.numbers("Most, and what it may carry"),
                        Column.numbers("Drop there and back"),
                        Column.words("Protection")),
                rows,
                Form.CARDS,
                List.of((result.findings().isEmpty() ? "No finding in any minute of the trip. " : "")
                        + "Checked against this simulated trip, not a code check; have it inspected by a licensed"
                        + " person."));
    }

    private Row row(WiringRow row) {
        return Row.of(List.of(
                row.circuit(),
                row.conductor() + " (" + row.otherMeasure() + ")",
                say.length(row.lengthM()),
                Say.number("%.0f A", row.mostA()) + Say.number(" of %.0f A", row.allowedA()),
                Say.number("%.2f V", row.dropV()) + Say.number(" (%.1f %%)", 100 * row.dropShare()),
                row.protection() + (Double.isNaN(row.ratingA()) ? "" : " " + Dimension.CURRENT.show(row.ratingA()))));
    }
}
