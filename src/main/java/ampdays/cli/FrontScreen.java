package ampdays.cli;

import ampdays.results.SweepTable;
import ampdays.study.Front;
import java.io.PrintWriter;
import java.util.Locale;

/** The trade-off front on the screen. */
final class FrontScreen {
    private static final int MOST_SHOWN = 25;

    private FrontScreen() {}

    static void print(PrintWriter out, Front front) {
        SweepTable table = front.table();
        Paragraph.print(
                out,
                front.rows().size() + " of " + table.rows()
                        + " designs are beaten by no other in price, mass, comfortable nights and days to"
                        + " empty"
                        + (front.beyond() == 0
                                ? ":"
                                : "; " + front.beyond() + " are beyond prices.budget, masses.payload or the roof:"),
                "");
        out.println(line("price, " + table.currency(), "mass", "bank", "nights", "design"));
        front.rows().stream()
                .limit(MOST_SHOWN)
                .forEach(row -> out.println(line(
                        String.format(Locale.ROOT, "%,.0f", table.prices().get(row)),
                        String.format(Locale.ROOT, "%.0f kg", table.massesKg().get(row)),
                        front.lasts(row),
                        String.format(
                                Locale.ROOT, "%.0f", table.comfortableNights().get(row)),
                        front.words(row))));
        if (front.rows().size() > MOST_SHOWN) {
            out.println("The " + MOST_SHOWN + " cheapest are shown; all are in front.csv.");
        }
        Paragraph.print(
                out,
                "bank: days to empty, or holds; nights: comfortable ones. Price and mass are those of bank, panels, chargers, second alternator, foam and covers, by the"
                        + " scenario's prices and masses; round figures unless you wrote your own.",
                "");
        out.println();
    }

    private static String line(String price, String mass, String bank, String nights, String design) {
        return String.format(Locale.ROOT, "%12s  %7s  %9s  %6s  %s", price, mass, bank, nights, design);
    }
}
