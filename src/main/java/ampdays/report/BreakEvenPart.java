package ampdays.report;

import ampdays.chart.BreakEven;
import ampdays.chart.BreakEven.Cell;
import ampdays.chart.BreakEvens;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Text;
import ampdays.results.SweepTable;
import ampdays.results.SweepTable.Column;
import ampdays.scenario.BreakEvenGrid;
import ampdays.units.Dimension;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which option wins when the client drives more or less, stays longer, or meets other heat than planned. */
final class BreakEvenPart {
    private BreakEvenPart() {}

    static Part of(Material material) {
        Stream<Block> blocks = material.studies()
                .breakEven()
                .map(table -> blocks(table, material))
                .orElseGet(() -> Stream.of(none(material)));
        return Part.of("break-even", "Which option wins where", blocks);
    }

    private static Text none(Material material) {
        return new Text("There is no map of which option wins by driving, parked days and heat. "
                + BreakEvenGrid.hindrance(material.file(), BreakEven.MOST_OPTIONS)
                        .orElseThrow());
    }

    private static Stream<Block> blocks(SweepTable table, Material material) {
        Text what = new Text(
                "The same trip with longer and shorter drives, with more days parked between them, and in other"
                        + " heat. Of the options that hold, the one whose parts cost least wins, by the prices under"
                        + " “Assumptions”; where none holds, the one that lasts longest.");
        Column heat = table.columns().get(0);
        List<BreakEven> maps =
                List.copyOf(BreakEvens.of(table, material.comparison().title()).values());
        Stream<Block> pictures = IntStream.range(0, maps.size())
                .mapToObj(i -> new Picture(
                        "break-even-" + (i + 1),
                        maps.get(i)
                                .worded(
                                        "Which option wins, " + heat(heat.number(i), material),
                                        material.comparison().title(),
                                        "driving, hours on each day with a drive",
                                        "days parked between days with a drive"),
                        caption(maps.get(i))));
        return Stream.concat(Stream.of(what), pictures);
    }

    private static String heat(double byK, Material material) {
        return byK == 0
                ? "weather as in the file"
                : "all air " + material.units().show(Dimension.TEMPERATURE_DIFFERENCE, Math.abs(byK), 2)
                        + (byK > 0 ? " warmer" : " cooler");
    }

    /** How often each option wins, the one that does so most first. */
    private static String caption(BreakEven map) {
        List<Cell> cells = map.cells().stream().flatMap(List::stream).toList();
        List<String> texts = new ArrayList<>();
        IntStream.range(0, map.options().size())
                .boxed()
                .sorted((a, b) -> Long.compare(wins(cells, b), wins(cells, a)))
                .filter(option -> wins(cells, option) > 0)
                .forEach(option -> texts.add(Say.quoted(map.options().get(option)) + " in " + wins(cells, option)));
        long none = cells.stream().filter(cell -> !cell.holds()).count();
        return "Of " + cells.size() + " places, "
                + (texts.isEmpty() ? "no option holds in any" : "wins: " + Wording.listed(texts))
                + (none == 0 || texts.isEmpty() ? "." : "; no option holds in " + none + ".");
    }

    private static long wins(List<Cell> cells, int option) {
        return cells.stream()
                .filter(cell -> cell.holds() && cell.option() == option)
                .count();
    }
}
