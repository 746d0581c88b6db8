package ampdays.results;

import java.time.ZoneId;
import java.util.List;

/**
 * What one design goes through when things fail, one at a time.
 *
 * @param outcomes of what applies to the design
 * @param notApplying what does not, and why
 * @param undisturbed the trip without any failure
 * @param undisturbedCurve its state of charge
 * @param heat how the van warms when its cooling stops at the worst moment
 */
public record FailureReport(
        String scenario,
        String title,
        String option,
        ZoneId zone,
        double reserveShare,
        double tripDays,
        List<FailureOutcome> outcomes,
        List<NotApplying> notApplying,
        RunResult undisturbed,
        FailureOutcome.Curve undisturbedCurve,
        HeatAfterLoss heat) {
    public FailureReport {
        outcomes = List.copyOf(outcomes);
        notApplying = List.copyOf(notApplying);
    }

    /** A failure that the design cannot suffer. */
    public record NotApplying(String name, String why) {}
}
