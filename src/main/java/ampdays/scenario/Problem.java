package ampdays.scenario;

/**
 * Something that keeps a design from being built.
 *
 * @param path the value or section it concerns
 * @param message a whole sentence, then the likely repair
 */
public record Problem(String path, String message) {}
