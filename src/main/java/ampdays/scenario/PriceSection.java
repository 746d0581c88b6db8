package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import java.util.List;
import java.util.stream.Stream;

/** What changes cost, to rank them. */
final class PriceSection {
    private static final String SECTION = "prices";

    static final String CURRENCY = "prices.currency";
    static final String DRIVING = "prices.driving";
    static final String HOOK_UP = "prices.hook-up";

    static final String BUDGET = "prices.budget";

    private static final double MOST = 1e9;

    private PriceSection() {}

    static Section section() {
        SectionBuilder section = new SectionBuilder(
                SECTION,
                Presence.DEFAULTED,
                "What parts and changes cost, fitted. The search for the cheapest change (--why), break-even maps,"
                        + " trade-offs and the proposal read them; a shop's file goes before them. The defaults are round"
                        + " figures to rank by, and make no sum of a proposal: write your own.");
        section.add(
                "currency",
                new Kind.Text(),
                new Fallback.Fixed("USD"),
                PRACTICE,
                "Of all prices here; a word that is printed behind them, and may be written there.");
        price(section, "battery", "500", PRACTICE, "A kWh of bank.");
        price(section, "solar", "300", PRACTICE, "100 W of panels with rack, controller and labour.");
        price(section, "charger", "7", PRACTICE, "An ampere of DC-DC or shore charger.");
        price(section, "second-alternator", "18", PRACTICE, "An ampere on its nameplate, with bracket and regulator.");
        price(section, "insulation", "1500", GUESS, "25 mm more foam in roof and walls of the whole van.");
        price(section, "covers", "400", GUESS, "A set of insulated window covers.");
        price(section, "cooling", "2500", PRACTICE, "An air conditioner; also where another one takes its place.");
        price(section, "inverter", "500", PRACTICE, "A kW of inverter.");
        price(section, "driving", "10", GUESS, "An hour of driving more than planned.");
        price(section, "hook-up", "40", GUESS, "A night with hook-up.");
        section.add(
                "budget",
                new Kind.Money(MOST),
                new Fallback.Absent(),
                PRACTICE,
                "Trade-offs leave out designs whose priced parts cost more; no limit if not said.");
        return section.besideTheVan().build();
    }

    /** The paths of prices that a design says itself. */
    static Stream<String> said(Values v) {
        return v.names(SECTION).stream().map(key -> SECTION + "." + key).filter(path -> !path.equals(CURRENCY));
    }

    /** The paths of prices that say another currency than the one of the design, each of them a problem. */
    static List<String> refused(Values v, ProblemList read) {
        String ours = v.word(CURRENCY);
        List<String> refused = said(v).filter(path -> {
                    String theirs = Kind.Money.currency(v.word(path));
                    return !theirs.isEmpty() && !theirs.equals(ours);
                })
                .toList();
        for (String path : refused) {
            String said = v.word(path);
            read.add(
                    path,
                    path + " \"" + said + "\" is in " + Kind.Money.currency(said) + ", but " + CURRENCY + " is "
                            + ours + ". Write the amount in " + ours + ", or " + CURRENCY + ": "
                            + Kind.Money.currency(said) + ".");
        }
        return refused;
    }

    private static void price(SectionBuilder section, String key, String text, Mark mark, String what) {
        section.add(key, new Kind.Money(MOST), new Fallback.Fixed(text), mark, what);
    }
}
