package ampdays.cli;

import ampdays.io.StarterScenario;
import ampdays.results.WholeFile;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a commented starter scenario. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Write a commented starter scenario to edit. Never overwrites a file.")
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The scenario to write, such as my-van.yaml.")
    private Path file;

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "Weather file that it shall name; without it, the low-desert profile that comes along.")
    private Path weather;

    @Override
    public Integer call() throws Exception {
        UsageException.ifExists(file);
        Path named = weather == null ? home().resolve("weather-profiles/low-desert-summer.csv") : weather;
        Path folder = file.toAbsolutePath().normalize().getParent();
        String relative = folder.relativize(named.toAbsolutePath().normalize()).toString();
        byte[] text = StarterScenario.text(relative.replace('\\', '/')).getBytes(StandardCharsets.UTF_8);
        WholeFile.write(file, out -> out.write(text));
        spec.commandLine()
                .getOut()
                .println("Wrote " + file + ". Edit it, then: ampdays check " + file + " and ampdays compare " + file);
        return Exit.DONE;
    }

    /** The folder that the program was started from: the jar lies in its folder target. */
    private static Path home() throws URISyntaxException {
        Path jar = Path.of(
                Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        return jar.getParent().getParent();
    }
}
