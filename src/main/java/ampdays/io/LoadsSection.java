package ampdays.io;

import ampdays.audit.Audit;
import ampdays.audit.AuditedDay;
import ampdays.audit.Draw;
import ampdays.audit.Readings;
import ampdays.audit.Use;
import ampdays.audit.UsualUse;
import java.util.Optional;

/** The section {@code loads} of a scenario from an audit, each draw marked as measured. */
public final class LoadsSection {
    private LoadsSection() {}

    /** Its text; what cannot be used as it is stands in it as a comment that says why. */
    public static String text(Readings readings, Audit audit) {
        StringBuilder text = new StringBuilder();
        text.append("# Loads by readings: ")
                .append(readings.title().replaceAll("\\R", " "))
                .append(
                        ".\n# Draws are amps out of the bank, ± at 95 %. Uses marked practice are common practice without a")
                .append(" source:\n# ask, then replace them. Lines with a # before them need your answer first.\n");
        text.append("loads:\n");
        for (Draw draw : audit.draws()) {
            text.append(line(readings, draw)).append('\n');
        }
        return text.toString();
    }

    private static String line(Readings readings, Draw draw) {
        String key = "  " + YamlKey.of(draw.label()) + ": ";
        Optional<UsualUse> usual = AuditedDay.usual(draw);
        if (!draw.known()) {
            return "  # " + draw.label() + ": not told apart from others by the readings";
        }
        if (draw.isImpossible()) {
            return "  # " + draw.label() + ": would give current, " + draw.ampsText() + " " + draw.plusMinusText()
                    + ", which cannot be; read it again";
        }
        if (draw.amps() <= 0) {
            return "  # " + draw.label() + ": no draw was seen, " + draw.ampsText() + " " + draw.plusMinusText();
        }
        String measured = "draw: " + draw.ampsText() + " (measured: " + draw.plusMinusText()
                + (draw.isSingle() ? "" : ", not told apart") + ")";
        if (usual.isPresent() && usual.get().hasSection()) {
            return "  # " + draw.label() + ": " + draw.ampsText() + " " + draw.plusMinusText()
                    + " measured while it ran; the section " + usual.get().section() + " simulates it";
        }
        Use use = AuditedDay.use(readings, draw);
        if (use.isKnown()) {
            return key + "{" + measured + told(use) + "}";
        }
        if (usual.isPresent()) {
            double hours = Math.sqrt(usual.get().fromHours() * usual.get().toHours());
            String range = hoursText(usual.get().fromHours()) + " to "
                    + hoursText(usual.get().toHours());
            return key + "{" + measured + ", use: " + hoursText(hours) + " (practice: " + range + " is usual), when: "
                    + usual.get().when() + " (practice)}";
        }
        return "  # " + key.strip() + " {" + measured + ", use: ? h/day, when: ?}";
    }

    private static String told(Use use) {
        String hours = Double.isNaN(use.hoursPerDay()) ? "" : ", use: " + hoursText(use.hoursPerDay());
        return hours + (use.when().isEmpty() ? "" : ", when: " + quoted(use.when()));
    }

    private static String quoted(String when) {
        return when.indexOf(',') < 0 ? when : "\"" + when + "\"";
    }

    /** Hours a day, in minutes where that reads better. */
    public static String hoursText(double hours) {
        return hours < 1
                ? Numbers.fixed(60 * hours, 0) + " min/day"
                : Numbers.fixed(hours, hours == Math.rint(hours) ? 0 : 1) + " h/day";
    }
}
