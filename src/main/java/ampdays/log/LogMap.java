package ampdays.log;

import java.time.ZoneId;
import java.util.List;

/**
 * What the columns of a log mean.
 *
 * @param time where and how the time is written
 * @param device name of the column that says which device a row is of; empty when every row has all columns
 * @param header whether the first row names the columns; else they are numbered from 1
 * @param columns what is read
 */
public record LogMap(Time time, String device, boolean header, List<Column> columns) {
    public LogMap {
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("a map reads at least one column");
        }
    }

    /**
     * The time of a row.
     *
     * @param column name of the column
     * @param date name of a column with the date, when the first has the time of day alone; else empty
     * @param zone zone of times that carry no offset of their own
     * @param stampsEnd whether a row tells of the interval before its time rather than after it
     */
    public record Time(String column, String date, TimeForm form, ZoneId zone, boolean stampsEnd) {}

    /**
     * One column.
     *
     * @param name as the first row writes it, or its number
     * @param device in the device column; empty for all rows
     * @param scale base units per written unit
     * @param offset what is added to the written number before that, in its unit
     * @param chargeIsPlus whether plus is into the bank; of no meaning for unsigned signals
     * @param counter how it counts; of no meaning for other signals
     */
    public record Column(
            Signal signal,
            String name,
            String device,
            double scale,
            double offset,
            String unit,
            boolean chargeIsPlus,
            CounterKind counter) {
        /** A written number in base units, plus into the bank. */
        public double toBase(double written) {
            double base = (written + offset) * scale;
            return signal.isSigned() && !chargeIsPlus ? -base : base;
        }
    }
}
