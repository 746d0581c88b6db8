package ampdays.results;

import ampdays.results.Finding.Severity;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/**
 * What the wiring check of one option came to.
 *
 * @param offered whether the circuits were offered by the program, not said in the scenario
 * @param systemV nominal voltage of the bank, V
 * @param faultA short-circuit current at the bank, A
 * @param findings the gravest first
 * @param questions what only a person can confirm
 * @param leftOut circuits whose ends this option does not have
 */
public record WiringResult(
        String option,
        ZoneId zone,
        boolean offered,
        double systemV,
        double faultA,
        List<WiringRow> rows,
        List<WiringFinding> findings,
        List<String> questions,
        List<String> leftOut) {
    public WiringResult {
        rows = List.copyOf(rows);
        findings = findings.stream()
                .sorted(Comparator.comparing(WiringFinding::severity).reversed())
                .toList();
        questions = List.copyOf(questions);
        leftOut = List.copyOf(leftOut);
    }

    public long count(Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }
}
