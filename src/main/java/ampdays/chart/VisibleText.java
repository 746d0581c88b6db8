package ampdays.chart;

/**
 * Text of other people without what cannot be seen: control characters, and those that turn the direction of writing, so
 * that a name cannot rearrange the words around it.
 */
public final class VisibleText {
    private VisibleText() {}

    public static String of(String text) {
        return text.codePoints().allMatch(VisibleText::isVisible) ? text : filtered(text);
    }

    private static String filtered(String text) {
        return text.codePoints()
                .filter(VisibleText::isVisible)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isVisible(int c) {
        return c == '\n'
                || !switch (Character.getType(c)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.SURROGATE,
                            Character.PRIVATE_USE,
                            Character.UNASSIGNED -> true;
                    default -> false;
                };
    }
}
