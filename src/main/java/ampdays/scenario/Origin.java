package ampdays.scenario;

/**
 * Where a value was said.
 *
 * @param source file name, {@code preset NAME}, {@code option NAME} or {@code default}
 * @param line line in the file, from 1; 0 when it stands in no file
 * @param column column in the line, from 1; 0 likewise
 */
public record Origin(String source, int line, int column) {
    public static final Origin DEFAULT = new Origin("default", 0, 0);

    public static Origin preset(String name) {
        return new Origin("preset " + name, 0, 0);
    }

    @Override
    public String toString() {
        return line > 0 ? source + ":" + line : source;
    }
}
