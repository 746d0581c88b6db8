package ampdays.cli;

import ampdays.sim.AlternatorBench.Reading;
import ampdays.study.HotTest;
import java.io.PrintWriter;
import java.util.Locale;

/** Prints the tag of spare amps. */
final class HotTestScreen {
    private static final String LINE = "  %-19s %6s %6s  %-17s %6s %6s  %-17s %6s";

    private final PrintWriter out;

    HotTestScreen(PrintWriter out) {
        this.out = out;
    }

    void print(String title, HotTest test) {
        out.println(title);
        out.println("Spare amps, option \"" + test.option() + "\": predicted, to be confirmed by measurement");
        out.println();
        test.units().forEach(this::unit);
        out.println(text(
                "cold  air of %.0f °C around a cold unit, a minute after its start (ratings are tested so: ISO 8854)",
                HotTest.COLD_AIR_C));
        out.println(text(
                "hot   %d min at full output in under-bonnet air of %.0f °C (200 °F), mean of the last five minutes;",
                HotTest.SOAK_MINUTES, HotTest.HOT_AIR_C));
        out.println("      the method of the federal specification for ambulances, KKK-A-1822; a charger in the cabin");
        out.println(text("      stands in air of %.0f °C", HotTest.HOT_CABIN_C));
        out.println("share of the rated current");
        out.println("case  temperature of the alternator's case at the end of the hot run");
        out.println();
        out.println("The bank is taken to accept everything; what it refuses comes off these figures.");
        out.println(
                "Curves and heat are those of the scenario: where they are marked guess, so is this table. Before a");
        out.println(
                "figure goes on a tag, measure it: bonnet closed, engine air conditioning on, fast idle for at least");
        out.println("30 min, until the case warms by less than 1 K a minute.");
        out.println(
                "Do this outdoors. Exhaust kills: nobody sleeps in or beside a van whose engine runs. Keep clear of");
        out.println("belts, and of dry grass under a hot exhaust.");
        out.flush();
    }

    private void unit(HotTest.Unit unit) {
        out.println(text("%s (rated %.0f A)", unit.name(), unit.ratedA()));
        out.println(text(LINE, "", "cold A", "share", "held by", "hot A", "share", "held by", "case"));
        for (HotTest.Line line : unit.lines()) {
            Reading cold = line.cold();
            Reading hot = line.hot();
            out.println(text(
                    LINE,
                    text("%s, %.0f rpm", line.pace(), line.engineRpm()),
                    text("%.0f", cold.currentA()),
                    share(cold, unit),
                    cold.limit().label(),
                    text("%.0f", hot.currentA()),
                    share(hot, unit),
                    hot.limit().label(),
                    text("%.0f °C", hot.caseC())));
        }
        out.println();
    }

    private static String share(Reading reading, HotTest.Unit unit) {
        return text("%.0f %%", 100 * reading.currentA() / unit.ratedA());
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
