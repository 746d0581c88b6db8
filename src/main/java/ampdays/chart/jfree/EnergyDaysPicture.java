package ampdays.chart.jfree;

import ampdays.chart.EnergyDays;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Draws {@link EnergyDays}. */
record EnergyDaysPicture(EnergyDays chart) implements Picture {
    private static final double LEFT = 56;
    private static final double TOP = 92;

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return 490;
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<String> names = new ArrayList<>(chart.sources());
        names.addAll(chart.uses());
        double room = Key.room(pen, names);
        Rectangle2D area = new Rectangle2D.Double(LEFT, TOP, width() - LEFT - room, height() - TOP - 36);
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(
                area, axes.tripDays(chart.days()), axes.upAndDown(chart.highestUseKwh(), chart.highestSourceKwh()));
        panel.draw(pen.graphics());
        pen.write(chart.yLabel(), 16, TOP - 14, pen.style().label(), Style.WORDS);

        List<Stacks.Place> places = chart.bars().stream()
                .map(bar -> new Stacks.Place(bar.fromDay(), bar.toDay()))
                .toList();
        Stacks.draw(pen, panel, places, byName(chart.sources(), EnergyDays.Bar::sourceKwh), chart.sources(), 1);
        Stacks.draw(pen, panel, places, byName(chart.uses(), EnergyDays.Bar::useKwh), chart.uses(), -1);
        double zero = panel.y(0);
        pen.line(LEFT, zero, area.getMaxX(), zero, Style.INK, Style.thin());
        new Key(pen, area.getMaxX(), room).stacks(area, zero, chart.sources(), chart.uses());
    }

    private List<List<Double>> byName(List<String> names, Function<EnergyDays.Bar, List<Double>> stack) {
        return IntStream.range(0, names.size())
                .mapToObj(i -> chart.bars().stream()
                        .map(bar -> stack.apply(bar).get(i))
                        .toList())
                .toList();
    }
}
