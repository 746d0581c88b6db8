package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Rows of a grid, counted by hand. */
class GridTest {
    private static Knob knob(String path, int values) {
        return new Knob(
                path, "", IntStream.range(0, values).mapToObj(i -> "v" + i).toList());
    }

    @Test
    void theLastKnobChangesFastest() {
        Grid grid = new Grid(List.of(knob("a", 2), knob("b", 3)), false);
        assertThat(grid.rows()).isEqualTo(6);
        assertThat(IntStream.range(0, 6).mapToObj(grid::places))
                .containsExactly(
                        List.of(0, 0), List.of(0, 1), List.of(0, 2), List.of(1, 0), List.of(1, 1), List.of(1, 2));
    }

    @Test
    void togetherEveryKnobMoves() {
        Grid grid = new Grid(List.of(knob("a", 3), knob("b", 3)), true);
        assertThat(grid.rows()).isEqualTo(3);
        assertThat(grid.places(2)).containsExactly(2, 2);
    }

    /** 1000⁷ is 10²¹, more than a long holds. */
    @Test
    void aCountBeyondAllBoundsIsSaidAsTheMost() {
        List<Knob> knobs =
                IntStream.range(0, 7).mapToObj(i -> knob("k" + i, 1000)).toList();
        assertThat(new Grid(knobs, false).rows()).isEqualTo(Long.MAX_VALUE);
        assertThat(new Grid(knobs.subList(0, 3), false).rows()).isEqualTo(1_000_000_000L);
    }

    @Test
    void samplesHaveEveryWord() {
        Grid grid = new Grid(List.of(knob("title", 3), knob("notes", 2)), false);
        assertThat(grid.samples()).containsExactly(List.of(0, 0), List.of(1, 0), List.of(2, 0), List.of(0, 1));
    }

    @Test
    void whatAllDesignsHaveAlikeIsTold() {
        Knob option = new Knob("option", "", List.of("second alternator"));
        Knob solar = new Knob("solar.power", "W", List.of("400 W"));
        assertThat(new Grid(List.of(option, solar, knob("a", 2)), false).alike())
                .isEqualTo("second alternator, solar.power 400 W");
        assertThat(new Grid(List.of(knob("a", 2)), false).alike()).isEmpty();
    }

    @Test
    void cellsStandWithoutTheirUnit() {
        Knob knob = new Knob("battery.capacity", "Ah", List.of("400 Ah", "1.5Ah"));
        assertThat(knob.cell(0)).isEqualTo("400");
        assertThat(knob.cell(1)).isEqualTo("1.5");
    }
}
