package ampdays.study;

import ampdays.results.Milestones;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * In what a trip with a failure is worse than one without: the bank comes to the reserve or the loads are cut off sooner, a
 * use that the failure leaves in the design gets less of what it asks for, the cabin is hot for longer with people in it, or
 * fewer nights are comfortable.
 */
final class FailureGood {
    /** Shares that differ by less are alike; practice. */
    private static final double SHARE = 0.01;

    /** Hot hours that differ by less are alike, h; practice. */
    private static final double HOURS = 0.25;

    private FailureGood() {}

    static boolean isGood(Aftermath with, Aftermath without) {
        return worse(with, without).isEmpty();
    }

    /** In what it is worse, in words; empty when it is no worse. */
    static List<String> worse(Aftermath with, Aftermath without) {
        Milestones then = with.milestones();
        Milestones otherwise = without.milestones();
        List<String> worse = new ArrayList<>();
        if (sooner(then.reserve(), otherwise.reserve())) {
            worse.add("the bank comes to the reserve" + (otherwise.reserve() < 0 ? "" : " sooner"));
        }
        if (sooner(then.cutOut(), otherwise.cutOut())) {
            worse.add("the loads are cut off" + (otherwise.cutOut() < 0 ? "" : " sooner"));
        }
        if (without.uses().stream().filter(with::keeps).anyMatch(use -> goesShort(with, without, use))) {
            worse.add("uses go short");
        }
        if (then.hotHours() > otherwise.hotHours() + HOURS) {
            worse.add(String.format(
                    Locale.ROOT,
                    "the cabin is above 32 °C for %.1f h longer with people in it",
                    then.hotHours() - otherwise.hotHours()));
        }
        int fewer = without.comfortableNights() - with.comfortableNights();
        if (fewer > 0) {
            worse.add(fewer + (fewer == 1 ? " comfortable night fewer" : " comfortable nights fewer"));
        }
        return worse;
    }

    private static boolean sooner(int then, int otherwise) {
        return then >= 0 && (otherwise < 0 || then < otherwise);
    }

    /** A use that asks for nothing has all it asks for. */
    private static boolean goesShort(Aftermath with, Aftermath without, String use) {
        return with.servedShare(use, without) < without.servedShare(use, without) - SHARE;
    }
}
