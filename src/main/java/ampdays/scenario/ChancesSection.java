package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;

/** What is not the same from trip to trip, for studies of many trips. */
final class ChancesSection {
    static final String NORMALS = "chances.normals";
    static final String FIRST_START = "chances.first-start";
    static final String LAST_START = "chances.last-start";
    static final String DRIVES = "chances.drives";
    static final String SET_POINT = "chances.set-point";
    static final String SHADE = "chances.shade";
    static final String LOADS = "chances.loads";
    static final String ALTERNATOR = "chances.alternator";
    static final String BANK_WEAR = "chances.bank-wear";

    private ChancesSection() {}

    static Section section() {
        SectionBuilder section = new SectionBuilder(
                "chances",
                Presence.DEFAULTED,
                "What differs from trip to trip. Only studies of many trips (ampdays chances, ampdays matters) read it."
                        + " All within a spread is equally likely; 0 takes a spread away.");
        section.add(
                "normals",
                new Kind.Text(),
                new Fallback.Absent(),
                PRACTICE,
                "A file of monthly normals, by its path from this file: each trip gets an invented year of its own, in"
                        + " place of the weather file.");
        start(section, "first-start", "before");
        start(section, "last-start", "after");
        share(section, "drives", 0.9, "30 %", GUESS, "How much longer or shorter every drive may be.");
        section.fixed(
                "set-point",
                Dimension.TEMPERATURE_DIFFERENCE,
                0,
                10,
                "1 K",
                GUESS,
                "How much warmer or cooler people may want it; the band of comfort goes along unless it is said.");
        share(section, "shade", 0.5, "15 %", GUESS, "How many points more or less light may get through the shades.");
        share(section, "loads", 0.9, "20 %", GUESS, "How much more or less all loads may draw.");
        share(
                section,
                "alternator",
                0.5,
                "15 %",
                PRACTICE,
                "How far an alternator's output may lie from its rating; each unit for itself, and none whose curve is"
                        + " given by points.");
        share(
                section,
                "bank-wear",
                0.6,
                "10 %",
                GUESS,
                "How much of the bank's capacity may be gone, besides its health.");
        return section.besideTheVan().build();
    }

    private static void start(SectionBuilder section, String key, String side) {
        section.add(
                key,
                new Kind.Date(),
                new Fallback.Absent(),
                PRACTICE,
                "Between first-start and last-start trips begin, any day as likely as another. Not said: two weeks "
                        + side + " the trip's own start, as far as the weather reaches.");
    }

    private static void share(SectionBuilder section, String key, double most, String text, Mark mark, String what) {
        section.fixed(key, Dimension.SHARE, 0, most, text, mark, what);
    }
}
