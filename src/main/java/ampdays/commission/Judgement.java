package ampdays.commission;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a reading says.
 *
 * @param band that it was judged by: that of the sheet, or in proportion to the current that was read
 * @param causes likely ones in the order to look at them; empty when it passes
 * @param next the reading that tells the first two causes apart, or shows the only one; empty when it passes
 */
public record Judgement(Item item, double reading, Band band, Outcome outcome, List<Suspect> causes, String next) {
    /** What other readings of the sheet say of a cause. */
    public enum Support {
        /** Another reading deviates that deviates with it. */
        FOR,
        UNTOLD,
        /** A reading passes that would deviate with it. */
        AGAINST
    }

    /** A cause with what speaks for or against it. */
    public record Suspect(Cause cause, Support support) {}

    public Judgement {
        causes = List.copyOf(causes);
    }

    /** Lines of a sheet that no judgement is of. */
    public static Stream<Item> notRead(Sheet sheet, List<Judgement> judgements) {
        Set<String> read = judgements.stream().map(j -> j.item().id()).collect(Collectors.toSet());
        return sheet.items().filter(item -> !read.contains(item.id()));
    }
}
