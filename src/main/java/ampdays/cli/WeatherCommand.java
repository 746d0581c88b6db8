package ampdays.cli;

import ampdays.chart.ChartModel;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.io.InputException;
import ampdays.io.WeatherReader;
import ampdays.sim.SkyCompletion;
import ampdays.sim.SunFit;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import ampdays.weather.WeatherSummary;
import ampdays.weather.WeatherSummary.Month;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what a weather file holds. */
@Command(
        mixinStandardHelpOptions = true,
        subcommands = {WeatherMakeCommand.class, WeatherFitCommand.class},
        description =
                "Say what a weather file holds: months, hottest week, charts, and whether its light fits the sun.")
final class WeatherCommand implements Callable<Integer> {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A weather file: EPW, TMY3 as CSV, or plain CSV.")
    private Path file;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the charts; without it, a folder in out/weather/ named after the file.")
    private Path out;

    @Override
    public Integer call() throws IOException, InputException {
        if (file == null) {
            throw new ParameterException(
                    spec.commandLine(), "Missing: a weather FILE, or one of the commands make and fit.");
        }
        WeatherSeries read = WeatherReader.read(file);
        WeatherSeries series = SkyCompletion.complete(read);
        WeatherSummary summary = WeatherSummary.of(series);
        Path folder = out == null ? Path.of("out", "weather", name(file)) : out;
        SortedMap<String, ChartModel> charts = WeatherCharts.of(series, summary);
        if (!charts.isEmpty()) {
            new ChartRenderer().writeAll(charts, folder);
        }
        print(series, summary);
        PrintWriter screen = spec.commandLine().getOut();
        series.notes().forEach(note -> screen.println("note: " + note));
        SunFit.warning(read).ifPresent(warning -> screen.println("caution: " + warning));
        if (!charts.isEmpty()) {
            screen.println(
                    "Written to " + folder + ": charts (.svg and .png): " + String.join(", ", charts.keySet()) + ".");
        }
        return Exit.DONE;
    }

    /** A file's name without its ending. */
    static String name(Path file) {
        return file.getFileName().toString().replaceFirst("\\.[^.]+$", "");
    }

    private void print(WeatherSeries series, WeatherSummary summary) {
        PrintWriter screen = spec.commandLine().getOut();
        SeriesInfo info = series.info();
        screen.println(info.source());
        screen.println(String.format(
                Locale.ROOT,
                "latitude %.2f°, longitude %.2f°, elevation %.0f m, UTC%s; %s, every %d min",
                info.latitudeDeg(),
                info.longitudeDeg(),
                info.elevationM(),
                ZoneOffset.ofTotalSeconds((int) info.utcOffsetSeconds()),
                series.coverage(),
                info.stepSeconds() / 60));
        screen.println();
        if (!summary.months().isEmpty()) {
            screen.println("month      days  sun, kWh/m² a day  mean high, °C  mean low, °C  wind, m/s");
            for (Month month : summary.months()) {
                screen.println(String.format(
                        Locale.ROOT,
                        "%-9s  %4d  %17.1f  %13.1f  %12.1f  %9.1f",
                        java.time.Month.of(month.month()).getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                        month.days(),
                        month.ghiKwhM2(),
                        month.maxC(),
                        month.minC(),
                        month.windMs()));
            }
            screen.println();
        }
        summary.hottestWeek()
                .ifPresent(week -> screen.println(String.format(
                        Locale.ROOT,
                        "hottest week: from %s, mean high %.1f °C, sun %.1f kWh/m² a day",
                        DAY.format(week.firstDay()),
                        week.maxC(),
                        week.ghiKwhM2())));
    }
}
