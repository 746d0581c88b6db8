package ampdays.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs commands as the launcher does, and keeps what they say. */
abstract class CommandRun {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    final int run(String... args) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), args);
    }
}
