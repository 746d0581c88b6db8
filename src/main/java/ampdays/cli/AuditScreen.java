package ampdays.cli;

import ampdays.audit.Audit;
import ampdays.audit.AuditedDay;
import ampdays.audit.Draw;
import ampdays.audit.Misfit;
import ampdays.audit.Readings;
import ampdays.audit.Untold;
import ampdays.audit.UsualUse;
import ampdays.io.LoadsSection;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What an audit says on the screen. */
final class AuditScreen {
    private static final int HALF_A_DAY = 12;

    private final PrintWriter out;
    private final Readings readings;
    private final Audit audit;
    private final AuditedDay day;
    private final double volts;

    AuditScreen(PrintWriter out, Readings readings, Audit audit, AuditedDay day) {
        this.out = out;
        this.readings = readings;
        this.audit = audit;
        this.day = day;
        this.volts = readings.voltageV();
    }

    void print() {
        out.println(readings.title() + ": " + readings.rows().size() + " readings, "
                + readings.uses().size() + (readings.uses().size() == 1 ? " appliance" : " appliances"));
        readings.notes().forEach(out::println);
        out.println();
        draws();
        doubts();
        untold();
        questions();
        hours();
    }

    private void draws() {
        int width =
                audit.draws().stream().mapToInt(d -> d.label().length()).max().orElse(0);
        String row = "%-" + Math.min(40, Math.max(9, width)) + "s  %10s  %9s  %7s  %8s";
        out.println(line(row, "", "draw", "at 95 %", "power", "at start"));
        for (Draw draw : audit.draws()) {
            String power = draw.known() ? String.format(Locale.ROOT, "%.0f W", draw.amps() * volts) : "";
            String surge = Double.isNaN(draw.surgeA()) ? "" : String.format(Locale.ROOT, "%.1f A", draw.surgeA());
            out.println(line(row, draw.label(), draw.ampsText(), draw.plusMinusText(), power, surge));
        }
        out.println();
        String source = readings.hasVoltage() ? "mean of the readings" : "practice; no voltage was read";
        out.println(String.format(Locale.ROOT, "Power at %.1f V (%s).", volts, source));
        out.println(
                audit.spare() == 0
                        ? "No reading checks another, so the ± rests on the meter's last digit alone. Repeat a few."
                        : String.format(
                                Locale.ROOT,
                                "Readings that check others: %d; they scatter %.1f times as much as the meter's last digit"
                                        + " lets expect.",
                                audit.spare(),
                                audit.scatter()));
        if (audit.driftSeen()) {
            out.println(String.format(
                    Locale.ROOT,
                    "The base draw drifted by %+.1f A from the first reading to the last; the draws allow for it.",
                    audit.driftA()));
        }
        out.println();
    }

    private static String line(String format, Object... cells) {
        return String.format(Locale.ROOT, format, cells).stripTrailing();
    }

    private void doubts() {
        List<String> doubts = new ArrayList<>();
        for (Misfit misfit : audit.misfits()) {
            doubts.add(misfit(misfit));
        }
        for (Draw draw : audit.draws()) {
            if (draw.isImpossible()) {
                doubts.add(draw.label() + " would give current, " + draw.ampsText() + ", which cannot be"
                        + (draw.isBase()
                                ? ": something charges the bank. Stop it; read again."
                                : at(draw) + ". Something else changed with it; read it again."));
            } else if (draw.isUnseen() && !draw.isBase()) {
                doubts.add(
                        draw.label() + ": no draw is seen beyond " + draw.plusMinusText() + at(draw) + ". Did it run?");
            }
        }
        section("Doubtful:", doubts);
    }

    private static String at(Draw draw) {
        return draw.lines().isEmpty() ? "" : " (line " + lines(draw.lines()) + ")";
    }

    private static String lines(List<Integer> lines) {
        return String.join(", ", lines.stream().map(String::valueOf).toList());
    }

    private static String misfit(Misfit misfit) {
        if (misfit.lines().size() > 1) {
            return String.format(
                    Locale.ROOT,
                    "One of the lines %s is wrong by about %.1f A; the readings do not tell which. Read them again.",
                    lines(misfit.lines()),
                    Math.abs(misfit.offA()));
        }
        return String.format(
                Locale.ROOT,
                "Line %s contradicts the others: %.1f A %s than they let expect.%s Read it again.",
                lines(misfit.lines()),
                Math.abs(misfit.offA()),
                misfit.offA() > 0 ? "more" : "less",
                misfit.leftOut() ? " It is left out." : "");
    }

    private void untold() {
        List<String> texts = new ArrayList<>();
        for (Untold untold : audit.untold()) {
            List<String> next = new ArrayList<>();
            for (Untold.Next step : untold.next()) {
                next.add(
                        step.appliance().equals(Draw.BASE)
                                ? "everything off"
                                : step.appliance() + (step.toOn() ? " on" : " off"));
            }
            texts.add(String.join(", ", untold.names()) + ". Next reading, from where the last one stood: "
                    + String.join("; then ", next) + ".");
        }
        section("Cannot be told apart:", texts);
    }

    private void questions() {
        List<String> texts = new ArrayList<>();
        for (Draw draw : day.asked()) {
            Optional<UsualUse> usual = AuditedDay.usual(draw);
            texts.add(draw.label()
                    + usual.map(u -> ": " + LoadsSection.hoursText(u.fromHours()) + " to "
                                    + LoadsSection.hoursText(u.toHours()) + ", " + u.when() + " (practice)")
                            .orElse(": no usual range is known"));
        }
        section("To ask: how long a day, and when? (columns use and when)", texts);
    }

    private void section(String head, List<String> texts) {
        if (!texts.isEmpty()) {
            out.println(head);
            texts.forEach(text -> out.println("  " + text));
            out.println();
        }
    }

    private void hours() {
        out.println("A day, as far as it is told:");
        for (int hour = 0; hour < HALF_A_DAY; hour++) {
            out.println("  " + hour(hour) + "      " + hour(hour + HALF_A_DAY));
        }
        if (day.elsewhereAh() > 0) {
            out.println("  at hours not told: " + amount(day.elsewhereAh()));
        }
        out.println(
                day.counted().isEmpty()
                        ? "  together: of no draw is it told how long it runs"
                        : "  together: " + amount(day.dayAh()) + " a day, of "
                                + String.join(
                                        ", ",
                                        day.counted().stream().map(Draw::label).toList()));
        if (!day.asked().isEmpty()) {
            String without = day.unusual().isEmpty()
                    ? ""
                    : ", without "
                            + String.join(
                                    ", ",
                                    day.unusual().stream().map(Draw::label).toList());
            out.println(String.format(
                    Locale.ROOT,
                    "  what is to be asked: %.0f to %.0f Ah a day more by common practice%s",
                    day.leastAskedAh(),
                    day.mostAskedAh(),
                    without));
        }
        out.println();
    }

    private String hour(int hour) {
        double ah = day.hourAh().get(hour);
        return String.format(Locale.ROOT, "%02d:00  %5.2f Ah %6.1f Wh", hour, ah, ah * volts);
    }

    private String amount(double ah) {
        return String.format(Locale.ROOT, "%.1f Ah, %.0f Wh", ah, ah * volts);
    }
}
