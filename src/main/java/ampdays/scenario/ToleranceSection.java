package ampdays.scenario;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.Locale;

/** How far the real van may be from the scenario, by the mark of each value. */
final class ToleranceSection {
    private ToleranceSection() {}

    static Section section() {
        SectionBuilder section = new SectionBuilder(
                "tolerances",
                Presence.DEFAULTED,
                "How far a real van may be from a value of the scenario, to either side, by the value's mark; a value that"
                        + " carries none counts as `practice`. Only `ampdays commission` reads them. Currents, powers,"
                        + " resistances and the like vary by this share of themselves; voltages by a fifteenth of it,"
                        + " speeds of rotation by a third, shares by this share of what they are off 0 or 100 %,"
                        + " temperatures by this share of 30 K.");
        of(section, Mark.MEASURED, "3 %", "Read with a meter on this van.");
        of(section, Mark.DATASHEET, "10 %", "Said by the maker of the part.");
        of(section, Mark.STANDARD, "10 %", "Said by a standard or a public body.");
        of(section, Mark.PRACTICE, "15 %", "Usual in the trade.");
        of(section, Mark.GUESS, "30 %", "Nobody has measured it.");
        return section.besideTheVan().build();
    }

    private static void of(SectionBuilder section, Mark of, String text, String what) {
        section.fixed(of.name().toLowerCase(Locale.ROOT), Dimension.SHARE, 0, 0.9, text, Mark.GUESS, what);
    }
}
