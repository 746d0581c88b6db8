package ampdays.cli;

import ampdays.io.NormalsReader;
import ampdays.io.PlainWeatherWriter;
import ampdays.results.WholeFile;
import ampdays.sim.SyntheticYears;
import ampdays.weather.MonthlyNormals;
import ampdays.weather.WeatherSeries;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Invents a year of weather from monthly normals. */
@Command(
        name = "make",
        mixinStandardHelpOptions = true,
        description =
                "Invent a year of hourly weather, or some days of one, from monthly normals. The same seed gives the"
                        + " same weather; another seed gives another year of the same climate.")
final class WeatherMakeCommand implements Callable<Integer> {
    private static final int YEAR_DAYS = 365;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "NORMALS",
            description = "A file of monthly normals, such as weather-profiles/low-desert-normals.csv.")
    private Path file;

    @Option(
            names = "--seed",
            paramLabel = "N",
            required = true,
            description = "A whole number that decides which year is drawn.")
    private long seed;

    @Option(
            names = "--from",
            paramLabel = "DAY",
            defaultValue = "01-01",
            description = "First day, month before day, such as 05-01. Without it, the first of January.")
    private String from;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "365",
            description = "Number of days, 1 to 365. Without it, a whole year.")
    private int days;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "The weather file to write; never overwrites one. Without it, a file in out/weather/ named after"
                            + " normals and seed.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        LocalDate first = first();
        if (days < 1 || days > YEAR_DAYS) {
            throw new UsageException("--days is " + days + "; expected is 1 to 365.");
        }
        if (out != null) {
            UsageException.ifExists(out);
        }
        MonthlyNormals normals = NormalsReader.read(file);
        WeatherSeries made = year(normals).part(24 * (first.getDayOfYear() - 1), 24 * days);
        Path target =
                out == null ? Path.of("out", "weather", WeatherCommand.name(file) + "-seed-" + seed + ".csv") : out;
        List<String> remarks = List.of(
                "Invented, not measured: drawn hour by hour from the monthly normals in " + file.getFileName(),
                "(" + normals.title() + ") with seed " + seed
                        + ". Method and limits: docs/WEATHER.md, Invented years.");
        WholeFile.write(
                target,
                stream ->
                        PlainWeatherWriter.write(stream, made, normals.title() + ", invented, seed " + seed, remarks));
        spec.commandLine()
                .getOut()
                .println("Wrote " + target + ": " + days + (days == 1 ? " day" : " days") + " of invented weather from "
                        + normals.title() + ". A scenario names it with weather:, and ampdays weather " + target
                        + " shows it.");
        return Exit.DONE;
    }

    private LocalDate first() throws UsageException {
        try {
            return MonthDay.parse("--" + from).atYear(WeatherSeries.NOMINAL_YEAR);
        } catch (DateTimeException e) {
            throw new UsageException(
                    "--from is \"" + from + "\"; expected are month and day in two digits each, such as 05-01.");
        }
    }

    private WeatherSeries year(MonthlyNormals normals) throws UsageException {
        try {
            return SyntheticYears.of(normals).year(seed);
        } catch (IllegalArgumentException e) {
            throw new UsageException(file.getFileName() + ": " + e.getMessage());
        }
    }
}
