package ampdays.scenario;

import java.util.List;
import java.util.Optional;

/**
 * One talk with a client: the base design and its options.
 *
 * @param name short name, from the file's name; names the folder of its results
 * @param title one line
 * @param notes free text, may be empty
 * @param variants the base design first
 */
public record Scenario(String name, String title, String notes, List<Variant> variants) {
    public Scenario {
        variants = List.copyOf(variants);
        if (variants.isEmpty()) {
            throw new IllegalArgumentException("a scenario has at least its base design");
        }
    }

    public Optional<Variant> variant(String wanted) {
        return variants.stream().filter(v -> v.name().equals(wanted)).findFirst();
    }
}
