package ampdays.study;

import ampdays.results.Causes;
import ampdays.results.Causes.Remedy;
import ampdays.results.Causes.Share;
import ampdays.results.RunResult;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Causes and remedies in plain words. */
public final class WhyText {
    private static final int MOST_FURTHER = 3;

    private WhyText() {}

    /** Where the draw of an option comes from. */
    public static String causes(String option, Causes causes) {
        int[] percents =
                percents(causes.shares().stream().mapToDouble(Share::share).toArray());
        StringJoiner parts = new StringJoiner(", ");
        for (int i = 0; i < percents.length; i++) {
            if (percents[i] != 0) {
                parts.add(causes.shares().get(i).cause() + " " + percents[i] + " %");
            }
        }
        return String.format(
                Locale.ROOT,
                "Why \"%s\" does not hold: at worst the trip draws %.1f kWh, and the bank gives %.1f kWh down to the"
                        + " reserve. Of what it draws: %s.",
                option,
                causes.drawWh() / 1000,
                causes.usableWh() / 1000,
                parts);
    }

    /**
     * Shares as whole percents that add up to 100: each rounded down, and what is missing given to those with the largest
     * remainders, at a tie to the one named first.
     *
     * @param shares that add up to one
     */
    static int[] percents(double[] shares) {
        int[] percents = new int[shares.length];
        int missing = 100;
        for (int i = 0; i < shares.length; i++) {
            percents[i] = (int) Math.floor(100 * shares[i]);
            missing -= percents[i];
        }
        List<Integer> byRemainder = IntStream.range(0, shares.length)
                .boxed()
                .sorted((a, b) -> Double.compare(
                        100 * shares[b] - Math.floor(100 * shares[b]), 100 * shares[a] - Math.floor(100 * shares[a])))
                .toList();
        for (int i = 0; i < missing; i++) {
            percents[byRemainder.get(i)]++;
        }
        return percents;
    }

    /** The cheapest single change that turns the design, with others; or what comes nearest. */
    public static String remedies(Causes causes) {
        List<Remedy> turning = causes.remedies().stream().filter(Remedy::turns).toList();
        if (turning.isEmpty()) {
            return causes.remedies().stream()
                    .findFirst()
                    .map(best -> "No single change that was tried turns it. Nearest comes " + best.change()
                            + ": the van " + fate(best.result()) + ".")
                    .orElse("There is no single change to try.");
        }
        Remedy cheapest = turning.get(0);
        String text = "Cheapest single change that turns it: " + cheapest.change() + ", " + price(cheapest) + ", "
                + Verdict.nights(cheapest.result()) + ".";
        if (turning.size() > 1) {
            text += " Dearer: "
                    + turning.stream()
                            .skip(1)
                            .limit(MOST_FURTHER)
                            .map(remedy -> remedy.change() + ", " + price(remedy))
                            .collect(Collectors.joining("; "))
                    + ".";
        }
        return text;
    }

    private static String fate(RunResult r) {
        return r.holds() ? "holds, but " + Verdict.nights(r) : Verdict.fate(r);
    }

    private static String price(Remedy remedy) {
        return remedy.priceFrom().isEmpty()
                ? "which takes no money"
                : String.format(
                        Locale.ROOT,
                        "%,.0f %s%s (%s)",
                        remedy.price(),
                        remedy.currency(),
                        remedy.perTrip() ? " for this trip" : "",
                        remedy.priceFrom());
    }
}
