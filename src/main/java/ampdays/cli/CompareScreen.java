package ampdays.cli;

import ampdays.results.Account;
import ampdays.results.Fate;
import ampdays.results.Finding;
import ampdays.results.Limit;
import ampdays.results.Reasons;
import ampdays.results.RunResult;
import ampdays.study.Comparison;
import ampdays.study.Comparison.Option;
import ampdays.study.Sky;
import ampdays.study.Verdict;
import ampdays.study.WhyText;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The screen of a comparison: verdict, table of options, findings, files. */
final class CompareScreen {
    private static final String NONE = "–";
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private final PrintWriter out;

    CompareScreen(PrintWriter out) {
        this.out = out;
    }

    void print(
            Comparison comparison,
            Map<String, Reasons> reasons,
            Optional<String> wiring,
            Path folder,
            Collection<String> charts) {
        List<RunResult> results =
                comparison.options().stream().map(Option::result).toList();
        out.println(comparison.title());
        out.println();
        wrap(Verdict.of(comparison), "");
        out.println();
        table(results, comparison).print(out);
        why(reasons);
        lifts(reasons);
        findings(results);
        wiring.ifPresent(line -> wrap(line, "  "));
        wrap(
                "Written to " + folder + ": options.csv, days.csv, summary.json; charts (.svg and .png): "
                        + String.join(", ", charts) + ".",
                "");
        wrap(Paragraph.ESTIMATES, "");
    }

    private static Table table(List<RunResult> results, Comparison comparison) {
        Table table = new Table(results.stream().map(RunResult::option).toList());
        row(
                table,
                "days to " + number("%.0f", 100 * comparison.reserveShare()) + " % (empty)",
                results,
                CompareScreen::daysToEmpty);
        row(table, "lowest charge", results, r -> number("%.0f %%", 100 * r.lowestSoc()));
        row(table, "  reached", results, CompareScreen::lowestAt);
        row(
                table,
                "comfortable nights",
                results,
                r -> r.nights() == 0 ? NONE : r.comfortableNights() + " of " + r.nights());
        row(table, "kWh a day: solar", results, r -> perDay(r, r.energy().wh(Account.SOLAR)));
        row(table, "  shore", results, r -> perDay(r, r.energy().wh(Account.SHORE)));
        row(table, "  factory alternator", results, r -> perDay(r, r.energy().wh(Account.FACTORY_ALTERNATOR)));
        row(table, "  second alternator", results, r -> perDay(r, r.energy().wh(Account.SECOND_ALTERNATOR)));
        row(table, "  used", results, r -> perDay(r, r.energy().servedWh()));
        row(table, "  unserved", results, r -> perDay(r, r.energy().unservedWh()));
        row(table, "  sun curtailed", results, r -> perDay(r, r.energy().curtailedWh()));
        row(table, "fuel for charging", results, r -> r.fuelLitres() > 0 ? number("%.1f L", r.fuelLitres()) : NONE);
        row(
                table,
                "engine only to charge",
                results,
                r -> r.engineChargingHours() > 0 ? number("%.1f h", r.engineChargingHours()) : NONE);
        row(
                table,
                "alternator case, hottest",
                results,
                r -> Double.isNaN(r.alternatorPeakCaseC()) ? NONE : number("%.0f °C", r.alternatorPeakCaseC()));
        row(table, "ruling limit", results, r -> ruling(r, 0));
        row(table, "  then", results, r -> ruling(r, 1));
        return table;
    }

    private static void row(Table table, String label, List<RunResult> results, Function<RunResult, String> cell) {
        List<String> cells = results.stream().map(cell).toList();
        if (cells.stream().anyMatch(c -> !c.equals(NONE))) {
            table.row(label, cells);
        }
    }

    private static String daysToEmpty(RunResult r) {
        if (r.holds()) {
            return "holds";
        }
        return Double.isNaN(r.daysToEmpty())
                ? "over " + Verdict.twoDigits(r.tripDays()) + (r.fate() == Fate.FALLS ? ", falling" : "")
                : Verdict.twoDigits(r.daysToEmpty());
    }

    private static String lowestAt(RunResult r) {
        ZonedDateTime at = Instant.ofEpochSecond(r.lowestSocEpochSecond()).atZone(r.zone());
        return DATE.format(at);
    }

    private static String perDay(RunResult r, double wh) {
        double kWh = wh / 1000 / r.tripDays();
        return kWh < 0.005 ? NONE : number("%.2f", kWh);
    }

    private static String ruling(RunResult r, int place) {
        return r.limitHours().entrySet().stream()
                .sorted(Map.Entry.<Limit, Double>comparingByValue(Comparator.reverseOrder()))
                .skip(place)
                .findFirst()
                .map(e -> e.getKey().label() + number(" %.0f h", e.getValue()))
                .orElse(NONE);
    }

    private void why(Map<String, Reasons> byOption) {
        byOption.forEach((option, reasons) -> reasons.causes().ifPresent(causes -> {
            wrap(WhyText.causes(option, causes), "");
            wrap(WhyText.remedies(causes), "");
            out.println();
        }));
        if (byOption.values().stream().anyMatch(reasons -> reasons.causes().isPresent())) {
            wrap(
                    "Shares come from runs in which causes are taken away: no cooling, "
                            + number("nights cooler by %.0f K, ", Sky.COOLER_NIGHTS_K)
                            + "a clear sky, the limit lifted, cables and converters without losses. What is asked and not"
                            + " delivered counts as drawn; how the rest was reckoned: docs/MODEL.md, section 16.",
                    "");
            out.println();
        }
    }

    private void lifts(Map<String, Reasons> byOption) {
        if (!byOption.isEmpty()) {
            wrap("What a better part would bring, by a run with the limit lifted that rules longest:", "");
            byOption.values().forEach(reasons -> wrap(reasons.lifted().words(), "  "));
            out.println();
        }
    }

    private void findings(List<RunResult> results) {
        Map<String, Finding> first = new LinkedHashMap<>();
        Map<String, StringBuilder> where = new LinkedHashMap<>();
        for (RunResult result : results) {
            for (Finding finding : result.findings()) {
                first.putIfAbsent(finding.kind(), finding);
                StringBuilder options = where.computeIfAbsent(finding.kind(), k -> new StringBuilder());
                options.append(options.isEmpty() ? "" : "; ").append(result.option());
                options.append(number(" %.1f h", finding.minutes() / 60));
                if (!Double.isNaN(finding.worst())) {
                    options.append(number(", worst %.0f ", finding.worst())).append(finding.unit());
                }
            }
        }
        first.values().stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .forEach(finding -> {
                    String word = finding.severity().name().toLowerCase(Locale.ROOT);
                    wrap(
                            word + ": " + finding.kind() + " (" + where.get(finding.kind()) + "). " + finding.text(),
                            "  ");
                });
        if (!first.isEmpty()) {
            out.println();
        }
    }

    private void wrap(String text, String indent) {
        Paragraph.print(out, text, indent);
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
