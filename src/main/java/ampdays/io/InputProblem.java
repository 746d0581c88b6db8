package ampdays.io;

/**
 * One thing wrong in an input file.
 *
 * @param file its name
 * @param line from 1; 0 when it concerns the whole file
 * @param column from 1; 0 when it concerns the whole line
 * @param message what was read, what is accepted, the likely repair
 */
public record InputProblem(String file, int line, int column, String message) {
    @Override
    public String toString() {
        String place = line == 0 ? file : column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
        return place + ": " + message;
    }
}
