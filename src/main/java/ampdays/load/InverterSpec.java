package ampdays.load;

import ampdays.units.Require;

/**
 * The inverter: input = output + idle + linear·output + square·output²/rating.
 *
 * @param ratedW continuous output, W
 * @param idleW input without load, W
 * @param linearLoss share of the output lost, 0 to 1
 * @param squareLoss share of the output lost at the rating by resistance, 0 to 1
 * @param surgeW what it carries for some hundred milliseconds, W, at least the continuous output
 * @param alwaysOn whether it idles all day; if not, only while something on it may run
 */
public record InverterSpec(
        double ratedW, double idleW, double linearLoss, double squareLoss, double surgeW, boolean alwaysOn) {
    public InverterSpec {
        Require.positive("inverter rating", ratedW);
        Require.notNegative("inverter idle draw", idleW);
        Require.share("inverter linear loss", linearLoss);
        Require.share("inverter square loss", squareLoss);
        Require.within("inverter surge", surgeW, ratedW, 1e9);
    }

    /** Output over input at the continuous rating without the idle draw: the least of all outputs up to it. */
    public double shareAtRating() {
        return 1 / (1 + linearLoss + squareLoss);
    }

    /**
     * Input for an output, W: output + idle + linear·output + square·output²/rating. A common three-term form (no-load,
     * proportional, resistive loss); no published curve of a vehicle inverter is at hand. Reference: LoadTest.
     */
    public double inputW(double outputW) {
        return outputW + idleW + linearLoss * outputW + squareLoss * outputW * outputW / ratedW;
    }
}
