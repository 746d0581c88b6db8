package ampdays.results;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file whole or not at all: first under a temporary name in the same folder, then renamed in one step. Until
 * then the file that was there before stays as it was.
 */
public final class WholeFile {
    private WholeFile() {}

    /** What goes into the file. */
    @FunctionalInterface
    public interface Body {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Makes missing folders, then the file; on failure nothing half-written remains and the message says why. */
    public static void write(Path file, Body body) throws IOException {
        Path target = file.toAbsolutePath();
        Path temporary = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
        try {
            Files.createDirectories(target.getParent());
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(temporary), 1 << 16)) {
                body.writeTo(out);
            }
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw failure(file, e);
        } finally {
            deleteQuietly(temporary);
        }
    }

    /** What goes into a text file. */
    @FunctionalInterface
    public interface TextBody {
        void writeTo(Writer out) throws IOException;
    }

    /** The same for a text, in UTF-8. */
    public static void writeText(Path file, TextBody body) throws IOException {
        write(file, out -> {
            Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            body.writeTo(text);
            text.flush();
        });
    }

    /** The same for a text that is there already. */
    public static void writeText(Path file, String text) throws IOException {
        writeText(file, out -> out.write(text));
    }

    /** What to say of a file that could not be written. */
    public static IOException failure(Path file, IOException e) {
        return new IOException("Cannot write " + file + ": " + reason(e) + ".", e);
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission";
        }
        if (e instanceof FileAlreadyExistsException exists) {
            return exists.getFile() + " is a file, not a folder";
        }
        if (e instanceof FileSystemException system) {
            return system.getReason() != null ? system.getReason() : "nothing can be made at " + system.getFile();
        }
        return e.getMessage() == null ? "the disk refused it" : e.getMessage();
    }

    /** Nothing is left to delete after success; after a failure the first message is the one that counts. */
    private static void deleteQuietly(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException ignored) {
            temporary.toFile().deleteOnExit();
        }
    }
}
