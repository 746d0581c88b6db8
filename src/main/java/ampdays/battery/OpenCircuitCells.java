package ampdays.battery;

import java.util.Arrays;

/**
 * Open-circuit voltage and factor of the resistance of several cells side by side: {@link OpenCircuit#read} and
 * {@link BankPhysics.ResistanceFactor}, one number of each cell in every array, to the last bit the same.
 */
final class OpenCircuitCells {
    private static final int ROWS = OpenCircuit.ROWS;

    private final int cells;
    private final OpenCircuit[] openCircuit;
    private final double[] row;
    private final double[] column;
    private final double[] lowColdV;
    private final double[] lowWarmV;
    private final double[] highColdV;
    private final double[] highWarmV;
    private final double[] down;
    private final double[] across;
    private final double[] least;
    private final double[] most;
    private final double[] cellV;
    private final double[] slopeV;
    private final double[] entry;
    private final double[] left;
    private final double[] rise;
    private final double[] share;
    private final double[] resistanceFactor;

    OpenCircuitCells(int cells) {
        this.cells = cells;
        openCircuit = new OpenCircuit[cells];
        Arrays.fill(openCircuit, OpenCircuit.LITHIUM_IRON_PHOSPHATE);
        row = new double[cells];
        column = new double[cells];
        lowColdV = new double[cells];
        lowWarmV = new double[cells];
        highColdV = new double[cells];
        highWarmV = new double[cells];
        down = new double[cells];
        across = new double[cells];
        least = new double[cells];
        most = new double[cells];
        cellV = new double[cells];
        slopeV = new double[cells];
        entry = new double[cells];
        left = new double[cells];
        rise = new double[cells];
        share = new double[cells];
        resistanceFactor = new double[cells];
    }

    /** Takes a cell over, which was read nowhere yet. */
    void load(int cell, OpenCircuit table) {
        openCircuit[cell] = table;
        row[cell] = Double.NaN;
        entry[cell] = Double.NaN;
    }

    void read(double[] soc, double[] temperatureC) {
        place(soc, temperatureC);
        find(soc, temperatureC);
        between();
    }

    private void place(double[] soc, double[] temperatureC) {
        for (int i = 0; i < cells; i++) {
            down[i] = soc[i] * (ROWS - 1) - row[i];
            across[i] = (temperatureC[i] - OpenCircuit.LOWEST_C) * (1 / OpenCircuit.COLUMN_K) - column[i];
            share[i] = (temperatureC[i] + 20) * BankPhysics.FACTORS_PER_K - entry[i];
        }
    }

    /** Looks up anew where a cell has left the field that it was last read in. */
    private void find(double[] soc, double[] temperatureC) {
        for (int i = 0; i < cells; i++) {
            least[i] = Math.min(Math.min(down[i], across[i]), share[i]);
            most[i] = Math.max(Math.max(down[i], across[i]), share[i]);
        }
        for (int i = 0; i < cells; i++) {
            if (!(least[i] >= 0 && most[i] < 1)) {
                findVolts(i, soc[i], temperatureC[i]);
                findFactor(i, temperatureC[i]);
            }
        }
    }

    private void findVolts(int cell, double soc, double temperatureC) {
        double[] gridV = openCircuit[cell].gridV;
        double at = held(soc * (ROWS - 1), ROWS - 1);
        double atColumn =
                held((temperatureC - OpenCircuit.LOWEST_C) * (1 / OpenCircuit.COLUMN_K), OpenCircuit.COLUMNS - 1);
        int low = at >= ROWS - 1 ? ROWS - 2 : (int) at;
        int cold = atColumn >= OpenCircuit.COLUMNS - 1 ? OpenCircuit.COLUMNS - 2 : (int) atColumn;
        row[cell] = low;
        column[cell] = cold;
        lowColdV[cell] = gridV[cold * ROWS + low];
        lowWarmV[cell] = gridV[(cold + 1) * ROWS + low];
        highColdV[cell] = gridV[cold * ROWS + low + 1];
        highWarmV[cell] = gridV[(cold + 1) * ROWS + low + 1];
        down[cell] = at - low;
        across[cell] = atColumn - cold;
    }

    private void findFactor(int cell, double temperatureC) {
        int last = BankPhysics.RESISTANCE_FACTORS.length - 1;
        double at = held((temperatureC + 20) * BankPhysics.FACTORS_PER_K, last);
        int i = at < last ? (int) at : last - 1;
        entry[cell] = i;
        left[cell] = BankPhysics.RESISTANCE_FACTORS[i];
        rise[cell] = BankPhysics.RESISTANCE_FACTORS[i + 1] - left[cell];
        share[cell] = at - i;
    }

    private static double held(double at, double last) {
        return at < 0 ? 0 : at > last ? last : at;
    }

    private void between() {
        for (int i = 0; i < cells; i++) {
            double below = lowColdV[i] + (lowWarmV[i] - lowColdV[i]) * across[i];
            double up = highColdV[i] + (highWarmV[i] - highColdV[i]) * across[i] - below;
            cellV[i] = below + up * down[i];
            slopeV[i] = up * (ROWS - 1);
            resistanceFactor[i] = left[i] + rise[i] * share[i];
        }
    }

    double[] cellV() {
        return cellV;
    }

    double[] slopeV() {
        return slopeV;
    }

    double[] resistanceFactor() {
        return resistanceFactor;
    }
}
