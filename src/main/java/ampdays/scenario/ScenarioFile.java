package ampdays.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A scenario as read: the values of the base design and of each option, from which variants are built.
 *
 * @param name short name, from the file's name
 * @param base values of the base design
 * @param options in the order written
 */
public record ScenarioFile(String name, Values base, List<Option> options) {
    /** Name of the base design in tables and charts. */
    public static final String BASE_NAME = "as it is";

    /** A named set of changes, with the values of the base design already under it. */
    public record Option(String name, Values values) {}

    public ScenarioFile {
        options = List.copyOf(options);
    }

    /** The values of the base design or of an option by its name. */
    public Optional<Values> values(String option) {
        return option.equals(BASE_NAME)
                ? Optional.of(base)
                : options.stream()
                        .filter(o -> o.name().equals(option))
                        .map(Option::values)
                        .findFirst();
    }

    public String title() {
        String title = base.word("title");
        return title.isEmpty() ? name : title;
    }

    public String notes() {
        return base.word("notes");
    }

    /** All variants, the base design first. */
    public Scenario scenario() throws ScenarioException {
        List<Variant> variants = new ArrayList<>();
        variants.add(VariantBuilder.build(BASE_NAME, base));
        for (Option option : options) {
            variants.add(VariantBuilder.build(option.name(), option.values()));
        }
        return new Scenario(name, title(), notes(), variants);
    }
}
