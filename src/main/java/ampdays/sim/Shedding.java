package ampdays.sim;

import ampdays.load.LoadSpec;
import ampdays.scenario.Design;
import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Which uses are off because the bank is low. Every state of charge at which some use goes is a threshold; the level is how
 * many of them the bank has fallen below, and it goes back when the bank has risen a band above.
 */
final class Shedding {
    private final double[] thresholds;
    private final double bandShare;
    private final int coolingLevel;
    private final int refrigeratorLevel;
    private int level;

    Shedding(Design design) {
        this.thresholds = thresholds(design);
        this.bandShare = design.shed().bandShare();
        this.coolingLevel = level(design.shed().coolingBelowShare());
        this.refrigeratorLevel = level(design.shed().refrigeratorBelowShare());
    }

    /** Goes on from where another was, if something is shed at the same states of charge. */
    void goOnFrom(Shedding before) {
        level = Arrays.equals(thresholds, before.thresholds) ? before.level : 0;
    }

    /** The states of charge at which something is shed, highest first. */
    static double[] thresholds(Design design) {
        DoubleStream loads = design.loads().stream().mapToDouble(LoadSpec::shedBelowShare);
        DoubleStream others = DoubleStream.of(
                design.cooler().isPresent() ? design.shed().coolingBelowShare() : 0,
                design.refrigerator().isPresent() ? design.shed().refrigeratorBelowShare() : 0);
        return DoubleStream.concat(loads, others)
                .filter(share -> share > 0)
                .map(share -> -share)
                .distinct()
                .sorted()
                .map(share -> -share)
                .toArray();
    }

    private int level(double belowShare) {
        for (int i = 0; i < thresholds.length; i++) {
            if (thresholds[i] == belowShare) {
                return i + 1;
            }
        }
        return Integer.MAX_VALUE;
    }

    void step(double soc) {
        if (thresholds.length > 0) {
            move(soc);
        }
    }

    private void move(double soc) {
        while (level < thresholds.length && soc < thresholds[level]) {
            level++;
        }
        while (level > 0 && soc >= thresholds[level - 1] + bandShare) {
            level--;
        }
    }

    /** State of charge below which something is shed, as long as nothing is. */
    double firstShare() {
        return thresholds.length > 0 ? thresholds[0] : 0;
    }

    /** How many thresholds the bank has fallen below. */
    int level() {
        return level;
    }

    boolean coolingOff() {
        return level >= coolingLevel;
    }

    boolean refrigeratorOff() {
        return level >= refrigeratorLevel;
    }
}
