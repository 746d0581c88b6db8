package ampdays.wiring;

import ampdays.units.Require;
import java.util.List;
import java.util.Optional;

/**
 * The fuse or breaker of a circuit.
 *
 * @param ratingA rating, A
 * @param calibratedC air that the rating is told for, °C
 * @param interruptA largest current it can interrupt, A
 * @param place whose air surrounds it
 * @param near the end of the circuit at which it sits; empty: the battery's
 * @param distanceM length of cable between that end and it, m
 */
public record Protection(
        ProtectionKind kind,
        double ratingA,
        double calibratedC,
        double interruptA,
        Place place,
        Optional<End> near,
        double distanceM) {
    /** Ratings that are sold, A. */
    private static final List<Double> RATINGS = List.of(
            1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0,
            110.0, 125.0, 150.0, 175.0, 200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 500.0, 600.0);

    /** What a bank's or a charger's current that flows for hours must be multiplied with: NEC 210.19 and 215.2. */
    public static final double CONTINUOUS_SHARE = 1.25;

    /** Most over the conductor's table current below 50 V on boats: 33 CFR 183.455. */
    public static final double MOST_OVER_TABLE = 1.5;

    public Protection {
        Require.positive("rating", ratingA);
        Require.positive("interrupt rating", interruptA);
        Require.notNegative("distance", distanceM);
    }

    /** Ratings that are sold, A, the smallest first. */
    public static List<Double> ratings() {
        return RATINGS;
    }

    /**
     * What it holds for hours, A.
     *
     * @param ownC its own temperature, °C
     * @param elevationM height above the sea, m
     */
    public double holdA(double ownC, double elevationM) {
        return ratingA * Hold.share(kind, calibratedC, ownC, elevationM);
    }
}
