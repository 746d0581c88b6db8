package ampdays.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * What an option changes in the van, as something that can be bought by itself and put on top of other changes. Test: {@code
 * UpgradeStepTest}.
 *
 * @param name of the option; with its section behind, where the option changes several
 * @param option that it is of
 * @param isWhole whether it is all that the option changes in the van
 */
public record UpgradeStep(String name, String option, boolean isWhole, Set<String> sections, Values was, Values is) {
    /** What people do otherwise with what the van has. */
    private static final Pattern HABIT =
            Pattern.compile("cabin\\.(set\\..+|airing|covers-used)|loads\\.[^.]+\\.(use|when)");

    public UpgradeStep {
        sections = Set.copyOf(sections);
    }

    /**
     * The steps of all options, in their order: a step for each section of the van that an option changes.
     *
     * @param undivided names of options that are one step whatever they change
     */
    public static List<UpgradeStep> of(ScenarioFile file, Set<String> undivided) {
        List<UpgradeStep> steps = new ArrayList<>();
        for (ScenarioFile.Option option : file.options()) {
            Set<String> sections = new TreeSet<>(file.base().sectionsChanged(option.values()));
            sections.removeIf(section -> !Registry.isVan(section));
            String name = option.name();
            if (sections.size() < 2 || undivided.contains(name)) {
                if (!sections.isEmpty()) {
                    steps.add(new UpgradeStep(name, name, true, sections, file.base(), option.values()));
                }
            } else {
                sections.forEach(section -> steps.add(new UpgradeStep(
                        name + ": " + section.replace('-', ' '),
                        name,
                        false,
                        Set.of(section),
                        file.base(),
                        option.values())));
            }
        }
        return steps;
    }

    /** Whether all of it is set points and habits, for which nothing has to be bought. */
    public boolean isHabit() {
        return was.pathsChanged(is)
                .filter(path -> sections.contains(Values.section(path)))
                .allMatch(path -> HABIT.matcher(path).matches());
    }

    /** A design with this change. */
    public Values on(Values design) {
        Values changed = design;
        for (String section : sections) {
            changed = changed.withChanges(section, was, is);
        }
        return changed;
    }
}
