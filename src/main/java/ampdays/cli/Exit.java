package ampdays.cli;

import ampdays.io.InputException;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Turns whatever went wrong into one message and an exit code. */
final class Exit {
    static final int DONE = 0;
    static final int INTERNAL_ERROR = 1;
    static final int WRONG_INPUT = 2;
    static final int TARGET_NOT_MET = 3;
    static final int FILE_TROUBLE = 4;

    private Exit() {}

    static int of(Exception problem, boolean trace, PrintWriter err) {
        if (problem instanceof InputException || problem instanceof UsageException) {
            err.println(problem.getMessage());
            return WRONG_INPUT;
        }
        if (problem instanceof IOException trouble) {
            err.println(plain(trouble));
            return FILE_TROUBLE;
        }
        err.println("Internal error: " + problem + ". This is a fault of the program, not of your input;"
                + " please report it with the scenario. --trace prints where it happened.");
        if (trace) {
            StackTraceElement[] places = problem.getStackTrace();
            for (StackTraceElement place : places) {
                err.println("  at " + place);
            }
        }
        return INTERNAL_ERROR;
    }

    /** For text on standard output that did not arrive. */
    static int ofLostScreen(PrintWriter err) {
        err.println("Not all could be written to standard output. Is the disk full?");
        return FILE_TROUBLE;
    }

    private static String plain(IOException trouble) {
        if (trouble instanceof NoSuchFileException missing) {
            return missing.getFile() + ": there is no such file. Check the path.";
        }
        if (trouble instanceof AccessDeniedException denied) {
            return denied.getFile() + ": access denied. Check the permissions.";
        }
        if (trouble instanceof FileSystemException system && system.getReason() != null) {
            return system.getFile() + ": " + system.getReason() + ".";
        }
        if (trouble instanceof FileNotFoundException) {
            return trouble.getMessage();
        }
        return trouble.getMessage() == null ? trouble.toString() : trouble.getMessage();
    }

    static int ofParameters(CommandLine.ParameterException problem, String[] args) {
        CommandLine command = problem.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(message(problem));
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(problem, err)) {
            err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        }
        return WRONG_INPUT;
    }

    private static String message(CommandLine.ParameterException problem) {
        return problem.getArgSpec() instanceof OptionSpec flag && flag.type() == boolean.class
                ? flag.longestName() + " takes no value, but " + problem.getValue() + " stands behind it."
                : problem.getMessage();
    }
}
