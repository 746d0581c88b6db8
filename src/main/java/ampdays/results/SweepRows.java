package ampdays.results;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers what charts and summaries need of a sweep, row by row, in the order of its table. */
public final class SweepRows {
    private final List<Knob> knobs;
    private final String currency;
    private final List<Double> daysToEmpty = new ArrayList<>();
    private final List<Fate> fates = new ArrayList<>();
    private final List<Double> lowest = new ArrayList<>();
    private final List<Double> nights = new ArrayList<>();
    private final List<Double> prices = new ArrayList<>();
    private final List<Double> masses = new ArrayList<>();
    private final List<Double> panels = new ArrayList<>();

    /**
     * Without rows yet.
     *
     * @param headings of what may be varied
     * @param currency of the prices
     */
    public SweepRows(List<String> headings, String currency) {
        this.knobs = headings.stream().map(Knob::new).toList();
        this.currency = currency;
    }

    /**
     * One design.
     *
     * @param values of what may be varied, as they stand below their headings
     * @param daysToEmpty not a number when the bank never was empty within the trip
     * @param lowestPercent lowest state of charge, %
     * @param comfortableNights not a number, like the two before, where the design is impossible
     * @param price of the priced parts
     * @param massKg of these parts
     * @param panelM2 roof that the panels cover
     */
    public record Row(
            List<String> values,
            Fate fate,
            double daysToEmpty,
            double lowestPercent,
            double comfortableNights,
            double price,
            double massKg,
            double panelM2) {
        /**
         * Of a run.
         *
         * @param run empty where the design is impossible
         */
        public static Row of(
                List<String> values, Optional<RunResult> run, double price, double massKg, double panelM2) {
            return new Row(
                    values,
                    run.map(RunResult::fate).orElse(Fate.IMPOSSIBLE),
                    run.map(RunResult::daysToEmpty).orElse(Double.NaN),
                    run.map(r -> 100 * r.lowestSoc()).orElse(Double.NaN),
                    run.map(r -> (double) r.comfortableNights()).orElse(Double.NaN),
                    price,
                    massKg,
                    panelM2);
        }
    }

    public void add(Row row) {
        for (int i = 0; i < knobs.size(); i++) {
            knobs.get(i).add(row.values().get(i));
        }
        fates.add(row.fate());
        daysToEmpty.add(row.daysToEmpty());
        lowest.add(row.lowestPercent());
        nights.add(row.comfortableNights());
        prices.add(row.price());
        masses.add(row.massKg());
        panels.add(row.panelM2());
    }

    /** The table of all rows, with a column for whatever took more than one value; none is added any more. */
    public SweepTable table() {
        return new SweepTable(
                knobs.stream()
                        .map(Knob::column)
                        .filter(column -> column.values().size() > 1)
                        .toList(),
                daysToEmpty,
                fates,
                lowest,
                nights,
                prices,
                masses,
                panels,
                currency);
    }

    /** Gathers the values of a knob, each once. */
    private static final class Knob {
        private final String heading;
        private final Map<String, Integer> placeOf = new LinkedHashMap<>();
        private final List<Integer> places = new ArrayList<>();

        Knob(String heading) {
            this.heading = heading;
        }

        void add(String value) {
            Integer known = placeOf.putIfAbsent(value, placeOf.size());
            places.add(known == null ? placeOf.size() - 1 : known);
        }

        SweepTable.Column column() {
            return new SweepTable.Column(heading, List.copyOf(placeOf.keySet()), places);
        }
    }
}
