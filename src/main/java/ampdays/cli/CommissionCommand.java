package ampdays.cli;

import ampdays.commission.Conditions;
import ampdays.commission.Judge;
import ampdays.commission.Judgement;
import ampdays.commission.Outcome;
import ampdays.commission.Sheet;
import ampdays.commission.Sunlight;
import ampdays.commission.bench.SheetMaker;
import ampdays.io.InputException;
import ampdays.io.ScenarioReader;
import ampdays.io.SheetJson;
import ampdays.io.SheetReader;
import ampdays.report.page.Paper;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
            description =
                    "Light in the plane of the panels, such as \"800 W/m²\"; or of a level meter or a forecast, with"
                            + " --at: \"850 W/m² horizontal\".")
    private String sun;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "When the panels are read, by the clock of the place, such as \"2026-07-14 13:00\": for the"
                    + " sun's height. Without --sun a sky without a cloud is supposed (guess); with neither the panels are"
                    + " left out.")
    private String at;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the sheet to type into, to print and for programs, or with --read for the"
                    + " judgement; never over files that are there.")
    private Path out;

    @Option(names = "--paper", paramLabel = "A4|letter", description = "Size of the printed sheets; A4, if not said.")
    private String paper;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

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
        Paper size = paper();
        if (out != null) {
            UsageException.ifAnyExists(out, CommissionFiles.SHEET);
        }
        ScenarioFile scenario = ScenarioReader.read(file);
        String name = option == null ? ScenarioFile.BASE_NAME : option;
        Sheet sheet = sheet(scenario, name, told);
        PrintWriter screen = spec.commandLine().getOut();
        if (out != null) {
            CommissionFiles.writeSheet(out, sheet, size);
        }
        if (json) {
            SheetJson.write(screen, sheet);
            screen.flush();
            return Exit.DONE;
        }
        new CommissionScreen(screen).sheet(sheet);
        if (out == null) {
            screen.println("--out DIR writes this to print (sheet.pdf, sheet.html), to type into (sheet.csv), and for"
                    + " programs (sheet.json).");
        } else {
            Path csv = out.resolve("sheet.csv");
            screen.println(
                    "Wrote " + csv + " to type into, sheet.pdf and sheet.html to print, sheet.json for programs.");
            screen.println("Then: ampdays commission " + file + " --read " + csv);
        }
        screen.flush();
        return Exit.DONE;
    }

    private int judge() throws IOException, InputException, UsageException {
        if (option != null
                || ambient != null
                || underBonnet != null
                || soc != null
                || sun != null
                || at != null
                || paper != null) {
            throw new UsageException("--read takes option and conditions from the sheet. Leave other options than --out"
                    + " and --json out.");
        }
        if (out != null) {
            UsageException.ifAnyExists(out, CommissionFiles.JUDGEMENT);
        }
        SheetReader reader = SheetReader.open(read);
        Conditions told = reader.conditions();
        Sheet sheet = sheet(ScenarioReader.read(file), reader.option(), told);
        Map<String, Double> readings = reader.readings(sheet);
        List<Judgement> judgements = Judge.of(sheet, readings);
        PrintWriter screen = spec.commandLine().getOut();
        if (out != null) {
            CommissionFiles.writeJudgement(out, sheet, judgements);
        }
        if (json) {
            SheetJson.write(screen, sheet, judgements);
        } else {
            new CommissionScreen(screen).judged(sheet, judgements);
            if (out != null) {
                screen.println("Wrote " + out.resolve("judgement.csv") + " and judgement.json.");
            }
        }
        screen.flush();
        return judgements.stream().anyMatch(j -> j.outcome() == Outcome.STOP) ? Exit.TARGET_NOT_MET : Exit.DONE;
    }

    private Sheet sheet(ScenarioFile scenario, String option, Conditions told) throws UsageException {
        Values values = scenario.values(option)
                .orElseThrow(() -> UsageException.unknownOption(option, file, scenario.scenario()));
        try {
            return SheetMaker.sheet(scenario.scenario().title(), option, values, told);
        } catch (ScenarioException e) {
            throw new UsageException("No sheet can be made: " + e.getMessage());
        }
    }

    private Conditions told() throws UsageException {
        double ambientC = quantity("--ambient", ambient, Dimension.TEMPERATURE);
        double underBonnetC = quantity("--under-bonnet", underBonnet, Dimension.TEMPERATURE);
        double socShare = quantity("--soc", soc, Dimension.SHARE);
        within("--ambient", ambient, ambientC, Dimension.TEMPERATURE, Conditions.LEAST_C, Conditions.MOST_AMBIENT_C);
        within(
                "--under-bonnet",
                underBonnet,
                underBonnetC,
                Dimension.TEMPERATURE,
                Conditions.LEAST_C,
                Conditions.MOST_UNDER_BONNET_C);
        within("--soc", soc, socShare, Dimension.SHARE, 0, 1);
        Sunlight light = light();
        try {
            return new Conditions(ambientC, underBonnetC, socShare, light);
        } catch (IllegalArgumentException e) {
            throw new UsageException("--under-bonnet \"" + underBonnet + "\": " + e.getMessage() + ".");
        }
    }

    private Sunlight light() throws UsageException {
        try {
            return Sunlight.parse(Optional.ofNullable(sun), Optional.ofNullable(at));
        } catch (QuantityException e) {
            throw new UsageException("--" + e.getMessage());
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

    private Paper paper() throws UsageException {
        String written = paper == null ? Paper.A4.word() : paper;
        return Paper.of(written.strip())
                .orElseThrow(
                        () -> new UsageException("--paper \"" + written + "\" is not one of its choices: A4, letter."));
    }
}
