package ampdays.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/** A wrong word on the command line that only shows once the input is read, with what would be right. */
final class UsageException extends Exception {
    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }

    /** Refuses to overwrite. */
    static void ifExists(Path file) throws UsageException {
        if (Files.exists(file)) {
            throw new UsageException(file + " exists already. Choose another name, or delete it first.");
        }
    }
}
