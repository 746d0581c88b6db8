package ampdays.cli;

import ampdays.io.PresetReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** Entry point of the command line. */
@Command(
        name = "ampdays",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        subcommands = {
            NewCommand.class,
            CheckCommand.class,
            RunCommand.class,
            CompareCommand.class,
            WeatherCommand.class
        },
        header = "How many days does the house bank of a camper van last?",
        description = {
            "",
            "Steps a van's battery minute by minute against sun, timetable, cooling and alternator heat,"
                    + " and compares design options.",
            ""
        },
        footer = {
            "",
            "Start with:  ampdays new my-van.yaml   then   ampdays compare my-van.yaml",
            "",
            "Exit codes: 0 done; 1 internal error; 2 wrong command or input; 3 target not met; 4 file not readable or"
                    + " not writable.",
            "Every result is an estimate, not a code check; have the installation inspected by a licensed person."
        })
public final class Main {
    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "On an internal error, print where in the program it happened.")
    private boolean trace;

    private Main() {}

    public static void main(String[] args) {
        warmUp();
        System.exit(run(writer(System.out), writer(System.err), args));
    }

    /** Has a second core, if there is one, read the presets while this one parses the command line. */
    private static void warmUp() {
        Thread thread = new Thread(PresetReader::presets, "presets");
        thread.setDaemon(true);
        thread.start();
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        Main main = new Main();
        int code = new CommandLine(main)
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((problem, line, parsed) -> Exit.of(problem, main.trace, line.getErr()))
                .setParameterExceptionHandler(Exit::ofParameters)
                .execute(args);
        return out.checkError() ? Exit.ofLostScreen(err) : code;
    }

    /** Reads the version from the jar. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"ampdays " + (version == null ? "(not packaged)" : version)};
        }
    }
}
