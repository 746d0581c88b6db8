package ampdays.io;

import ampdays.audit.Audit;
import ampdays.audit.AuditedDay;
import ampdays.audit.Draw;
import ampdays.audit.Readings;
import ampdays.audit.Use;
import ampdays.audit.UsualUse;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/** An audit as tables for a spreadsheet. Format: docs/READINGS.md. */
public final class AuditCsv {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();

    private AuditCsv() {}

    /** One row for each draw. */
    public static String draws(Readings readings, Audit audit) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "appliance",
                "draw A",
                "plus or minus A",
                "power W",
                "at start A",
                "use h/day",
                "when",
                "usual from h/day",
                "usual to h/day",
                "lines"));
        for (Draw draw : audit.draws()) {
            Use use = AuditedDay.use(readings, draw);
            Optional<UsualUse> usual = AuditedDay.usual(draw).filter(u -> !u.hasSection());
            rows.add(List.of(
                    draw.label(),
                    Numbers.fixed(draw.amps(), 3),
                    Numbers.fixed(draw.plusMinusA(), 3),
                    Numbers.fixed(draw.amps() * readings.voltageV(), 1),
                    Numbers.fixed(draw.surgeA(), 2),
                    Numbers.fixed(use.knownHoursPerDay(), 3),
                    use.when(),
                    usual.map(u -> Numbers.fixed(u.fromHours(), 2)).orElse(""),
                    usual.map(u -> Numbers.fixed(u.toHours(), 2)).orElse(""),
                    draw.lines().stream().map(String::valueOf).collect(Collectors.joining(" "))));
        }
        return table(rows);
    }

    /** One row for each hour of the clock, of what has told hours. */
    public static String hours(Readings readings, AuditedDay day) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("from", "Ah", "Wh"));
        for (int hour = 0; hour < AuditedDay.HOURS; hour++) {
            double ah = day.hourAh().get(hour);
            rows.add(List.of(
                    String.format(Locale.ROOT, "%02d:00", hour),
                    Numbers.fixed(ah, 3),
                    Numbers.fixed(ah * readings.voltageV(), 1)));
        }
        rows.add(List.of(
                "hours not told",
                Numbers.fixed(day.elsewhereAh(), 3),
                Numbers.fixed(day.elsewhereAh() * readings.voltageV(), 1)));
        return table(rows);
    }

    private static String table(List<List<String>> rows) {
        StringWriter out = new StringWriter();
        rows.forEach(row -> out.write(FORMAT.format(row.toArray()) + "\n"));
        return out.toString();
    }
}
