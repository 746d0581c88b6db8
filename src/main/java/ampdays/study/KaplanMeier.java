package ampdays.study;

import ampdays.results.Survival;
import ampdays.results.Survival.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Survival from lives of which some were watched to their end and others only for a while: the product-limit estimate,
 * {@code S(t) = Π (1 − dᵢ/nᵢ)} over the times {@code tᵢ ≤ t} at which {@code dᵢ} of the {@code nᵢ} still watched ended.
 *
 * <p>E. L. Kaplan and P. Meier (1958), Nonparametric estimation from incomplete observations, Journal of the American
 * Statistical Association 53, equation 2b (number from memory). Test: {@code KaplanMeierTest}.
 */
final class KaplanMeier {
    private KaplanMeier() {}

    /**
     * One life.
     *
     * @param time of its end, or as long as it was watched
     * @param ended whether its end was seen
     */
    record Life(double time, boolean ended) {}

    /** The estimate; a life that was watched until a time counts as living at it. */
    static Survival of(List<Life> lives) {
        List<Life> sorted = new ArrayList<>(lives);
        sorted.sort(Comparator.comparingDouble(Life::time));
        List<Step> steps = new ArrayList<>();
        double share = 1;
        int next = 0;
        while (next < sorted.size()) {
            double time = sorted.get(next).time();
            int watched = sorted.size() - next;
            int ended = 0;
            for (; next < sorted.size() && sorted.get(next).time() == time; next++) {
                ended += sorted.get(next).ended() ? 1 : 0;
            }
            if (ended > 0) {
                share = ended == watched ? 0 : share * (1 - (double) ended / watched);
                steps.add(new Step(time, share));
            }
        }
        return new Survival(steps);
    }
}
