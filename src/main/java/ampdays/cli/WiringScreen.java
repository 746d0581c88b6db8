package ampdays.cli;

import ampdays.io.CircuitsText;
import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import ampdays.study.WiringFix;
import ampdays.units.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The screen of a wiring check: the table to print, findings, questions, changes. */
final class WiringScreen {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);
    private static final String LINE = "%-24s  %7s  %11s  %11s  %12s  %-23s  %9s";
    private static final double FEET_PER_METRE = 1 / 0.3048;

    private final PrintWriter out;

    WiringScreen(PrintWriter out) {
        this.out = out;
    }

    void print(String title, WiringResult result, Optional<WiringFix> mended, Path folder) {
        out.println(title);
        paragraph(text(
                "Wiring, option \"%s\": %d circuits%s on a %.1f V bank whose short circuit is %.1f kA",
                result.option(),
                result.rows().size(),
                result.offered() ? " (offered, all of it a guess)" : "",
                result.systemV(),
                result.faultA() / 1000));
        out.println();
        table(result.rows());
        findings(result);
        mended.ifPresent(this::mended);
        questions(result.questions());
        if (!result.leftOut().isEmpty()) {
            paragraph("Not in this option, so not checked: " + String.join(", ", result.leftOut()) + ".");
            out.println();
        }
        paragraph("Written to " + folder + ": wiring.csv, wiring.json"
                + (result.offered() ? "; circuits.yaml, the section to put into the scenario and correct" : "") + ".");
        paragraph("Checked against this simulated trip, not a code check; have it inspected by a licensed person.");
        out.flush();
    }

    private void table(List<WiringRow> rows) {
        out.println(text(LINE, "circuit", "size", "one way", "A most/may", "drop", "protection", "°C air/Cu")
                .stripTrailing());
        for (WiringRow row : rows) {
            out.println(text(
                            LINE,
                            cut(row.circuit(), 24),
                            row.conductor(),
                            text("%.1f m %.0f ft", row.lengthM(), row.lengthM() * FEET_PER_METRE),
                            text("%s/%s", amps(row.mostA()), amps(row.allowedA())),
                            text("%.2f V %4.1f %%", row.dropV(), 100 * row.dropShare()),
                            row.protection() + (Double.isNaN(row.ratingA()) ? "" : " " + amps(row.ratingA()) + " A"),
                            text("%.0f/%.0f", row.airC(), row.conductorC()))
                    .stripTrailing());
        }
        out.println();
        paragraph(
                "A most: largest current of any minute, with every load on that may be; may: what the conductor carries in"
                        + " the warmest air of the trip. Drop there and back. °C: warmest air around the run, and copper.");
        out.println();
    }

    private void findings(WiringResult result) {
        if (result.findings().isEmpty()) {
            paragraph("No finding: no minute of the trip was beyond any limit that is checked here.");
        }
        result.findings().forEach(finding -> finding(finding, result.zone()));
        out.println();
    }

    private void finding(WiringFinding finding, ZoneId zone) {
        String when = Double.isNaN(finding.minutes())
                ? ""
                : text(" (%.0f min, first %s)", finding.minutes(), date(finding.firstEpochSecond(), zone));
        paragraph(finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.where() + ": "
                + finding.rule().title() + ". " + Wording.capital(finding.measured()) + when + ". Remedy: "
                + finding.remedy()
                + ". Source: " + finding.rule().source() + ".");
    }

    private void mended(WiringFix fix) {
        if (!fix.changes().isEmpty()) {
            paragraph("Smallest changes found; simulated and checked anew, they leave "
                    + (fix.after().findings().isEmpty()
                            ? "no finding:"
                            : fix.after().findings().stream()
                                            .map(f ->
                                                    f.where() + ": " + f.rule().title())
                                            .distinct()
                                            .collect(Collectors.joining("; "))
                                    + ":"));
            out.println();
            out.print(CircuitsText.option("wiring mended", fix.changes()));
            out.println();
        } else if (!fix.after().findings().isEmpty()) {
            paragraph("No changes were found that clear the findings; change the route, the length or the current.");
            out.println();
        }
    }

    private void questions(List<String> questions) {
        if (!questions.isEmpty()) {
            out.println("To confirm:");
            questions.forEach(question -> Paragraph.print(out, "- " + question, "  "));
            out.println();
        }
    }

    private void paragraph(String text) {
        Paragraph.print(out, text, "  ");
    }

    private static String date(long epochSecond, ZoneId zone) {
        return DATE.format(Instant.ofEpochSecond(epochSecond).atZone(zone));
    }

    private static String cut(String name, int most) {
        return name.length() <= most ? name : name.substring(0, most - 1) + "…";
    }

    /** Whole amps from 10, one decimal below. */
    private static String amps(double a) {
        return a < 10 ? text("%.1f", a) : text("%.0f", a);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
