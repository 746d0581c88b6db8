package ampdays.cli;

import ampdays.io.InputException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Validates scenarios without running them. */
@Command(
        mixinStandardHelpOptions = true,
        description = "Check scenario files and the weather files they name, without running them.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Scenario files.")
    private List<Path> files;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        int code = Exit.DONE;
        for (Path file : files) {
            try {
                Loaded loaded = Loaded.read(file);
                loaded.requireCoverage();
                int options = loaded.scenario().variants().size();
                out.println(file + ": good; " + (options == 1 ? "one design" : options + " options") + ", "
                        + loaded.scenario().variants().get(0).trip().days() + " days.");
                loaded.remarks().forEach(remark -> out.println("  " + remark));
            } catch (InputException | IOException e) {
                code = Math.max(code, Exit.of(e, false, err));
            }
        }
        return code;
    }
}
