package ampdays.audit;

import java.util.List;

/**
 * What an appliance draws, or several that were only ever on together.
 *
 * @param names of the appliances; {@link #BASE} stands for what was never switched
 * @param known whether the readings tell it; if not, the amounts are NaN
 * @param amps out of the bank, A
 * @param plusMinusA the true draw lies within this of it with 95 % probability, A
 * @param surgeA highest current at the start, A; NaN when not read
 * @param lines of the readings for which it was switched on
 */
public record Draw(
        List<String> names, boolean known, double amps, double plusMinusA, double surgeA, List<Integer> lines) {
    /** What draws with everything switched off. */
    public static final String BASE = "base draw";

    public Draw {
        names = List.copyOf(names);
        lines = List.copyOf(lines);
    }

    /** The names in one phrase. */
    public String label() {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    public boolean isBase() {
        return names.contains(BASE);
    }

    /** Whether it stands for one appliance or for the base alone. */
    public boolean isSingle() {
        return names.size() == 1;
    }

    /** Below zero by more than its uncertainty. */
    public boolean isImpossible() {
        return known && amps + plusMinusA < 0;
    }

    /** Whether nothing can be seen of it. */
    public boolean isUnseen() {
        return known && Math.abs(amps) <= plusMinusA;
    }
}
