package ampdays.scenario;

import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import java.util.List;

/** The bank and what charges it. */
final class SupplySections {
    private SupplySections() {}

    static List<Section> all() {
        return List.of(
                BatterySection.section(),
                SolarSection.section(),
                AlternatorSections.factory(),
                AlternatorSections.second(),
                AlternatorSections.engine(),
                shore());
    }

    private static Section shore() {
        return new SectionBuilder(
                        "shore-charger",
                        Presence.COMPONENT,
                        "A charger fed from the hook-up, where the timetable has one.")
                .presets("50 A class", "30 A class", "80 A class")
                .required("rated", Dimension.CURRENT, 1, 1000, "Output current at most.")
                .fixed("efficiency", Dimension.SHARE, 0.3, 1, "90 %", PRACTICE, "Output over input.")
                .fixed("hook-up", Dimension.POWER, 50, 50_000, "1440 W", PRACTICE, "What the hook-up allows.")
                .build();
    }
}
