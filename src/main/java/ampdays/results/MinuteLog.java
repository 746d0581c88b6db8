package ampdays.results;

import java.util.EnumMap;
import java.util.Map;

/**
 * Recorded channels of consecutive steps.
 *
 * <p>Rows are steps; the state of charge and temperatures are those at the end of the step, powers are means over it.
 */
public final class MinuteLog {
    private final int firstStep;
    private final int rows;
    private final EnumMap<Channel, float[]> columns;

    /**
     * @param firstStep index of the first row in the run
     * @param columns one per channel, all of one length; the arrays are taken over, not copied
     */
    public MinuteLog(int firstStep, Map<Channel, float[]> columns) {
        this.firstStep = firstStep;
        this.columns = new EnumMap<>(columns);
        this.rows = this.columns.get(Channel.STATE_OF_CHARGE).length;
    }

    public int firstStep() {
        return firstStep;
    }

    public int rows() {
        return rows;
    }

    public double get(Channel channel, int row) {
        return columns.get(channel)[row];
    }

    /** Mean of a channel over rows {@code from} up to {@code to}, without the latter. */
    public double mean(Channel channel, int from, int to) {
        float[] column = columns.get(channel);
        double sum = 0;
        for (int row = from; row < to; row++) {
            sum += column[row];
        }
        return sum / (to - from);
    }
}
