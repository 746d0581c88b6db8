package ampdays.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** "Did you mean": the known word that a misspelt one resembles. */
public final class Nearest {
    private Nearest() {}

    /** The candidate with the fewest edits, if those are at most a third of the word's letters (and one for short words). */
    public static Optional<String> of(String word, Collection<String> candidates) {
        String best = null;
        int fewest = 1 + (word.length() - 1) / 3;
        for (String candidate : candidates) {
            int edits = edits(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (edits < fewest || (edits == fewest && best == null)) {
                fewest = edits;
                best = candidate;
            }
        }
        return best != null && fewest < Math.max(word.length(), best.length()) ? Optional.of(best) : Optional.empty();
    }

    /** Insertions, deletions, replacements and swaps of neighbours that turn one word into the other. */
    static int edits(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int replace = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                cost[i][j] = Math.min(replace, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], 1 + cost[i - 2][j - 2]);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
