package ampdays.wiring;

import ampdays.units.Require;
import java.util.List;

/**
 * What a single insulated copper conductor may carry continuously. Leaves out conduit, thermal insulation around the
 * cable and the minutes that a cable needs to warm up, so short peaks are judged as if they lasted. Reference:
 * AmpacityTest.
 */
public final class Ampacity {
    /** Air of the table, °C. */
    public static final double TABLE_AIR_C = 30;

    private static final double[] CLASSES_C = {60, 75, 80, 90, 105, 125, 200};

    /**
     * A, by gauge from 18 to 4/0 and insulation class: 33 CFR 183.425, table 5 (outside engine spaces, air of 30 °C);
     * ABYC E-11 has the same numbers.
     */
    private static final double[][] TABLE = {
        {10, 10, 15, 20, 20, 25, 25},
        {15, 15, 20, 25, 25, 30, 35},
        {20, 20, 25, 30, 35, 40, 45},
        {25, 25, 35, 40, 45, 50, 55},
        {40, 40, 50, 55, 60, 70, 70},
        {55, 65, 70, 70, 80, 90, 100},
        {80, 95, 100, 100, 120, 125, 135},
        {105, 125, 130, 135, 160, 170, 180},
        {120, 145, 150, 155, 180, 195, 210},
        {140, 170, 175, 180, 210, 225, 240},
        {165, 195, 210, 210, 245, 265, 280},
        {195, 230, 245, 245, 285, 305, 325},
        {225, 265, 285, 285, 330, 355, 370},
        {260, 310, 330, 330, 385, 410, 430},
        {300, 360, 385, 385, 445, 475, 510}
    };

    private Ampacity() {}

    /**
     * The class of the table that an insulation may count as: the highest not above its rating, °C.
     *
     * @param ratedC temperature rating of the insulation, °C, from 60
     */
    public static double insulationClassC(double ratedC) {
        return CLASSES_C[column(ratedC)];
    }

    private static int column(double ratedC) {
        Require.within("insulation rating", ratedC, CLASSES_C[0], 1000);
        int column = CLASSES_C.length - 1;
        while (CLASSES_C[column] > ratedC) {
            column--;
        }
        return column;
    }

    /**
     * Table current in air of 30 °C, A: for a gauge its row; for any other area straight between the rows by area (in
     * proportion below the first, and the last row's beyond 4/0). Source: 33 CFR 183.425 table 5; between its rows common
     * practice, since the metric table of ISO 13297 was not at hand.
     *
     * @param areaMm2 copper, mm², above 0
     * @param ratedC temperature rating of the insulation, °C
     */
    public static double tableA(double areaMm2, double ratedC) {
        int column = column(ratedC);
        List<Conductor> gauges = Conductor.gauges();
        if (areaMm2 < gauges.get(0).areaMm2()) {
            return TABLE[0][column] * areaMm2 / gauges.get(0).areaMm2();
        }
        for (int row = 1; row < TABLE.length; row++) {
            double upper = gauges.get(row).areaMm2();
            if (areaMm2 < upper) {
                double lower = gauges.get(row - 1).areaMm2();
                double share = (areaMm2 - lower) / (upper - lower);
                return TABLE[row - 1][column] + share * (TABLE[row][column] - TABLE[row - 1][column]);
            }
        }
        return TABLE[TABLE.length - 1][column];
    }

    /**
     * Share of the table current in warmer air: {@code sqrt((Tr − Ta)/(Tr − 30))}, the heat balance of a cable whose loss
     * to the air grows in proportion; never above 1, and 0 where the air is as warm as the insulation may be. It gives the
     * engine-space factors of 33 CFR 183.425 (air of 50 °C) to 0.01, but for the 200 °C class (0.94 instead of 1).
     *
     * @param ratedC Tr, class of the insulation, °C
     * @param airC Ta, air around the cable, °C
     */
    public static double ambientShare(double ratedC, double airC) {
        if (airC <= TABLE_AIR_C) {
            return 1;
        }
        return airC >= ratedC ? 0 : Math.sqrt((ratedC - airC) / (ratedC - TABLE_AIR_C));
    }

    /**
     * Share left in a bundle: 33 CFR 183.425 table 5, note 2.
     *
     * @param conductors current-carrying conductors in the bundle, from 1
     */
    public static double bundleShare(int conductors) {
        if (conductors <= 2) {
            return 1;
        }
        if (conductors == 3) {
            return 0.70;
        }
        if (conductors <= 6) {
            return 0.60;
        }
        return conductors <= 24 ? 0.50 : 0.40;
    }

    /**
     * What the conductor may carry, A.
     *
     * @param airC air around it, °C
     */
    public static double allowedA(double areaMm2, double ratedC, int bundled, double airC) {
        return tableA(areaMm2, ratedC) * bundleShare(bundled) * ambientShare(insulationClassC(ratedC), airC);
    }

    /**
     * Temperature of the conductor after long flow, °C: the same heat balance, {@code Ta + (Tr − 30) (I/I30)²}, so it
     * reaches its rating at {@link #allowedA}. Below 30 °C of air it reckons from the air there is.
     *
     * @param currentA A, from 0
     */
    public static double conductorC(double areaMm2, double ratedC, int bundled, double airC, double currentA) {
        double share = currentA / (tableA(areaMm2, ratedC) * bundleShare(bundled));
        return airC + (insulationClassC(ratedC) - TABLE_AIR_C) * share * share;
    }

    /**
     * Largest protection that trade practice allows on thin conductors, A, and infinite above 10 AWG: 6, 8, 15, 20, 30 A
     * for 18, 16, 14, 12, 10 AWG. Source: National Electrical Code 240.4(D) and the low-voltage table that its article 552
     * names, by reproductions.
     */
    public static double thinConductorA(double areaMm2) {
        double[] most = {6, 8, 15, 20, 30};
        if (areaMm2 >= Conductor.gauges().get(most.length).areaMm2()) {
            return Double.POSITIVE_INFINITY;
        }
        int row = most.length - 1;
        while (row > 0 && areaMm2 < Conductor.gauges().get(row).areaMm2() * 0.99) {
            row--;
        }
        return most[row];
    }
}
