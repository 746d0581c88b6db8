package ampdays.results;

import java.util.Optional;

/**
 * Why a design comes to its result.
 *
 * @param causes of a design that does not hold
 * @param lifted what a better part would bring
 */
public record Reasons(Optional<Causes> causes, Lifted lifted) {}
