package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;

/** What the priced parts weigh, for trade-offs under a payload. */
final class MassSection {
    static final String BATTERY = "masses.battery";
    static final String SOLAR = "masses.solar";
    static final String CHARGER = "masses.charger";
    static final String SECOND_ALTERNATOR = "masses.second-alternator";
    static final String INSULATION = "masses.insulation";
    static final String COVERS = "masses.covers";
    static final String PAYLOAD = "masses.payload";

    private static final double MOST_KG = 1e5;

    private MassSection() {}

    static Section section() {
        SectionBuilder section = new SectionBuilder(
                "masses",
                Presence.DEFAULTED,
                "What parts weigh, with their fittings. Trade-offs read them. The defaults are the middle of what practice"
                        + " reports: write your own.");
        mass(section, "battery", "10 kg", PRACTICE, "A kWh of bank; lithium iron phosphate 8 to 11 kg.");
        mass(section, "solar", "7 kg", PRACTICE, "100 W of rigid panels with their mounts; 6 to 8.5 kg.");
        mass(section, "charger", "0.05 kg", PRACTICE, "An ampere of DC-DC or shore charger.");
        mass(section, "second-alternator", "0.09 kg", PRACTICE, "An ampere on its nameplate, with cable and bracket.");
        mass(section, "insulation", "25 kg", GUESS, "25 mm of foam in roof and walls of the whole van.");
        mass(section, "covers", "5 kg", GUESS, "A set of insulated window covers.");
        section.add(
                "payload",
                SectionBuilder.measured(Dimension.MASS, 0, MOST_KG),
                new Fallback.Absent(),
                PRACTICE,
                "Trade-offs leave out designs whose priced parts weigh more; no limit if not said. Practice leaves 10 to"
                        + " 15 % of the van's payload free.");
        return section.build();
    }

    private static void mass(SectionBuilder section, String key, String text, Mark mark, String what) {
        section.fixed(key, Dimension.MASS, 0, MOST_KG, text, mark, what);
    }
}
