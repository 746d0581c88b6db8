package ampdays.cli;

import ampdays.battery.BankSpec;
import ampdays.log.MeteredLog;
import ampdays.log.Quality;
import ampdays.log.Trap;
import ampdays.results.LoggedDay;
import ampdays.results.Reconciliation;
import ampdays.units.Dimension;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** What a reconciliation says on the screen. */
final class ReconcileScreen {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    /** Sizes of a bank that differ by less are not worth a word (guess). */
    private static final double SAME_SIZE = 0.1;

    private final PrintWriter out;
    private final MeteredLog log;

    ReconcileScreen(PrintWriter out, MeteredLog log) {
        this.out = out;
        this.log = log;
    }

    void quality(Quality quality, BankSpec bank) {
        MeteredLog.Facts facts = log.facts();
        out.println(text(
                "%s: %,d rows from %s to %s (%s), one every %s",
                facts.file(),
                facts.rows(),
                stamp(0),
                stamp(log.minutes()),
                facts.zone(),
                Dimension.DURATION.show(facts.usualSeconds())));
        out.println();
        out.println("What it covers:");
        for (Quality.Coverage covered : quality.coverage()) {
            out.println(text("  %-28s %5.1f %% of the minutes", covered.signal().label(), 100 * covered.share()));
        }
        out.println(
                facts.gaps() == 0
                        ? "  no gaps"
                        : text(
                                "  gaps: %d, %.1f h in all; the longest, %.1f h, ends in line %d",
                                facts.gaps(),
                                facts.gapSeconds() / 3600.0,
                                facts.longestGapSeconds() / 3600.0,
                                facts.longestGapLine()));
        out.println();
        checks(quality, bank);
        if (!log.traps().isEmpty()) {
            out.println("Doubtful:");
            for (Trap trap : log.traps()) {
                out.println("  " + facts.file() + (trap.line() == 0 ? "" : ":" + trap.line()) + ": " + trap.text());
            }
            out.println();
        }
    }

    private void checks(Quality quality, BankSpec bank) {
        out.println("One part against another:");
        for (Quality.Check check : quality.checks()) {
            out.println(text(
                    "  %s: %s summed from the flow, %s by the counter, %.1f %% %s%s",
                    check.what(),
                    amount(check.summed(), check.unit()),
                    amount(check.counted(), check.unit()),
                    100 * Math.abs(check.apart()),
                    check.apart() < 0 ? "less" : "more",
                    check.agrees() ? "" : ": they do not agree. Check units, counter and gaps"));
        }
        if (quality.checks().isEmpty()) {
            out.println("  no counter to check a flow against");
        }
        if (Double.isNaN(quality.capacityAh())) {
            out.println("  charge against state of charge: cannot be told");
        } else {
            boolean same = Math.abs(quality.capacityAh() / bank.capacityAh() - 1) < SAME_SIZE;
            out.println(text(
                    "  charge against state of charge: as of a bank of %.0f Ah; the scenario has %.0f Ah%s",
                    quality.capacityAh(),
                    bank.capacityAh(),
                    same ? "" : ". Either the meter is set to another size, or the bank has another"));
        }
        quality.signDoubt().ifPresent(doubt -> out.println("  " + doubt));
        out.println();
    }

    void days(List<LoggedDay> days, List<String> missing, LocalDate first) {
        boolean shore = days.stream()
                .anyMatch(d -> d.promised().shoreWh() > 0 || d.logged().shoreWh() > 0);
        out.println("Day by day in kWh at the bus, promised and logged, over the minutes that the log tells:");
        out.println("  day         covered  " + head("sun") + head("alternators") + (shore ? head("shore") : "")
                + head("use") + "lowest charge");
        for (LoggedDay day : days) {
            LoggedDay.Flows promised = day.promised();
            LoggedDay.Flows logged = day.logged();
            out.println(text(
                    "  %s  %5.0f %%  %s%s%s%s%s",
                    first.plusDays(day.number()),
                    100 * day.coverage(),
                    kwh(promised.solarWh(), logged.solarWh()),
                    kwh(promised.alternatorWh(), logged.alternatorWh()),
                    shore ? kwh(promised.shoreWh(), logged.shoreWh()) : "",
                    kwh(promised.useWh(), logged.useWh()),
                    pair("%.0f %%", 100 * promised.lowestSoc(), 100 * logged.lowestSoc())));
        }
        if (!missing.isEmpty()) {
            out.println("  The log does not have " + String.join(", ", missing)
                    + ". Without these what was used cannot be told, unless it is logged itself.");
        }
        out.println();
    }

    void gap(Reconciliation found) {
        out.println(text(
                "In the first %.1f days, until the bank is empty or the log ends, it was to hold %.2f kWh at its lowest;"
                        + " under the logged conditions it holds %.2f kWh%s.",
                found.days(),
                found.promisedLeftWh() / 1000,
                found.explainedLeftWh() / 1000,
                Double.isNaN(found.loggedLeftWh())
                        ? ""
                        : text(", and by the log itself %.2f kWh", found.loggedLeftWh() / 1000)));
        out.println(text("The gap of %.2f kWh by cause:", found.gapWh() / 1000));
        for (Reconciliation.Share share : found.shares()) {
            out.println(text("  %-26s %6.2f kWh", share.cause().label(), kilo(share.wh())));
        }
        if (!Double.isNaN(found.unexplainedWh())) {
            out.println(text("  %-26s %6.2f kWh", "not explained", kilo(found.unexplainedWh())));
        }
        out.println();
        if (!found.fitted().isEmpty()) {
            out.println("By the log (± at 95 %, one percent for the scale of the meters or half a kelvin in it):");
            for (Reconciliation.Fitted value : found.fitted()) {
                out.println(text(
                        "  %-28s %s ± %s; promised %s",
                        value.label(),
                        FittedValues.show(value, value.value()),
                        FittedValues.plusMinus(value),
                        FittedValues.show(value, value.promised())));
            }
            out.println();
        }
        out.println("What the log does not tell:");
        found.untold().forEach(line -> out.println("  " + line));
        out.println();
    }

    void written(Path folder, boolean chart) {
        out.println((chart ? "Chart: " + folder.resolve("promise-and-log") + ".svg and .png; tables" : "Tables")
                + " and " + folder.resolve("reconcile.json"));
    }

    /** @param text empty when there is nothing to patch */
    void patch(String text, Path patch) {
        if (patch == null && !text.isEmpty()) {
            out.println("For the scenario (--patch FILE writes this to a file):");
            out.println();
            out.print(text);
        } else if (patch != null) {
            out.println(
                    text.isEmpty()
                            ? "Nothing was written to " + patch + ": the log tells no value of the scenario."
                            : "Wrote " + patch + ": the values by the log as an option; copy it into the scenario.");
        }
        out.flush();
    }

    /** Thousands to two decimals, without a minus before zero. */
    private static double kilo(double value) {
        return Math.rint(value / 10) / 100 + 0.0;
    }

    private static String kwh(double promisedWh, double loggedWh) {
        return text("%-14s", pair("%.2f", promisedWh / 1000, loggedWh / 1000));
    }

    private static String head(String name) {
        return text("%-14s", name);
    }

    private static String pair(String format, double promised, double logged) {
        return Double.isNaN(logged) ? "not told" : text(format, promised) + " / " + text(format, logged);
    }

    private static String amount(double value, String unit) {
        return unit.equals("Wh") ? text("%.2f kWh", value / 1000) : text("%.1f %s", value, unit);
    }

    private String stamp(int minute) {
        return STAMP.format(Instant.ofEpochSecond(log.epochSecond(minute))
                .atZone(log.facts().zone()));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
