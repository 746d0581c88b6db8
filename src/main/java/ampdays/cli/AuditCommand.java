package ampdays.cli;

import ampdays.audit.Audit;
import ampdays.audit.AuditedDay;
import ampdays.audit.LoadAudit;
import ampdays.audit.Readings;
import ampdays.io.AuditCsv;
import ampdays.io.AuditJson;
import ampdays.io.InputException;
import ampdays.io.LoadsSection;
import ampdays.io.ReadingsReader;
import ampdays.io.StarterReadings;
import ampdays.results.WholeFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells loads from meter readings. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Tell what each appliance draws from battery currents that were read while switching them on and"
                + " off, and write the loads for a scenario.")
final class AuditCommand implements Callable<Integer> {
    private static final List<String> TABLES = List.of("draws.csv", "hours.csv", "audit.json");

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "READINGS", arity = "0..1", description = "Readings as CSV; see docs/READINGS.md.")
    private Path file;

    @Option(
            names = "--example",
            paramLabel = "FILE",
            description = "Write a commented list of readings to begin with. Never overwrites a file.")
    private Path example;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the loads section of a scenario to this file. Never overwrites a file.")
    private Path out;

    @Option(
            names = "--tables",
            paramLabel = "DIR",
            description = "Folder for draws.csv, hours.csv and audit.json; never over files that are there.")
    private Path tables;

    @Option(names = "--json", description = "Print one JSON document, and nothing else, on standard output.")
    private boolean json;

    @Override
    public Integer call() throws IOException, InputException, UsageException {
        PrintWriter screen = spec.commandLine().getOut();
        if ((file == null) == (example == null)) {
            throw new UsageException(
                    "Name a file of readings, or write one to begin with: ampdays audit --example readings.csv");
        }
        if (example != null) {
            writeNew(example, StarterReadings.text());
            screen.println("Wrote " + example + ". Fill in your readings, then: ampdays audit " + example);
            return Exit.DONE;
        }
        if (out != null) {
            UsageException.ifExists(out);
        }
        if (tables != null) {
            UsageException.ifAnyExists(tables, TABLES);
        }
        if (out != null && tables != null) {
            UsageException.ifAmong(out, tables, TABLES);
        }
        Readings readings = ReadingsReader.read(file);
        Audit audit = LoadAudit.of(readings);
        AuditedDay day = AuditedDay.of(readings, audit);
        String section = LoadsSection.text(readings, audit);
        if (tables != null) {
            StringWriter document = new StringWriter();
            AuditJson.write(document, readings, audit, day);
            writeNew(tables.resolve("draws.csv"), AuditCsv.draws(readings, audit));
            writeNew(tables.resolve("hours.csv"), AuditCsv.hours(readings, day));
            writeNew(tables.resolve("audit.json"), document.toString());
        }
        if (out != null) {
            writeNew(out, section);
        }
        if (json) {
            AuditJson.write(screen, readings, audit, day);
            screen.flush();
            return Exit.DONE;
        }
        new AuditScreen(screen, readings, audit, day).print();
        if (tables != null) {
            screen.println("Wrote " + tables.resolve("draws.csv") + ", hours.csv and audit.json.");
        }
        if (out == null) {
            screen.println("For a scenario (--out FILE writes this to a file):");
            screen.println();
            screen.print(section);
        } else {
            screen.println("Wrote " + out + ". A scenario beside it takes it in with: use: " + out.getFileName());
        }
        return Exit.DONE;
    }

    private static void writeNew(Path target, String text) throws IOException, UsageException {
        UsageException.ifExists(target);
        WholeFile.writeText(target, text);
    }
}
