package ampdays.scenario;

import java.util.List;

/**
 * A part of the scenario file.
 *
 * @param presence whether the design must have it
 * @param help one or two sentences for the reference page
 */
public record Section(String name, Presence presence, String help, List<Parameter> parameters) {
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
