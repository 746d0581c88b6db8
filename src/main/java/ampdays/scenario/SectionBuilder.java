package ampdays.scenario;

import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Declares the parameters of one section; ranges are in base units. */
final class SectionBuilder {
    private final String name;
    private final Section.Presence presence;
    private final String help;
    private final String prefix;
    private final List<Parameter> parameters = new ArrayList<>();
    private boolean isVan = true;

    SectionBuilder(String name, Section.Presence presence, String help) {
        this(name, presence, help, name.isEmpty() ? "" : name + ".");
    }

    /** A section whose entries carry names that the designer gives. */
    static SectionBuilder named(String name, Section.Presence presence, String help) {
        return new SectionBuilder(name, presence, help, name + ".*.");
    }

    private SectionBuilder(String name, Section.Presence presence, String help, String prefix) {
        this.name = name;
        this.presence = presence;
        this.help = help;
        this.prefix = prefix;
    }

    /** Nothing in it is a property of the van that moves a run. */
    SectionBuilder besideTheVan() {
        isVan = false;
        return this;
    }

    SectionBuilder presets(String... names) {
        return add(
                "preset",
                new Kind.Choice(List.of(names)),
                new Fallback.Absent(),
                Mark.PRACTICE,
                "A generic class that fills in what is not said here.");
    }

    SectionBuilder required(String key, Dimension dimension, double low, double high, String what) {
        return add(key, measured(dimension, low, high), new Fallback.Required(), Mark.PRACTICE, what);
    }

    SectionBuilder fixed(
            String key, Dimension dimension, double low, double high, String text, Mark mark, String what) {
        return add(key, measured(dimension, low, high), new Fallback.Fixed(text), mark, what);
    }

    SectionBuilder derived(
            String key,
            Dimension dimension,
            double low,
            double high,
            String rule,
            ToDoubleFunction<Values> from,
            Mark mark,
            String what) {
        return add(key, measured(dimension, low, high), new Fallback.Derived(rule, from), mark, what);
    }

    SectionBuilder choice(String key, List<String> words, Mark mark, String what) {
        return add(key, new Kind.Choice(words), new Fallback.Fixed(words.get(0)), mark, what);
    }

    SectionBuilder add(String key, Kind kind, Fallback fallback, Mark mark, String what) {
        parameters.add(new Parameter(prefix + key, kind, fallback, mark, what));
        return this;
    }

    static Kind measured(Dimension dimension, double low, double high) {
        return new Kind.Measured(List.of(dimension), low, high, "");
    }

    /** When a use is switched off because the bank runs low. */
    SectionBuilder shed() {
        return choice(
                        "shed",
                        List.of("last", "later", "first"),
                        Mark.PRACTICE,
                        "When the bank runs low: first below 30 %, later below 15 %, last at the bank's cut-out.")
                .add(
                        "shed-below",
                        measured(Dimension.SHARE, 0, 0.95),
                        new Fallback.Absent(),
                        Mark.PRACTICE,
                        "State of charge below which it is switched off, in place of shed.");
    }

    Section build() {
        return new Section(name, presence, isVan, help, parameters);
    }
}
