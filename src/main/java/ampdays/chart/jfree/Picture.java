package ampdays.chart.jfree;

/** A chart that can be drawn any number of times, the same each time. Sizes are in points of the screen. */
interface Picture {
    int width();

    int height();

    void draw(Pen pen);
}
