package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.SweepReader;
import ampdays.results.SweepTable;
import ampdays.scenario.Grid;
import ampdays.scenario.KnobText;
import ampdays.study.GridTable;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Identity of the program with itself: what is kept in memory is what a sweep writes. */
class GridTableTest {
    private static final List<String> VARY =
            List.of("trip.parked-days=0, 3", "trip.drive-hours=1, 15, 2 h/day", "option=all");

    @TempDir
    private Path folder;

    @Test
    void itIsTheTableOfASweep() throws Exception {
        Path van = StudiedVan.in(folder, "{first-start: 07-01}", "  more: {solar.power: 700 W}\n");
        StringWriter told = new StringWriter();
        int exit = Main.run(
                new PrintWriter(told),
                new PrintWriter(told),
                "sweep",
                van.toString(),
                "--vary",
                VARY.get(0),
                "--vary",
                VARY.get(1),
                "--vary",
                VARY.get(2),
                "--out",
                folder.toString());
        assertThat(exit).as(told.toString()).isZero();
        SweepTable written = SweepReader.read(folder.resolve("sweep.csv"));

        Loaded loaded = Loaded.read(van);
        Grid grid = new Grid(
                VARY.stream().map(text -> KnobText.read(text, loaded.file())).toList(), false);
        SweepTable kept = GridTable.of(loaded.file(), grid, Map.of(), loaded.planner(Outputs.STEP_SECONDS), 2);
        assertThat(kept.columns())
                .extracting(SweepTable.Column::heading)
                .containsExactly("trip.parked-days", "trip.drive-hours (h/day)", "option");
        assertThat(kept.columns()).containsExactlyInAnyOrderElementsOf(written.columns());
        assertThat(kept.daysToEmpty()).isEqualTo(written.daysToEmpty());
        assertThat(kept.fates()).isEqualTo(written.fates());
        assertThat(kept.lowestPercent()).isEqualTo(written.lowestPercent());
        assertThat(kept.comfortableNights()).isEqualTo(written.comfortableNights());
        assertThat(kept.prices()).isEqualTo(written.prices());
        assertThat(kept.massesKg()).isEqualTo(written.massesKg());
        assertThat(kept.panelsM2()).isEqualTo(written.panelsM2());
        assertThat(kept.currency()).isEqualTo(written.currency());
        SweepTable priced =
                GridTable.of(loaded.file(), grid, Map.of("more", 1.0), loaded.planner(Outputs.STEP_SECONDS), 1);
        assertThat(priced.prices().get(1)).isEqualTo(written.prices().get(0) + 1);
    }
}
