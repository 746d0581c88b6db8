package ampdays.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
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

    /** An uncertainty that begins with less than this is shown with two digits, else with one; from memory. */
    private static final double MOST_WITH_TWO_DIGITS = 3.55;

    public Draw {
        names = List.copyOf(names);
        lines = List.copyOf(lines);
    }

    /** The names in one phrase. */
    public String label() {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** The draw to the digits that its uncertainty allows: two of its own at most (JCGM 100:2008, 7.2.6). */
    public String ampsText() {
        return known ? rounded(amps) + " A" : "not known";
    }

    /** The uncertainty, to the same digits. */
    public String plusMinusText() {
        return known ? "± " + rounded(plusMinusA) + " A" : "";
    }

    private String rounded(double value) {
        int place = (int) Math.floor(Math.log10(plusMinusA));
        boolean twoDigits = plusMinusA < MOST_WITH_TWO_DIGITS * Math.pow(10, place);
        int decimals = Math.min(3, Math.max(0, (twoDigits ? 1 : 0) - place));
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
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
