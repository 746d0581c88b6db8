package ampdays.cli;

import ampdays.io.InputException;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;

/** Reads the scenario that a command line names on a second core, if there is one, while this one parses the line. */
final class ReadAhead {
    private static final Map<Path, FutureTask<Loaded>> BEGUN = new ConcurrentHashMap<>();

    private ReadAhead() {}

    /** Begins with the first word that looks like a scenario; what is wrong with it is told by who asks for it. */
    static void begin(String... words) {
        Stream.of(words)
                .filter(word -> word.endsWith(".yaml"))
                .findFirst()
                .flatMap(ReadAhead::path)
                .ifPresent(path -> {
                    FutureTask<Loaded> reading = new FutureTask<>(() -> Loaded.readNow(path));
                    BEGUN.put(path, reading);
                    Thread thread = new Thread(reading, "read ahead");
                    thread.setDaemon(true);
                    thread.start();
                });
    }

    private static Optional<Path> path(String word) {
        try {
            return Optional.of(Path.of(word));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** What was begun for a path, once; empty when nothing was. */
    static Optional<Loaded> take(Path path) throws IOException, InputException {
        FutureTask<Loaded> reading = BEGUN.remove(path);
        if (reading == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(reading.get());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException e) {
            return rethrow(e.getCause());
        }
    }

    private static Optional<Loaded> rethrow(Throwable problem) throws IOException, InputException {
        if (problem instanceof InputException wrong) {
            throw wrong;
        }
        if (problem instanceof IOException unreadable) {
            throw unreadable;
        }
        if (problem instanceof Error error) {
            throw error;
        }
        throw (RuntimeException) problem;
    }
}
