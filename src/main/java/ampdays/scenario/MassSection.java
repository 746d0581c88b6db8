package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;

/** What the priced parts weigh, for trade-offs under a payload. */
final class MassSection {
    static final String PAYLOAD = "masses.payload";

    private static final double MOST_KG = 1e5;
    private static final double BONDED_M = 0.001;

    private MassSection() {}

    static Section section() {
        SectionBuilder section = new SectionBuilder(
                "masses",
                Presence.DEFAULTED,
                "What parts weigh, with their fittings. Trade-offs and the proposal read them. The defaults are the middle of what practice"
                        + " reports: write your own.");
        section.derived(
                "battery",
                Dimension.MASS,
                0,
                MOST_KG,
                "10 kg; lead-acid 28 kg",
                v -> v.isLeadAcid() ? 28 : 10,
                PRACTICE,
                "A kWh of bank; lithium iron phosphate 8 to 11 kg, lead-acid 25 to 32 kg.");
        section.derived(
                "solar",
                Dimension.MASS,
                0,
                MOST_KG,
                "7 kg; without a gap below them 2 kg",
                v -> v.number("solar.gap") < BONDED_M ? 2 : 7,
                PRACTICE,
                "100 W of panels; rigid with their mounts 6 to 8.5 kg, bonded 1.5 to 2.5 kg.");
        mass(section, "charger", "0.05 kg", PRACTICE, "An ampere of DC-DC or shore charger.");
        mass(section, "second-alternator", "0.09 kg", PRACTICE, "An ampere on its nameplate, with cable and bracket.");
        mass(section, "insulation", "25 kg", GUESS, "25 mm of foam in roof and walls of the whole van.");
        mass(section, "covers", "5 kg", GUESS, "A set of insulated window covers.");
        mass(section, "cooling", "28 kg", PRACTICE, "An air conditioner; 20 to 35 kg, high up.");
        mass(section, "inverter", "6.5 kg", PRACTICE, "A kW of inverter; 5 to 8 kg.");
        section.add(
                "payload",
                SectionBuilder.measured(Dimension.MASS, 0, MOST_KG),
                new Fallback.Absent(),
                PRACTICE,
                "Trade-offs leave out designs whose priced parts weigh more; no limit if not said. Practice leaves 10 to"
                        + " 15 % of the van's payload free.");
        return section.besideTheVan().build();
    }

    private static void mass(SectionBuilder section, String key, String text, Mark mark, String what) {
        section.fixed(key, Dimension.MASS, 0, MOST_KG, text, mark, what);
    }
}
