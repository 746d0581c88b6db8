package ampdays.results;

import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The results of a sweep that charts and summaries need, by row.
 *
 * @param columns what was varied, the slowest first
 * @param daysToEmpty not a number when the bank never was empty within the trip
 * @param fates what becomes of the bank
 * @param lowestPercent lowest state of charge, %
 * @param comfortableNights not a number, like all others, where a design is impossible
 * @param prices of the priced parts
 * @param massesKg of these parts
 * @param panelsM2 roof that the panels cover
 * @param currency of the prices
 */
public record SweepTable(
        List<Column> columns,
        List<Double> daysToEmpty,
        List<Fate> fates,
        List<Double> lowestPercent,
        List<Double> comfortableNights,
        List<Double> prices,
        List<Double> massesKg,
        List<Double> panelsM2,
        String currency) {
    public SweepTable {
        columns = List.copyOf(columns);
        daysToEmpty = Collections.unmodifiableList(daysToEmpty);
        fates = Collections.unmodifiableList(fates);
        lowestPercent = Collections.unmodifiableList(lowestPercent);
        comfortableNights = Collections.unmodifiableList(comfortableNights);
        prices = Collections.unmodifiableList(prices);
        massesKg = Collections.unmodifiableList(massesKg);
        panelsM2 = Collections.unmodifiableList(panelsM2);
    }

    /**
     * One knob.
     *
     * @param heading its path with its unit
     * @param values that it takes, in the order of their first row
     * @param places which value each row has
     */
    public record Column(String heading, List<String> values, List<Integer> places) {
        private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

        public Column {
            values = List.copyOf(values);
            places = Collections.unmodifiableList(places);
        }

        /** What is varied: the heading without its unit. */
        public String path() {
            int unit = heading.indexOf(" (");
            return unit < 0 ? heading : heading.substring(0, unit);
        }

        /** Empty without one. */
        public String unit() {
            int unit = heading.indexOf(" (");
            return unit < 0 ? "" : heading.substring(unit + 2, heading.length() - 1);
        }

        /** A value with its unit. */
        public String amount(int place) {
            return unit().isEmpty() ? values.get(place) : values.get(place) + " " + unit();
        }

        /** Whether every value is a number. */
        public boolean isNumeric() {
            return values.stream().allMatch(value -> NUMBER.matcher(value).matches());
        }

        /** A value as a number. */
        public double number(int place) {
            return Double.parseDouble(values.get(place));
        }
    }

    /** Some rows of it, with the columns of some headings. */
    public SweepTable only(List<Integer> rows, List<String> headings) {
        return new SweepTable(
                columns.stream()
                        .filter(column -> headings.contains(column.heading()))
                        .map(column -> new Column(column.heading(), column.values(), at(column.places(), rows)))
                        .toList(),
                at(daysToEmpty, rows),
                at(fates, rows),
                at(lowestPercent, rows),
                at(comfortableNights, rows),
                at(prices, rows),
                at(massesKg, rows),
                at(panelsM2, rows),
                currency);
    }

    private static <T> List<T> at(List<T> all, List<Integer> rows) {
        return rows.stream().map(all::get).toList();
    }

    public int rows() {
        return daysToEmpty.size();
    }

    public boolean holds(int row) {
        return fates.get(row) == Fate.HOLDS;
    }

    /** Whether a design could be run at all. */
    public boolean isPossible(int row) {
        return fates.get(row) != Fate.IMPOSSIBLE;
    }
}
