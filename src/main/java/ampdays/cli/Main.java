package ampdays.cli;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** Entry point of the command line. */
@Command(
        name = "ampdays",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
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
    private static final Map<String, Class<?>> COMMANDS = commands();

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "On an internal error, print where in the program it happened.")
    private boolean trace;

    private Main() {}

    /** The commands, in the order of a designer's work. */
    private static Map<String, Class<?>> commands() {
        Map<String, Class<?>> commands = new LinkedHashMap<>();
        commands.put("new", NewCommand.class);
        commands.put("check", CheckCommand.class);
        commands.put("run", RunCommand.class);
        commands.put("compare", CompareCommand.class);
        commands.put("sweep", SweepCommand.class);
        commands.put("size", SizeCommand.class);
        commands.put("chances", ChancesCommand.class);
        commands.put("matters", MattersCommand.class);
        commands.put("failures", FailuresCommand.class);
        commands.put("wiring", WiringCommand.class);
        commands.put("proposal", ProposalCommand.class);
        commands.put("audit", AuditCommand.class);
        commands.put("commission", CommissionCommand.class);
        commands.put("reconcile", ReconcileCommand.class);
        commands.put("weather", WeatherCommand.class);
        commands.put("presets", PresetsCommand.class);
        return commands;
    }

    public static void main(String[] args) {
        ReadAhead.begin(args);
        System.exit(run(writer(new Screen()), writer(System.err), args));
    }

    private static PrintWriter writer(OutputStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        Main main = new Main();
        int code = register(new CommandLine(main), args)
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((problem, line, parsed) -> Exit.of(problem, main.trace, line.getErr()))
                .setParameterExceptionHandler(Exit::ofParameters)
                .execute(args);
        return out.checkError() ? Exit.ofLostScreen(err) : code;
    }

    /** Registers the commands that are named in the line, since looking into all of them takes time; or all, if none is. */
    private static CommandLine register(CommandLine line, String... args) {
        Set<String> named = new HashSet<>(List.of(args));
        boolean all = Collections.disjoint(COMMANDS.keySet(), named);
        COMMANDS.forEach((name, command) -> {
            if (all || named.contains(name)) {
                line.addSubcommand(name, command);
            }
        });
        return line;
    }

    /** Name and version of the program, read from the jar. */
    static String version() {
        String version = Main.class.getPackage().getImplementationVersion();
        return "ampdays " + (version == null ? "(not packaged)" : version);
    }

    /** Tells the version. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {version()};
        }
    }
}
