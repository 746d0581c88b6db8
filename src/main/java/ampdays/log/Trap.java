package ampdays.log;

/**
 * Something in a log that would mislead.
 *
 * @param line in which it was first met; 0 when it concerns the whole log
 * @param text what was read, what was made of it, and the likely repair
 */
public record Trap(int line, String text) {}
