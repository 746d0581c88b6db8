package ampdays.battery;

import java.util.Arrays;

/**
 * Open-circuit voltage of one cell against state of charge and temperature: a table, straight between its lines.
 *
 * <p>Source of {@link #LITHIUM_IRON_PHOSPHATE}: a cell maker's specification, Q/GX 030-2019, appendix A.4 "SOC-OCV table", as transcribed identically in
 * two public repositories. The table lists one value for 75 to 90 %; between its lines we interpolate, beyond its
 * temperatures (-10 to 45 °C) the edge holds. Leaves out hysteresis (10 to 20 mV per cell, from memory). Reference:
 * BankPhysicsTest.
 */
public final class OpenCircuit {
    static final int COLUMNS = 12;
    static final int ROWS = 21;
    static final double LOWEST_C = -10;
    static final double COLUMN_K = 5;

    /** Temperatures of the table, °C, and its lines from 0 to 100 % in steps of 5 %. */
    private static final double[] TABLE_C = {-10, 0, 10, 15, 25, 35, 45};

    private static final double[][] TABLE_V = {
        {3.227, 3.175, 3.072, 3.024, 2.928, 2.830, 2.732},
        {3.246, 3.209, 3.188, 3.186, 3.180, 3.149, 3.117},
        {3.259, 3.230, 3.215, 3.213, 3.210, 3.205, 3.201},
        {3.266, 3.250, 3.236, 3.234, 3.230, 3.223, 3.217},
        {3.270, 3.264, 3.258, 3.256, 3.253, 3.248, 3.242},
        {3.272, 3.273, 3.272, 3.272, 3.272, 3.267, 3.261},
        {3.273, 3.277, 3.280, 3.281, 3.284, 3.280, 3.277},
        {3.274, 3.279, 3.282, 3.284, 3.288, 3.290, 3.293},
        {3.276, 3.279, 3.283, 3.285, 3.288, 3.291, 3.294},
        {3.277, 3.280, 3.284, 3.285, 3.289, 3.292, 3.295},
        {3.280, 3.282, 3.285, 3.287, 3.290, 3.293, 3.296},
        {3.285, 3.285, 3.288, 3.290, 3.294, 3.295, 3.297},
        {3.292, 3.293, 3.298, 3.302, 3.310, 3.306, 3.301},
        {3.293, 3.304, 3.316, 3.319, 3.324, 3.325, 3.327},
        {3.304, 3.314, 3.323, 3.324, 3.327, 3.329, 3.330},
        {3.309, 3.318, 3.324, 3.325, 3.328, 3.329, 3.331},
        {3.309, 3.318, 3.324, 3.325, 3.328, 3.329, 3.331},
        {3.309, 3.318, 3.324, 3.325, 3.328, 3.329, 3.331},
        {3.309, 3.318, 3.324, 3.325, 3.328, 3.329, 3.331},
        {3.320, 3.319, 3.325, 3.326, 3.329, 3.330, 3.331},
        {3.361, 3.335, 3.340, 3.352, 3.375, 3.354, 3.334},
    };

    public static final OpenCircuit LITHIUM_IRON_PHOSPHATE = new OpenCircuit(TABLE_V);

    /** The table on an even grid of temperatures, one run of states of charge after the other. */
    final double[] gridV;

    private OpenCircuit(double[][] tableV) {
        this.gridV = evenGrid(tableV);
    }

    /** A cell whose voltage runs straight from empty to full at every temperature; closed forms of charging take it so. */
    static OpenCircuit straight(double emptyV, double fullV) {
        double[][] tableV = new double[ROWS][TABLE_C.length];
        for (int row = 0; row < ROWS; row++) {
            Arrays.fill(tableV[row], emptyV + (fullV - emptyV) * row / (ROWS - 1));
        }
        return new OpenCircuit(tableV);
    }

    private static double[] evenGrid(double[][] tableV) {
        double[] grid = new double[COLUMNS * ROWS];
        for (int column = 0; column < COLUMNS; column++) {
            double temperatureC = LOWEST_C + column * COLUMN_K;
            int right = 1;
            while (TABLE_C[right] < temperatureC) {
                right++;
            }
            double share = (temperatureC - TABLE_C[right - 1]) / (TABLE_C[right] - TABLE_C[right - 1]);
            for (int row = 0; row < ROWS; row++) {
                grid[column * ROWS + row] = tableV[row][right - 1] * (1 - share) + tableV[row][right] * share;
            }
        }
        return grid;
    }

    /**
     * Voltage of one cell at rest, V.
     *
     * @param soc state of charge, 0 to 1, held to that range
     * @param temperatureC cell temperature, °C, held to -10 to 45
     */
    public double cellV(double soc, double temperatureC) {
        Reading reading = new Reading();
        read(soc, temperatureC, reading);
        return reading.cellV;
    }

    /** Slope of {@link #cellV} with state of charge, V per whole charge; that of the stretch above at a break. */
    public double slopeV(double soc, double temperatureC) {
        Reading reading = new Reading();
        read(soc, temperatureC, reading);
        return reading.slopeV;
    }

    /** Where a state lies in the table, and what {@link #cellV} and {@link #slopeV} say of it. */
    static final class Reading {
        private double row = Double.NaN;
        private double column = Double.NaN;
        private double lowColdV;
        private double lowWarmV;
        private double highColdV;
        private double highWarmV;
        double cellV;
        double slopeV;

        /** Sets both for a place between the lines, in shares of their distance. */
        private void between(double down, double across) {
            double below = lowColdV + (lowWarmV - lowColdV) * across;
            double rise = highColdV + (highWarmV - highColdV) * across - below;
            cellV = below + rise * down;
            slopeV = rise * (ROWS - 1);
        }
    }

    /** Reads voltage and slope at once; quick where the last reading lay between the same lines of the table. */
    void read(double soc, double temperatureC, Reading last) {
        double at = soc * (ROWS - 1);
        double column = (temperatureC - LOWEST_C) * (1 / COLUMN_K);
        double down = at - last.row;
        double across = column - last.column;
        if (down >= 0 && down < 1 && across >= 0 && across < 1) {
            last.between(down, across);
        } else {
            at = held(at, ROWS - 1);
            column = held(column, COLUMNS - 1);
            find(at, column, last);
            last.between(at - last.row, column - last.column);
        }
    }

    private void find(double at, double column, Reading into) {
        int row = at >= ROWS - 1 ? ROWS - 2 : (int) at;
        int left = column >= COLUMNS - 1 ? COLUMNS - 2 : (int) column;
        into.row = row;
        into.column = left;
        into.lowColdV = gridV[left * ROWS + row];
        into.lowWarmV = gridV[(left + 1) * ROWS + row];
        into.highColdV = gridV[left * ROWS + row + 1];
        into.highWarmV = gridV[(left + 1) * ROWS + row + 1];
    }

    private static double held(double at, double last) {
        return at < 0 ? 0 : at > last ? last : at;
    }
}
