package ampdays.cli;

import ampdays.io.CircuitsText;
import ampdays.io.WiringFiles;
import ampdays.io.WiringJson;
import ampdays.results.Finding.Severity;
import ampdays.results.WholeFile;
import ampdays.results.WiringResult;
import ampdays.scenario.CircuitOffer;
import ampdays.scenario.Scenario;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.study.Sky;
import ampdays.study.WiringCheck;
import ampdays.study.WiringCheck.Checked;
import ampdays.study.WiringFix;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks cables and protection against the simulated currents. */
@Command(
        mixinStandardHelpOptions = true,
        description =
                "Check cables, fuses and breakers of one option against the currents and the heat of its simulated"
                        + " trip; without circuits in the scenario, offer some that suit its components.",
        footer = {
            "",
            "Exit code 3 when a finding of danger stands. Not a code check; have it inspected by a licensed person."
        })
final class WiringCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(names = "--option", paramLabel = "NAME", description = "The option, by its name in the scenario.")
    private String option = ScenarioFile.BASE_NAME;

    @Option(
            names = "--fix",
            description =
                    "Also look for the smallest changes that clear all findings, and tell them as an option for the"
                            + " scenario.")
    private boolean fix;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results; without it, a folder in out/ named after the scenario.")
    private Path out;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        Loaded loaded = Loaded.read(file);
        Variant written = loaded.option(option);
        Values values = loaded.file().values(option).orElseThrow();
        Map<String, String> offer = CircuitOffer.of(values, written.design());
        boolean offered = !offer.isEmpty();
        Values checkedValues = CircuitOffer.added(values, written.design());
        Variant variant = offered ? built(checkedValues) : written;
        loaded.requireCoverage();
        Function<Variant, RunPlan> planner =
                loaded.planner(Outputs.STEP_SECONDS).under(Sky.AS_IT_IS);
        Checked checked = WiringCheck.of(planner.apply(variant), offered);
        Optional<WiringFix> mended =
                fix ? Optional.of(WiringFix.of(checkedValues, checked, offered, planner)) : Optional.empty();
        report(loaded, checked.result(), offer, mended);
        return checked.result().count(Severity.DANGER) > 0 ? Exit.TARGET_NOT_MET : Exit.DONE;
    }

    private void report(Loaded loaded, WiringResult result, Map<String, String> offer, Optional<WiringFix> mended)
            throws IOException {
        Scenario scenario = loaded.scenario();
        Path folder = out == null ? Path.of("out", scenario.name(), "wiring", Outputs.fileName(option)) : out;
        Optional<WiringJson.Mended> changes =
                mended.map(m -> new WiringJson.Mended(m.changes(), m.after().findings()));
        WiringFiles.write(folder, scenario.name(), scenario.title(), result, changes);
        if (!offer.isEmpty()) {
            WholeFile.writeText(folder.resolve("circuits.yaml"), CircuitsText.section(offer));
        }
        PrintWriter screen = spec.commandLine().getOut();
        loaded.remarks().forEach(spec.commandLine().getErr()::println);
        if (json) {
            WiringJson.write(screen, scenario.name(), scenario.title(), result, changes);
            screen.flush();
        } else {
            new WiringScreen(screen).print(scenario.title(), result, mended, folder);
        }
    }

    private Variant built(Values values) {
        try {
            return VariantBuilder.build(option, values);
        } catch (ScenarioException e) {
            throw new IllegalStateException("the circuits offered do not fit: " + e.getMessage(), e);
        }
    }
}
