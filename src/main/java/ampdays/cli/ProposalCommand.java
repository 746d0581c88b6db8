package ampdays.cli;

import ampdays.report.page.Paper;
import ampdays.units.UnitSystem;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what a client is handed. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Simulate every option of a scenario and write the client's proposal, as one HTML page that needs"
                + " nothing beside it and as a PDF.")
final class ProposalCommand implements Callable<Integer> {
    private static final int LEAST_SAMPLES = 10;
    private static final int LONGEST_REFERENCE = 300;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario.")
    private Path file;

    @Option(names = "--brief", description = "Only the page for the client, and the cautions.")
    private boolean brief;

    @Option(names = "--for", paramLabel = "LINE", description = "For whom it is: a line that is printed at its head.")
    private String reference = "";

    @Option(
            names = "--shop",
            paramLabel = "FILE",
            description = "Who offers it: a YAML file with name, contact, logo, prices, tax, validity; see"
                    + " docs/PROPOSAL.md.")
    private Path shop;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "The date to print; without it none is printed.")
    private String date;

    @Option(names = "--units", paramLabel = "us|metric|both", description = "Units of the document; both, if not said.")
    private String units = "both";

    @Option(names = "--paper", paramLabel = "A4|letter", description = "Size of the sheets; A4, if not said.")
    private String paper = "A4";

    @Option(
            names = "--samples",
            paramLabel = "N",
            description =
                    "Trips of each option that its chances are told by, as the command chances does; 32 without it,"
                            + " 0 to leave them out.")
    private int samples = 32;

    @Option(
            names = "--in-depth",
            description =
                    "Also find out which figures move the answer most, as the command matters does; takes longer.")
    private boolean inDepth;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the result; without it, a folder in out/ named after the scenario.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        Draws.checkCountOrNone("--samples", samples, LEAST_SAMPLES, "to leave them out");
        ProposalWork work = new ProposalWork(
                file,
                brief,
                reference(),
                Optional.ofNullable(shop),
                date(),
                units(),
                paper(),
                samples,
                inDepth,
                Main.version());
        work.write(
                Optional.ofNullable(out),
                spec.commandLine().getOut(),
                spec.commandLine().getErr());
        return Exit.DONE;
    }

    private String reference() throws UsageException {
        String line = reference.strip();
        if (line.length() > LONGEST_REFERENCE || line.lines().count() > 1) {
            throw new UsageException("--for has " + line.length() + " letters in "
                    + line.lines().count() + " lines; it is one line of at most " + LONGEST_REFERENCE + " letters.");
        }
        return line;
    }

    private Optional<LocalDate> date() throws UsageException {
        try {
            return date == null ? Optional.empty() : Optional.of(LocalDate.parse(date.strip()));
        } catch (DateTimeException e) {
            throw new UsageException("--date \"" + date + "\" is not a date. Write it like: --date 2026-03-31.");
        }
    }

    private UnitSystem units() throws UsageException {
        return Arrays.stream(UnitSystem.values())
                .filter(system -> system.word().equals(units.strip()))
                .findFirst()
                .orElseThrow(() ->
                        new UsageException("--units \"" + units + "\" is not one of its choices: us, metric, both."));
    }

    private Paper paper() throws UsageException {
        return Paper.of(paper.strip())
                .orElseThrow(
                        () -> new UsageException("--paper \"" + paper + "\" is not one of its choices: A4, letter."));
    }
}
