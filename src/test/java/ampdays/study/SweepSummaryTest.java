package ampdays.study;

import static ampdays.results.Fate.EMPTY;
import static ampdays.results.Fate.FALLS;
import static ampdays.results.Fate.HOLDS;
import static ampdays.results.Fate.UNKNOWN;
import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Fate;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables written by hand, summed up by hand. */
class SweepSummaryTest {
    private static final double NEVER = Double.NaN;

    /** Rows of options by sizes of panels; a design without days holds. */
    private static SweepTable table(List<String> options, List<String> watts, List<Double> days) {
        return table(
                options,
                watts,
                days,
                days.stream().map(day -> Double.isNaN(day) ? HOLDS : EMPTY).toList());
    }

    private static SweepTable table(List<String> options, List<String> watts, List<Double> days, List<Fate> fates) {
        List<Integer> option = places(options.size(), watts.size(), true);
        List<Integer> watt = places(options.size(), watts.size(), false);
        List<Double> same = Collections.nCopies(days.size(), 1.0);
        return new SweepTable(
                List.of(new Column("option", options, option), new Column("solar.power (W)", watts, watt)),
                days,
                fates,
                same,
                same,
                same,
                same,
                same,
                "USD");
    }

    private static List<Integer> places(int slow, int fast, boolean ofTheSlow) {
        return IntStream.range(0, slow * fast)
                .mapToObj(row -> ofTheSlow ? row / fast : row % fast)
                .toList();
    }

    @Test
    void anOptionWithTheRowsOfAnotherIsNamed() {
        SweepTable table = table(
                List.of("as it is", "more solar", "bigger bank"),
                List.of("400", "600"),
                List.of(3.0, NEVER, 3.0, NEVER, 3.0, 9.0));
        assertThat(SweepSummary.of(table))
                .filteredOn(line -> line.contains("row for row"))
                .containsExactly("  \"more solar\" has the same results as \"as it is\", row for row.");
    }

    @Test
    void oneDesignIsToldAsOne() {
        List<String> base = List.of("as it is");
        assertThat(SweepSummary.of(table(base, List.of("400"), List.of(5.14))).get(0))
                .isEqualTo("The one design is empty after 5.1 days.");
        assertThat(SweepSummary.of(table(base, List.of("400"), List.of(NEVER))).get(0))
                .isEqualTo("The one design holds.");
        assertThat(SweepSummary.of(table(base, List.of("400", "600"), List.of(5.14, NEVER))))
                .startsWith("Of 2 designs 1 holds; 1 is empty, after 5.1 days.")
                .contains("  400: empty after 5.1 days", "  600: holds");
    }

    /** Two days show no trend: whether such a design holds or falls is not known. */
    @Test
    void aTripTooShortForATrendIsNotSaidToFall() {
        List<String> base = List.of("as it is");
        List<String> watts = List.of("400", "600");
        List<Double> days = List.of(1.5, NEVER);
        assertThat(SweepSummary.of(table(base, watts, days, List.of(EMPTY, UNKNOWN))))
                .startsWith(
                        "Of 2 designs 0 hold; 1 is not empty, on a trip too short to tell more; 1 is empty, after 1.5 days.")
                .contains("  600: not empty, on a trip too short to tell more");
        assertThat(SweepSummary.of(table(base, watts, days, List.of(EMPTY, FALLS))))
                .startsWith("Of 2 designs 0 hold; 1 is not empty, but falling; 1 is empty, after 1.5 days.")
                .contains("  600: not empty, but falls");
        assertThat(SweepSummary.of(table(base, List.of("400"), List.of(NEVER), List.of(UNKNOWN)))
                        .get(0))
                .isEqualTo("The one design is not empty, on a trip too short to tell more.");
    }

    /** What is not known is neither worse than what holds nor better; that a bank was not empty is better than one that was. */
    @Test
    void whatIsNotKnownIsNoTurnForTheWorse() {
        List<String> base = List.of("as it is");
        List<String> watts = List.of("400", "600", "800");
        assertThat(SweepSummary.of(table(base, watts, List.of(1.2, NEVER, NEVER), List.of(EMPTY, HOLDS, UNKNOWN))))
                .noneMatch(line -> line.contains("More is"));
        assertThat(SweepSummary.of(table(base, watts, List.of(1.2, NEVER, NEVER), List.of(EMPTY, HOLDS, FALLS))))
                .anyMatch(line -> line.contains("at 800 W it is not empty but falls"));
        assertThat(SweepSummary.of(table(base, watts, List.of(1.2, NEVER, 1.5), List.of(EMPTY, UNKNOWN, EMPTY))))
                .contains("  More is not always better: at 600 W it is not empty within the trip, at 800 W it is"
                        + " empty after 1.5 days; with option as it is.");
    }

    static Stream<Arguments> turns() {
        return Stream.of(
                Arguments.of(List.of(3.0, 4.0, 5.0, 3.0, 4.0, 5.0), ""),
                Arguments.of(List.of(3.0, NEVER, NEVER, 5.0, 4.0, 3.0), ""),
                Arguments.of(List.of(3.0, 4.0, 3.95, 5.0, 4.95, 5.0), ""),
                Arguments.of(
                        List.of(3.0, 4.0, 3.5, 3.0, 4.0, 5.0),
                        "More is not always better: at 900 W it is empty after 4.0 days, at 1200 W it is empty after 3.5"
                                + " days; with option as it is. So in 1 of 2 places."),
                Arguments.of(
                        List.of(3.0, NEVER, 9.0, 3.0, 4.0, 3.5),
                        "More is not always better: at 900 W it holds, at 1200 W it is empty after 9.0 days; with option"
                                + " as it is. So in 2 of 2 places."),
                Arguments.of(
                        List.of(3.0, 3.0, 3.0, 7.0, 4.0, 4.5),
                        "More is not always worse: at 900 W it is empty after 4.0 days, at 1200 W it is empty after 4.5"
                                + " days; with option less heat. So in 1 of 2 places."));
    }

    /** The values are not written in rising order. */
    @ParameterizedTest
    @MethodSource("turns")
    void aLineThatTurnsIsTold(List<Double> byRisingPower, String sentence) {
        List<Double> days = Stream.of(1, 0, 2, 4, 3, 5).map(byRisingPower::get).toList();
        SweepTable table = table(List.of("as it is", "less heat"), List.of("900", "600", "1200"), days);
        assertThat(SweepSummary.of(table).stream()
                        .filter(line -> line.contains("More is"))
                        .map(String::strip)
                        .toList())
                .isEqualTo(sentence.isEmpty() ? List.of() : List.of(sentence));
    }
}
