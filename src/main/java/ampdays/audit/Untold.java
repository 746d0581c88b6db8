package ampdays.audit;

import java.util.List;

/**
 * Draws that the readings cannot tell apart.
 *
 * @param names of the appliances, perhaps with the base draw
 * @param next readings that would tell them apart, in order
 */
public record Untold(List<String> names, List<Next> next) {
    /**
     * A reading to take.
     *
     * @param appliance to switch from its state at the last reading; {@link Draw#BASE} for everything off
     * @param toOn whether it is to be on
     */
    public record Next(String appliance, boolean toOn) {}

    public Untold {
        names = List.copyOf(names);
        next = List.copyOf(next);
    }
}
