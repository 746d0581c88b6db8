package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Tables written by hand, summed up by hand. */
class SweepSummaryTest {
    private static final double NEVER = Double.NaN;

    /** Rows of options by sizes of panels; a design without days holds. */
    private static SweepTable table(List<String> options, List<String> watts, List<Double> days) {
        List<Integer> option = places(options.size(), watts.size(), true);
        List<Integer> watt = places(options.size(), watts.size(), false);
        List<Double> same = Collections.nCopies(days.size(), 1.0);
        return new SweepTable(
                List.of(new Column("option", options, option), new Column("solar.power (W)", watts, watt)),
                days,
                days.stream().map(day -> Double.isNaN(day)).toList(),
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
}
