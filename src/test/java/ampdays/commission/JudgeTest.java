package ampdays.commission;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.commission.Judgement.Support;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Judging by bands (definition), by Ohm's law, and the order of causes (common practice, no source). */
class JudgeTest {
    private static final Sheet SHEET = SmallSheet.sheet();

    private static Judgement only(String id, double reading) {
        return judged(Map.of(id, reading), id);
    }

    private static Judgement judged(Map<String, Double> readings, String id) {
        return Judge.of(SHEET, readings).stream()
                .filter(j -> j.item().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "rest.voltage, 13.11, PASS", "rest.voltage, 13.36, PASS", "rest.voltage, 13.10, INVESTIGATE",
        "rest.voltage, 12.99, INVESTIGATE", "rest.voltage, 12.98, STOP", "rest.voltage, 13.50, STOP",
        "hot.current, 0, INVESTIGATE", "hot.current, 150, INVESTIGATE", "hot.current, 151, STOP",
        "look.cables, 1, PASS", "look.cables, 0, STOP", "look.codes, 0, INVESTIGATE",
        "co.pillow, 3, PASS", "co.pillow, 4, STOP"
    })
    void edgesBelongToTheBetterSide(String id, double reading, Outcome outcome) {
        assertThat(only(id, reading).outcome()).isEqualTo(outcome);
    }

    /** Ohm's law: the same resistance drops half as much at half the current. */
    @Test
    void dropsAreJudgedAtTheCurrentThatWasRead() {
        assertThat(only("joint.worst", 49).outcome()).isEqualTo(Outcome.PASS);
        Judgement atHalf = judged(Map.of("hot.current", 50.0, "joint.worst", 49.0), "joint.worst");
        assertThat(atHalf.outcome()).isEqualTo(Outcome.INVESTIGATE);
        assertThat(atHalf.band().passTo()).isCloseTo(25, within(1e-12));
        assertThat(judged(Map.of("hot.current", 50.0, "joint.worst", 51.0), "joint.worst")
                        .outcome())
                .isEqualTo(Outcome.STOP);
        assertThat(judged(Map.of("hot.current", 110.0, "joint.worst", 54.0), "joint.worst")
                        .outcome())
                .isEqualTo(Outcome.PASS);
    }

    /** Practice: joints come before parts; nothing is cured by a bigger breaker. */
    @Test
    void aDropIsSoughtInJointsFirst() {
        Judgement judgement = only("hot.cable", 300);
        assertThat(judgement.causes().get(0).cause().text()).contains("joint");
        assertThat(judgement.next())
                .isEqualTo("Millivolts over each joint and each length of cable at the same current.");
    }

    @Test
    void anotherReadingMovesACauseUpOrDown() {
        Judgement supported = judged(Map.of("hot.current", 60.0, "hot.cable", 300.0), "hot.current");
        assertThat(supported.causes().get(0).support()).isEqualTo(Support.FOR);
        assertThat(supported.causes().get(0).cause().text()).startsWith("a joint");

        Judgement against = judged(Map.of("hot.current", 60.0, "hot.cable", 100.0, "hot.case", 115.0), "hot.current");
        assertThat(against.causes().get(0).cause().text()).startsWith("it is hotter than predicted");
        assertThat(against.causes().get(0).support()).isEqualTo(Support.FOR);
        assertThat(against.causes().get(against.causes().size() - 1).support()).isEqualTo(Support.AGAINST);
        assertThat(against.causes().get(against.causes().size() - 1).cause().text())
                .startsWith("a joint");
    }

    @Test
    void whatPassesHasNoCausesAndWhatWasNotReadHasNoJudgement() {
        List<Judgement> judgements = Judge.of(SHEET, Map.of("rest.voltage", 13.2));
        assertThat(judgements).hasSize(1);
        assertThat(judgements.get(0).causes()).isEmpty();
        assertThat(judgements.get(0).next()).isEmpty();
    }

    /** What is printed is what is judged: edges move outward to the printed decimals, and stay where they were if they fit. */
    @Test
    void roundedEdgesContainTheBand() {
        Band rounded = new Band(13.114, 13.351, 12.999, 13.4801).rounded(2);
        assertThat(rounded).isEqualTo(new Band(13.11, 13.36, 12.99, 13.49));
        assertThat(rounded.rounded(2)).isEqualTo(rounded);
        assertThat(Band.atMost(0.384, 1.28).rounded(2)).isEqualTo(Band.atMost(0.39, 1.28));
    }
}
