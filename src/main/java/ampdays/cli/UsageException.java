package ampdays.cli;

/** A wrong word on the command line that only shows once the input is read, with what would be right. */
final class UsageException extends Exception {
    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }
}
