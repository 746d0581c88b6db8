package ampdays.cli;

import ampdays.io.NormalsWriter;
import ampdays.io.WeatherReader;
import ampdays.results.WholeFile;
import ampdays.sim.SunFit;
import ampdays.sim.SyntheticYears;
import ampdays.weather.MonthlyNormals;
import ampdays.weather.WeatherSeries;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works out the monthly normals of a weather file. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description =
                "Work out the monthly normals of a weather file, in the form from which weather make invents years.")
final class WeatherFitCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description = "A weather file with all twelve months: EPW, TMY3 as CSV, or plain CSV.")
    private Path file;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "The file to write; never overwrites one. Without it, the normals are printed.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        if (out != null) {
            UsageException.ifExists(out);
        }
        WeatherSeries series = WeatherReader.read(file);
        MonthlyNormals normals = normals(series);
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        NormalsWriter.write(
                text,
                normals,
                List.of(
                        "Means of the months of " + file.getFileName() + ", and standard deviations of single days,",
                        "worked out by ampdays weather fit."));
        if (out == null) {
            spec.commandLine().getOut().print(text.toString(StandardCharsets.UTF_8));
            spec.commandLine().getOut().flush();
        } else {
            WholeFile.write(out, text::writeTo);
            spec.commandLine()
                    .getOut()
                    .println("Wrote " + out + ". To invent a year: ampdays weather make " + out + " --seed 1");
        }
        PrintWriter remarks = spec.commandLine().getErr();
        series.notes().forEach(note -> remarks.println("note: " + note));
        SunFit.warning(series).ifPresent(warning -> remarks.println("caution: " + warning));
        return Exit.DONE;
    }

    private static MonthlyNormals normals(WeatherSeries series) throws UsageException {
        try {
            return SyntheticYears.normalsOf(series);
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
    }
}
