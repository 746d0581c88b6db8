package ampdays.scenario;

import java.util.List;

/**
 * A part of the scenario file.
 *
 * @param presence whether the design must have it
 * @param isVan whether it describes the van as a run sees it; else it is about the trip, about money or chances, or checked by
 *     itself
 * @param help one or two sentences for the reference page
 */
public record Section(String name, Presence presence, boolean isVan, String help, List<Parameter> parameters) {
    /** How a section that the scenario does not name is understood. */
    public enum Presence {
        /** It must be named. */
        REQUIRED,
        /** Its defaults hold. */
        DEFAULTED,
        /** The design does not have this component. */
        COMPONENT
    }

    public Section {
        parameters = List.copyOf(parameters);
    }

    /** Whether generic classes may fill in what is not said. */
    public boolean takesPresets() {
        return parameters.stream().anyMatch(p -> p.path().equals(name + ".preset"));
    }
}
