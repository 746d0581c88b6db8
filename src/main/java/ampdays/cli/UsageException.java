package ampdays.cli;

import ampdays.scenario.Scenario;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** A wrong word on the command line that only shows once the input is read, with what would be right. */
final class UsageException extends Exception {
    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }

    /** An option that the scenario does not have. */
    static UsageException unknownOption(String option, Path file, Scenario scenario) {
        return new UsageException("There is no option \"" + option + "\" in " + file + ". Its options: "
                + scenario.variants().stream().map(v -> "\"" + v.name() + "\"").collect(Collectors.joining(", "))
                + ".");
    }

    /** Refuses to overwrite files in a folder. */
    static void ifAnyExists(Path folder, List<String> names) throws UsageException {
        for (String name : names) {
            ifExists(folder.resolve(name));
        }
    }

    /** Refuses a file that has the place of a result. */
    static void ifAmong(Path file, Path folder, List<String> names) throws UsageException {
        for (String name : names) {
            if (folder.resolve(name)
                    .toAbsolutePath()
                    .normalize()
                    .equals(file.toAbsolutePath().normalize())) {
                throw new UsageException(file + " is the place of one of the results. Choose another name.");
            }
        }
    }

    /** Refuses to overwrite. */
    static void ifExists(Path file) throws UsageException {
        if (Files.exists(file)) {
            throw new UsageException(file + " exists already. Choose another name, or delete it first.");
        }
    }
}
