package ampdays.io;

/** Numbers in the heading of a weather file. */
final class HeadingNumbers {
    private HeadingNumbers() {}

    /** A number in its range, or not a number after noting the problem. */
    static double within(CsvText text, int line, int cell, String written, String name, double least, double most) {
        double value = text.number(line, cell, written, name);
        if (value < least || value > most) {
            text.add(
                    line,
                    text.column(line, cell),
                    name + " is " + written + "; possible is " + WeatherRows.plain(least) + " to "
                            + WeatherRows.plain(most) + ".");
        }
        return value;
    }
}
