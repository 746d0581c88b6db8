package ampdays.results;

/**
 * Recorded channels of consecutive steps.
 *
 * <p>Rows are steps; the state of charge and temperatures are those at the end of the step, powers are means over it.
 */
public final class MinuteLog {
    private final int firstStep;
    private final float[][] columns;

    /**
     * @param firstStep index of the first row in the run
     * @param columns one per channel, in the order of {@link Channel}; taken over, not copied
     */
    public MinuteLog(int firstStep, float[][] columns) {
        if (columns.length != Channel.values().length) {
            throw new IllegalArgumentException("one column per channel");
        }
        this.firstStep = firstStep;
        this.columns = columns;
    }

    public int firstStep() {
        return firstStep;
    }

    public int rows() {
        return columns[0].length;
    }

    public double get(Channel channel, int row) {
        return columns[channel.ordinal()][row];
    }

    /** Mean of a channel over rows {@code from} up to {@code to}, without the latter. */
    public double mean(Channel channel, int from, int to) {
        float[] column = columns[channel.ordinal()];
        double sum = 0;
        for (int row = from; row < to; row++) {
            sum += column[row];
        }
        return sum / (to - from);
    }
}
