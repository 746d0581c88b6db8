package ampdays.cli;

import ampdays.commission.Conditions;
import ampdays.commission.Judge;
import ampdays.commission.Judgement;
import ampdays.commission.Outcome;
import ampdays.commission.Sheet;
import ampdays.commission.bench.SheetMaker;
import ampdays.io.InputException;
import ampdays.io.ScenarioReader;
import ampdays.io.SheetCsv;
import ampdays.io.SheetHtml;
import ampdays.io.SheetReader;
import ampdays.results.WholeFile;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the commissioning sheet of a van for a day, or judges one that was filled in. */
@Command(
        mixinStandardHelpOptions = true,
        description =
                "Say what meters should read on this van today, step by step, with bands to pass, to investigate and"
                        + " to stop; or judge the readings (--read).")
final class CommissionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(names = "--option", paramLabel = "NAME", description = "The option, by its name in the scenario.")
    private String option;

    @Option(names = "--ambient", paramLabel = "TEMP", description = "Air in the shade, such as \"34 °C\" or \"93 °F\".")
    private String ambient;

    @Option(
            names = "--under-bonnet",
            paramLabel = "TEMP",
            description = "Air around the alternators, bonnet closed, engine warm, such as \"60 °C\".")
    private String underBonnet;

    @Option(names = "--soc", paramLabel = "SHARE", description = "State of charge of the bank, such as \"60 %%\".")
    private String soc;

    @Option(
            names = "--sun",
            paramLabel = "LIGHT",
            description = "Light in the plane of the panels, such as \"800 W/m²\"; without it the panels are left out.")
    private String sun;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for sheet.csv and sheet.html; never over a sheet that is there.")
    private Path out;

    @Option(
            names = "--read",
            paramLabel = "SHEET",
            description = "Judge a filled sheet; its heading tells option and conditions.")
    private Path read;

    @Override
    public Integer call() throws IOException, InputException, UsageException {
        return read == null ? make() : judge();
    }

    private int make() throws IOException, InputException, UsageException {
        Conditions told = told();
        if (out != null) {
            UsageException.ifExists(out.resolve("sheet.csv"));
            UsageException.ifExists(out.resolve("sheet.html"));
        }
        ScenarioFile scenario = ScenarioReader.read(file);
        String name = option == null ? ScenarioFile.BASE_NAME : option;
        Sheet sheet = sheet(scenario, name, told);
        PrintWriter screen = spec.commandLine().getOut();
        if (out != null) {
            write(out.resolve("sheet.csv"), SheetCsv.text(sheet));
            write(out.resolve("sheet.html"), SheetHtml.text(sheet));
        }
        CommissionScreen shown = new CommissionScreen(screen);
        shown.sheet(sheet);
        if (out == null) {
            screen.println("--out DIR writes this as sheet.csv, to type into, and as sheet.html, to print.");
        } else {
            screen.println("Wrote " + out.resolve("sheet.csv") + " to type into, and " + out.resolve("sheet.html")
                    + " to print.");
            screen.println("Then: ampdays commission " + file + " --read " + out.resolve("sheet.csv"));
        }
        screen.flush();
        return Exit.DONE;
    }

    private int judge() throws IOException, InputException, UsageException {
        if (option != null || ambient != null || underBonnet != null || soc != null || sun != null || out != null) {
            throw new UsageException(
                    "--read takes option and conditions from the sheet and writes nothing. Leave the other options out.");
        }
        SheetReader reader = SheetReader.open(read);
        Conditions told = reader.conditions();
        Sheet sheet = sheet(ScenarioReader.read(file), reader.option(), told);
        Map<String, Double> readings = reader.readings(sheet);
        List<Judgement> judgements = Judge.of(sheet, readings);
        new CommissionScreen(spec.commandLine().getOut()).judged(sheet, judgements);
        return judgements.stream().anyMatch(j -> j.outcome() == Outcome.STOP) ? Exit.TARGET_NOT_MET : Exit.DONE;
    }

    private static Sheet sheet(ScenarioFile scenario, String option, Conditions told) throws UsageException {
        Values values = scenario.values(option).orElseThrow(() -> unknown(scenario, option));
        try {
            return SheetMaker.sheet(scenario.scenario().title(), option, values, told);
        } catch (ScenarioException e) {
            throw new UsageException("No sheet can be made: " + e.getMessage());
        }
    }

    private static UsageException unknown(ScenarioFile scenario, String option) {
        return new UsageException("There is no option \"" + option + "\". Options: "
                + String.join(
                        "; ",
                        scenario.scenario().variants().stream()
                                .map(v -> v.name())
                                .toList())
                + ".");
    }

    private Conditions told() throws UsageException {
        double ambientC = quantity("--ambient", ambient, Dimension.TEMPERATURE);
        double underBonnetC = quantity("--under-bonnet", underBonnet, Dimension.TEMPERATURE);
        double socShare = quantity("--soc", soc, Dimension.SHARE);
        double sunWm2 = sun == null ? Double.NaN : quantity("--sun", sun, Dimension.IRRADIANCE);
        within("--ambient", ambient, ambientC, Dimension.TEMPERATURE, Conditions.LEAST_C, Conditions.MOST_AMBIENT_C);
        within(
                "--under-bonnet",
                underBonnet,
                underBonnetC,
                Dimension.TEMPERATURE,
                Conditions.LEAST_C,
                Conditions.MOST_UNDER_BONNET_C);
        within("--soc", soc, socShare, Dimension.SHARE, 0, 1);
        if (sun != null) {
            within("--sun", sun, sunWm2, Dimension.IRRADIANCE, 0, Conditions.MOST_SUN_WM2);
        }
        try {
            return new Conditions(ambientC, underBonnetC, socShare, sunWm2);
        } catch (IllegalArgumentException e) {
            throw new UsageException("--under-bonnet \"" + underBonnet + "\": " + e.getMessage() + ".");
        }
    }

    private static double quantity(String name, String text, Dimension dimension) throws UsageException {
        if (text == null) {
            throw new UsageException("The sheet is made for a day: " + name + " is missing. Write it like: --ambient"
                    + " \"34 °C\" --under-bonnet \"60 °C\" --soc \"60 %\" --sun \"800 W/m²\".");
        }
        try {
            // as the sheet's heading says it, so that what is read back is the same day
            double told = Quantity.parse(text, dimension).value();
            return Quantity.parse(dimension.show(told), dimension).value();
        } catch (QuantityException e) {
            throw new UsageException(name + " " + e.getMessage());
        }
    }

    private static void within(String name, String text, double value, Dimension dimension, double low, double high)
            throws UsageException {
        if (!(value >= low && value <= high)) {
            throw new UsageException(name + " \"" + text + "\" is out of range. It must lie from " + dimension.show(low)
                    + " to " + dimension.show(high) + ".");
        }
    }

    private static void write(Path target, String text) throws IOException {
        WholeFile.write(target, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
