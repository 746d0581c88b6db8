package ampdays.chart.jfree;

import ampdays.chart.BreakEven;
import ampdays.chart.CabinChart;
import ampdays.chart.ChartFiles;
import ampdays.chart.ChartModel;
import ampdays.chart.DayChart;
import ampdays.chart.DaysBars;
import ampdays.chart.DriveChart;
import ampdays.chart.EnergyBalance;
import ampdays.chart.EnergyDays;
import ampdays.chart.FrontChart;
import ampdays.chart.HeatMap;
import ampdays.chart.LinesChart;
import ampdays.chart.OperatingPoints;
import ampdays.chart.SocChart;
import ampdays.chart.TornadoChart;
import java.awt.Graphics2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;

/**
 * Turns chart models into pictures. Needs neither a screen nor a font on the machine. One renderer may be used by
 * several threads. The same model gives the same SVG bytes everywhere, and the same PNG bytes on one Java runtime.
 */
public final class ChartRenderer {
    private static final int THREADS = 2;

    private final Style style;

    /** Fetches the typeface; the message of a failure is plain. */
    public ChartRenderer() throws IOException {
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
        style = new Style(Typeface.load());
    }

    /**
     * A renderer that gets ready on a thread of its own, while the caller has nothing to draw yet: it fetches the
     * typeface, and draws a word and a line, since the runtime looks into what it draws with when it first does.
     */
    public static Future<ChartRenderer> begin() {
        FutureTask<ChartRenderer> ready = new FutureTask<>(() -> {
            ChartRenderer renderer = new ChartRenderer();
            Png.of(new FirstStroke(), renderer.style);
            return renderer;
        });
        Thread thread = new Thread(ready, "charts");
        thread.setDaemon(true);
        thread.start();
        return ready;
    }

    /** What {@link #begin} has come to; waits for it. */
    public static ChartRenderer ready(Future<ChartRenderer> begun) throws IOException {
        return await(begun);
    }

    /** Writes BASENAME.svg and BASENAME.png. */
    public void write(ChartModel model, Path folder, String baseName) throws IOException {
        writeAll(new TreeMap<>(Map.of(baseName, model)), folder);
    }

    /** Writes several charts by base name, two pictures at a time. */
    public void writeAll(SortedMap<String, ChartModel> models, Path folder) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<Void>> written = new ArrayList<>();
            models.forEach((name, model) -> {
                written.add(pool.submit(() -> {
                    ChartFiles.writeSvg(folder, name, svg(model, name));
                    return null;
                }));
                written.add(pool.submit(() -> {
                    ChartFiles.writePng(folder, name, Png.of(picture(model), style));
                    return null;
                }));
            });
            for (Future<Void> one : written) {
                await(one);
            }
        } finally {
            end(pool);
        }
    }

    /** Lets what is being drawn come to its end, so that nothing is written any more after a failure was told. */
    private static void end(ExecutorService pool) throws IOException {
        pool.shutdownNow();
        try {
            boolean ended = false;
            while (!ended) {
                ended = pool.awaitTermination(1, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Drawing the charts was interrupted.", e);
        }
    }

    /** The SVG document alone; {@code name} keeps its ids apart from those of other pictures. */
    public String svg(ChartModel model, String name) throws IOException {
        return Svg.of(picture(model), style, name.replaceAll("[^A-Za-z0-9]+", "-"), model.title());
    }

    /** Draws on a page of somebody else, from its upper left corner on. */
    public void draw(ChartModel model, Graphics2D graphics) {
        picture(model).draw(new Pen(graphics, style));
    }

    /** Width of the drawing, in its own points. */
    public double width(ChartModel model) {
        return picture(model).width();
    }

    /** Height of the drawing, in its own points. */
    public double height(ChartModel model) {
        return picture(model).height();
    }

    private static <T> T await(Future<T> work) throws IOException {
        try {
            return work.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Drawing the charts was interrupted.", e);
        }
    }

    private static Picture picture(ChartModel model) {
        if (model instanceof SocChart chart) {
            return new SocPicture(chart);
        }
        if (model instanceof DayChart chart) {
            return new DayPicture(chart);
        }
        if (model instanceof DaysBars chart) {
            return new DaysPicture(chart);
        }
        if (model instanceof EnergyBalance chart) {
            return new BalancePicture(chart);
        }
        if (model instanceof EnergyDays chart) {
            return new EnergyDaysPicture(chart);
        }
        if (model instanceof CabinChart chart) {
            return new CabinPicture(chart);
        }
        if (model instanceof DriveChart chart) {
            return new DrivePicture(chart);
        }
        if (model instanceof OperatingPoints chart) {
            return new OperatingPicture(chart);
        }
        if (model instanceof HeatMap chart) {
            return new HeatPicture(chart);
        }
        if (model instanceof TornadoChart chart) {
            return new TornadoPicture(chart);
        }
        if (model instanceof BreakEven chart) {
            return new BreakEvenPicture(chart);
        }
        if (model instanceof FrontChart chart) {
            return new FrontPicture(chart);
        }
        return new LinesPicture((LinesChart) model);
    }
}
