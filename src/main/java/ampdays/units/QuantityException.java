package ampdays.units;

/** A text that is not the quantity wanted; the message is a predicate such as {@code "400" has no unit. Write 400 Ah.} */
public final class QuantityException extends Exception {
    private static final long serialVersionUID = 1L;

    public QuantityException(String message) {
        super(message);
    }
}
