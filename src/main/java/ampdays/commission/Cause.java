package ampdays.commission;

import java.util.Optional;

/**
 * A likely cause of a deviation.
 *
 * @param text the cause
 * @param test the reading that shows it or rules it out
 * @param witness kind of reading on the same sheet that deviates with this cause and passes without it
 */
public record Cause(String text, String test, Optional<Symptom> witness) {}
