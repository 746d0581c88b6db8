package ampdays.chart.jfree;

/** A word and a line, for a renderer to get ready with. */
record FirstStroke() implements Picture {
    @Override
    public int width() {
        return 40;
    }

    @Override
    public int height() {
        return 20;
    }

    @Override
    public void draw(Pen pen) {
        pen.page(this, "a", "b");
        pen.line(0, 0, 40, 20, Style.INK, Style.thin());
    }
}
