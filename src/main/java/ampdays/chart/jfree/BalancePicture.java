package ampdays.chart.jfree;

import ampdays.chart.EnergyBalance;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws an {@link EnergyBalance}: a row for each step, each beginning where the one above ended. */
record BalancePicture(EnergyBalance chart) implements Picture {
    private static final double TOP = 66;
    private static final double PITCH = 25;
    private static final double THICK = 16;
    private static final double THINNEST = 1.5;

    private static final Style.Fill SUM = new Style.Fill(Style.INK, Style.Hatch.NONE);
    private static final Style.Fill LOSS = new Style.Fill(Style.GREY, Style.Hatch.NONE);
    private static final Style.Fill BANK = new Style.Fill(new Color(0x5B6B8C), Style.Hatch.CROSS);

    @Override
    public int width() {
        return 1000;
    }

    @Override
    public int height() {
        return (int) (TOP + PITCH * chart.steps().size() + (chart.outside().isEmpty() ? 54 : 78));
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, chart.title(), chart.subtitle());
        List<EnergyBalance.Step> steps = chart.steps();
        List<String> names = steps.stream().map(EnergyBalance.Step::label).toList();
        List<String> words = steps.stream().map(EnergyBalance.Step::words).toList();
        double left = 16 + pen.roomFor(names, pen.style().label(), 60, 340) + 12;
        double right = pen.roomFor(words, pen.style().heading(), 60, 260) + 20;
        double highestWh = steps.stream()
                .mapToDouble(step -> Math.max(step.fromWh(), step.toWh()))
                .max()
                .orElse(0);
        Rectangle2D area = new Rectangle2D.Double(left, TOP, width() - left - right, PITCH * steps.size());
        Axes axes = new Axes(pen.style());
        Panel panel = new Panel(
                        area, axes.numbers(0, highestWh / 1000, 7, false), axes.numbers(0, steps.size(), 1, false))
                .uprightGrid();
        panel.draw(pen.graphics());
        for (int i = 0; i < steps.size(); i++) {
            step(pen, panel, i);
        }
        pen.line(left, TOP, left, area.getMaxY(), Style.ZERO, Style.thin());
        pen.write(chart.xLabel(), left, area.getMaxY() + 38, pen.style().label(), Style.WORDS);
        pen.write(chart.outside(), 16, area.getMaxY() + 64, pen.style().label(), Style.INK);
    }

    private void step(Pen pen, Panel panel, int index) {
        EnergyBalance.Step step = chart.steps().get(index);
        double middle = TOP + PITCH * (index + 0.5);
        double from = panel.x(step.fromWh() / 1000);
        double to = panel.x(step.toWh() / 1000);
        double left = Math.min(from, to);
        double wide = Math.max(THINNEST, Math.abs(to - from));
        if (index + 1 < chart.steps().size()) {
            pen.line(to, middle, to, middle + PITCH, Style.ZERO, Style.thin());
        }
        pen.fill(List.of(new Rectangle2D.Double(left, middle - THICK / 2, wide, THICK)), fill(step));

        boolean sum = step.part() == EnergyBalance.Part.SUM;
        Font font = sum ? pen.style().heading() : pen.style().label();
        pen.write(step.label(), 16, middle + 4.5, font, Style.INK);
        double end = left + wide;
        pen.graphics().setColor(Color.WHITE);
        pen.graphics().fill(new Rectangle2D.Double(end + 5, middle - 9, pen.room(step.words(), font) + 4, 18));
        pen.write(step.words(), end + 8, middle + 4.5, font, Style.INK);
    }

    private static Style.Fill fill(EnergyBalance.Step step) {
        return switch (step.part()) {
            case SOURCE, USE -> Style.fill(step.label(), 0);
            case LOSS -> LOSS;
            case BANK -> BANK;
            case SUM -> SUM;
        };
    }
}
