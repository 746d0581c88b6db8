package ampdays.cli;

import ampdays.io.FrontFile;
import ampdays.results.Bounded;
import ampdays.results.SweepTable;
import ampdays.study.Allowed;
import ampdays.study.DesignWords;
import ampdays.study.Front;
import java.io.PrintWriter;
import java.util.Locale;

/** The trade-off front on the screen. */
final class FrontScreen {
    private static final int MOST_SHOWN = 25;

    private FrontScreen() {}

    static void print(PrintWriter out, Front front, Allowed allowed) {
        if (front.rows().isEmpty()) {
            Paragraph.print(out, nothing(allowed), "");
            out.println();
            return;
        }
        Paragraph.print(out, head(front, allowed), "");
        out.println(heading(front));
        for (int i = 0; i < Math.min(MOST_SHOWN, front.rows().size()); i++) {
            out.println(line(front, i));
        }
        if (front.rows().size() > MOST_SHOWN) {
            out.println("The " + MOST_SHOWN + " cheapest are shown; all are in " + FrontFile.NAME + ".");
        }
        Paragraph.print(out, notes(front), "");
        out.println();
    }

    /** Why there is no front. */
    private static String nothing(Allowed allowed) {
        int possible = allowed.possible().size();
        if (possible == 0) {
            return "There is no front: none of the designs can be; sweep.csv says why.";
        }
        return "No design is within the limits. Of " + designs(possible) + ", " + allowed.leftOut() + "."
                + allowed.nearest()
                        .map(nearest -> " The nearest is " + nearest + ".")
                        .orElse("");
    }

    private static String head(Front front, Allowed allowed) {
        int beyond = allowed.possible().size() - allowed.rows().size();
        String limits = beyond == 0
                ? ""
                : "Of " + designs(allowed.possible().size()) + " the limits leave out " + beyond + ": "
                        + allowed.leftOut() + ". ";
        int untried = allowed.rows().size() - front.tried().size();
        String tried = !front.isByChance()
                ? ""
                : designs(front.tried().size()) + (front.tried().size() == 1 ? " was" : " were") + " tried on "
                        + String.format(Locale.ROOT, "%,d", front.trips()) + " trips each, the same for all"
                        + (untried == 0
                                ? ""
                                : "; " + untried + (untried == 1 ? " was" : " were")
                                        + " not, since others do at least as much on the scenario's trip"
                                        + " for no more money and mass")
                        + ". ";
        return limits + tried + front.rows().size() + (front.rows().size() == 1 ? " is" : " are")
                + " beaten by no other in price, mass, "
                + (front.isByChance()
                        ? "the share of trips never empty and the share with all nights comfortable"
                                + dropped(front.beatenByChance())
                        : "comfortable nights and days to empty")
                + ":";
    }

    private static String dropped(long beaten) {
        return beaten == 0
                ? ""
                : " (" + beaten + " that none beats on the scenario's own trip " + (beaten == 1 ? "is" : "are")
                        + " beaten over many)";
    }

    private static String designs(int count) {
        return count == 1 ? "one design" : String.format(Locale.ROOT, "%,d designs", count);
    }

    private static String heading(Front front) {
        String price = front.table().currency();
        return front.isByChance()
                ? columns(
                                "no",
                                price,
                                "kg",
                                String.format(Locale.ROOT, "  %-24s  %-24s", "never empty", "all nights good"))
                        + "  bank       nights  design"
                : columns("no", price, "kg", "") + "  bank       nights  design";
    }

    private static String line(Front front, int place) {
        SweepTable table = front.table();
        int row = front.rows().get(place);
        String chances = front.isByChance()
                ? share(front.chances().get(row).neverEmpty())
                        + share(front.chances().get(row).comfortable())
                : "";
        return columns(
                        Integer.toString(place + 1),
                        String.format(Locale.ROOT, "%,.0f", table.prices().get(row)),
                        String.format(Locale.ROOT, "%.0f", table.massesKg().get(row)),
                        chances)
                + String.format(
                        Locale.ROOT,
                        "  %-9s  %6.0f  %s",
                        DesignWords.lasts(table, row),
                        table.comfortableNights().get(row),
                        DesignWords.of(table, row));
    }

    private static String columns(String number, String price, String mass, String chances) {
        return String.format(Locale.ROOT, "%3s  %9s  %5s%s", number, price, mass, chances);
    }

    private static String share(Bounded share) {
        return String.format(
                Locale.ROOT,
                "  %7s %-16s",
                ChancesScreen.percent(share.value()),
                "(" + ChancesScreen.between(share).replace(" %", "") + ")");
    }

    private static String notes(Front front) {
        String chances = front.isByChance()
                ? "never empty, all nights good: share of trips on which the bank is never empty, and on which every"
                        + " night is comfortable; in brackets its bounds, 95 % sure. \"ampdays chances\" says what differs"
                        + " from trip to trip. Bank and nights: on the scenario's own trip, days to empty, or holds;"
                        + " comfortable nights."
                : "bank: days to empty, or holds; nights: comfortable ones, both on the scenario's one trip.";
        return chances
                + " Price and mass are those of bank, panels, chargers, second alternator, foam, covers, air conditioner"
                + " and inverter, by the scenario's prices and masses; round figures unless you wrote your own.";
    }
}
