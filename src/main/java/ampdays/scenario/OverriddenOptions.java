package ampdays.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Options whose change a study takes back, since it varies the same value. */
public final class OverriddenOptions {
    private OverriddenOptions() {}

    /** A sentence for each. */
    public static List<String> remarks(ScenarioFile file, Grid grid) {
        Set<String> varied = grid.knobs().stream().map(Knob::path).collect(Collectors.toSet());
        List<String> remarks = new ArrayList<>();
        for (Knob knob : grid.knobs()) {
            for (String option : knob.isOption() ? knob.values() : List.<String>of()) {
                List<String> changed = file.base()
                        .pathsChanged(file.values(option).orElseThrow())
                        .toList();
                List<String> lost = changed.stream().filter(varied::contains).toList();
                if (!lost.isEmpty()) {
                    remarks.add(remark(option, lost, changed.size() == lost.size()));
                }
            }
        }
        return remarks;
    }

    private static String remark(String option, List<String> lost, boolean nothingIsLeft) {
        boolean one = lost.size() == 1;
        return "\"" + option + "\" sets " + String.join(", ", lost) + ", which " + (one ? "is" : "are")
                + " varied here: its rows "
                + (nothingIsLeft
                        ? "equal those of \"" + ScenarioFile.BASE_NAME + "\" with the same "
                                + (one ? lost.get(0) : "values") + "."
                        : "have only the rest of it.");
    }
}
