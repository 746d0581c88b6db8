package ampdays.commission;

/**
 * Where a reading passes and where the job stops; between the two it is to be investigated. An open side is infinite.
 *
 * @param passFrom least reading that passes
 * @param passTo largest reading that passes
 * @param stopBelow readings below it stop the job, at most {@code passFrom}
 * @param stopAbove readings above it stop the job, at least {@code passTo}
 */
public record Band(double passFrom, double passTo, double stopBelow, double stopAbove) {
    public Band {
        if (!(passFrom <= passTo && stopBelow <= passFrom && stopAbove >= passTo)) {
            throw new IllegalArgumentException("a band passes from " + passFrom + " to " + passTo + " but stops below "
                    + stopBelow + " and above " + stopAbove);
        }
    }

    /** Less is always good. */
    public static Band atMost(double passTo, double stopAbove) {
        return new Band(Double.NEGATIVE_INFINITY, passTo, Double.NEGATIVE_INFINITY, stopAbove);
    }

    /** Between two readings; outside of them nothing worse than a search. */
    public static Band within(double passFrom, double passTo) {
        return new Band(passFrom, passTo, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The answer yes, written as 1, passes; no, written as 0, does not. */
    public static Band yes(boolean noStops) {
        return new Band(1, 1, noStops ? 1 : Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    public Outcome judge(double reading) {
        if (reading < stopBelow || reading > stopAbove) {
            return Outcome.STOP;
        }
        return reading >= passFrom && reading <= passTo ? Outcome.PASS : Outcome.INVESTIGATE;
    }

    /** The same band that stops at a reading, whatever the van. */
    public Band stoppingAbove(double most) {
        return new Band(Math.min(passFrom, most), Math.min(passTo, most), stopBelow, Math.min(stopAbove, most));
    }

    /** Every edge times a factor above zero. */
    public Band times(double factor) {
        return new Band(passFrom * factor, passTo * factor, stopBelow * factor, stopAbove * factor);
    }

    /** Edges moved outward to a number of decimals, so that what is printed is what is judged. */
    public Band rounded(int decimals) {
        double scale = Math.pow(10, decimals);
        return new Band(down(passFrom, scale), up(passTo, scale), down(stopBelow, scale), up(stopAbove, scale));
    }

    private static double down(double edge, double scale) {
        return Math.floor(edge * scale + 1e-6) / scale;
    }

    private static double up(double edge, double scale) {
        return Math.ceil(edge * scale - 1e-6) / scale;
    }
}
