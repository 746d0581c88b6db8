package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** What a scenario says about itself, the place and the days. */
final class TripSections {
    static final String WEATHER_OFFSET = "weather-offset";
    static final String DRIVE_HOURS = "trip.drive-hours";
    static final String PARKED_DAYS = "trip.parked-days";

    private TripSections() {}

    static List<Section> all() {
        return List.of(head(), place(), trip(), shade());
    }

    private static Section head() {
        return new SectionBuilder("", Presence.DEFAULTED, "What the scenario is called and what it runs against.")
                .add(
                        "title",
                        new Kind.Text(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "One line; the file's name if not said.")
                .add("notes", new Kind.Text(), new Fallback.Absent(), PRACTICE, "Free text for the people who read it.")
                .add(
                        "weather",
                        new Kind.Text(),
                        new Fallback.Required(),
                        PRACTICE,
                        "The weather file (EPW, TMY3 or plain CSV), by its path from this file.")
                .fixed(
                        WEATHER_OFFSET,
                        Dimension.TEMPERATURE_DIFFERENCE,
                        -30,
                        30,
                        "0 K",
                        PRACTICE,
                        "Added to every air temperature of the weather file, to try a warmer or cooler summer; light and"
                                + " moisture stay.")
                .besideTheVan()
                .build();
    }

    private static Section place() {
        return new SectionBuilder("place", Presence.REQUIRED, "Where the van stands; one place for the whole trip.")
                .required("latitude", Dimension.LATITUDE, -90, 90, "North positive; 33.4° S is read as well.")
                .required("longitude", Dimension.LONGITUDE, -180, 180, "East positive; 112° W is read as well.")
                .fixed(
                        "elevation",
                        Dimension.LENGTH,
                        -430,
                        6000,
                        "0 m",
                        GUESS,
                        "Above the sea; thin air cools an alternator less.")
                .add(
                        "zone",
                        new Kind.Zone(),
                        new Fallback.Required(),
                        PRACTICE,
                        "Time zone of the clock people live by, like America/Phoenix.")
                .besideTheVan()
                .build();
    }

    private static Section trip() {
        return new SectionBuilder(
                        "trip",
                        Presence.REQUIRED,
                        "The days simulated. The trip begins at local midnight of its first day. Each kind of day has a "
                                + "timetable under its name; beside it the same name says which days are of that kind.")
                .add(
                        "start",
                        new Kind.Date(),
                        new Fallback.Required(),
                        PRACTICE,
                        "First day, 07-08 or 2024-07-08. Without a year it is " + Days.YEAR_UNSAID
                                + ", which matters for weekdays and clock changes only.")
                .add("days", new Kind.Count(1, 3660), new Fallback.Required(), PRACTICE, "How many days.")
                .fixed(
                        "reserve",
                        Dimension.SHARE,
                        0,
                        0.95,
                        "20 %",
                        PRACTICE,
                        "State of charge that counts as empty; practice is 10 to 20 %.")
                .add(
                        "drive-hours",
                        SectionBuilder.measured(Dimension.USE_PER_DAY, 0, 16),
                        new Fallback.Absent(),
                        PRACTICE,
                        "How long the drives of each day with a drive last in all, in place of the timetable's: they"
                                + " begin as written and are all made longer or shorter by the same factor.")
                .add(
                        "parked-days",
                        new Kind.Count(0, 3660),
                        new Fallback.Absent(),
                        PRACTICE,
                        "At least so many days in a row without a drive after each day with one; days between lose"
                                + " their drives.")
                .add(
                        "timetable",
                        new Kind.Timetable(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Lines if all days are alike, else a list of lines under the name of each kind of day.")
                .add("timetable.*", new Kind.Timetable(), new Fallback.Absent(), PRACTICE, "Lines of one kind of day.")
                .add(
                        "*",
                        new Kind.Text(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Which days are of this kind: numbers (1-5, 8), dates (2024-07-08 to 2024-07-10), weekdays "
                                + "(Mon-Fri), or others.")
                .besideTheVan()
                .build();
    }

    private static Section shade() {
        SectionBuilder section = new SectionBuilder(
                "shade",
                Presence.DEFAULTED,
                "How much light gets through to roof and cabin in the timetable's shades.");
        shadeClass(section, TimetableLine.PART_SHADE, "50 %", "70 %");
        shadeClass(section, TimetableLine.SHADE, "10 %", "40 %");
        return section.besideTheVan().build();
    }

    private static void shadeClass(SectionBuilder section, String word, String beam, String diffuse) {
        section.fixed(word + ".beam", Dimension.SHARE, 0, 1, beam, GUESS, "Share of the sun's beam that gets through.");
        section.fixed(
                word + ".diffuse",
                Dimension.SHARE,
                0,
                1,
                diffuse,
                GUESS,
                "Share of the light from the rest of the sky that gets through.");
    }
}
