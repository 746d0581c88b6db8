package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Heading;
import ampdays.report.Block.Points;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.report.Block.Text;
import ampdays.scenario.Mark;
import ampdays.scenario.Origin;
import ampdays.scenario.Parts;
import ampdays.scenario.Presets.Preset;
import ampdays.scenario.PricedPart;
import ampdays.scenario.Registry;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.scenario.Values.Listed;
import ampdays.units.QuantityException;
import ampdays.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Every value that the figures rest on, guesses first, with where it comes from. */
final class Assumptions {
    /** How sure a mark makes one, the least first; what the scenario says without a mark stands behind the guesses. */
    private static final List<Optional<Mark>> ORDER = List.of(
            Optional.of(Mark.GUESS),
            Optional.empty(),
            Optional.of(Mark.PRACTICE),
            Optional.of(Mark.STANDARD),
            Optional.of(Mark.DATASHEET),
            Optional.of(Mark.MEASURED));

    private static final int MOST_TO_MEASURE = 8;
    private static final String PRICES = "prices.";
    private static final String MASSES = "masses.";

    /** What changes of habit cost ranks changes elsewhere; no figure here rests on it, nor on limits to look for. */
    private static final Set<String> NOT_IN_FORCE = Set.of(
            "title", "notes", "prices.currency", "prices.driving", "prices.hook-up", "prices.budget", "masses.payload");

    private final Material material;
    private final Values values;

    private Assumptions(Material material) {
        this.material = material;
        this.values = material.values(material.best());
    }

    static Part of(Material material) {
        Assumptions made = new Assumptions(material);
        return Part.of(
                "assumptions",
                "Assumptions",
                Stream.of(
                        new Text(
                                "Every figure of this document rests on the values below, those of "
                                        + Say.quoted(material.best().result().option())
                                        + ". A guess is an estimate of ours; the range is what is usual for the class of part."),
                        new Heading(material.studies().matters().isEmpty() ? "Measure this first" : "Of the guesses"),
                        Points.of(made.measureFirst()),
                        made.sheet()));
    }

    /** The guesses with their help, those of the parts that the design names first. */
    private List<String> measureFirst() {
        List<String> texts = listing().stream()
                .filter(l ->
                        mark(l).equals(Optional.of(Mark.GUESS)) && !l.path().startsWith(PRICES))
                .sorted(Comparator.comparingInt((Listed l) -> l.value().origin().equals(Origin.DEFAULT) ? 1 : 0))
                .limit(MOST_TO_MEASURE)
                .map(l -> l.path() + ", taken as " + shown(l.path(), l.value()) + ": "
                        + new Say(material.units()).sentence(help(l.path())))
                .toList();
        return texts.isEmpty() ? List.of("Nothing is marked as a guess.") : texts;
    }

    private List<Listed> listing() {
        return values.listing().stream()
                .filter(l -> !NOT_IN_FORCE.contains(l.path()))
                .filter(l -> !isUnsaidPrice(l.path())
                        || material.studies().breakEven().isPresent())
                .toList();
    }

    /** The maps of which option wins rank by it; no sum has it. */
    private boolean isUnsaidPrice(String path) {
        return path.startsWith(PRICES) && !values.isSaid(path);
    }

    private static Optional<Mark> mark(Listed listed) {
        return listed.value().mark();
    }

    private static String help(String path) {
        return Registry.parameter(path).map(p -> p.help()).orElse("");
    }

    private Sheet sheet() {
        Map<Optional<Mark>, List<Row>> byMark = new LinkedHashMap<>();
        ORDER.forEach(mark -> byMark.put(mark, new ArrayList<>()));
        for (Listed listed : listing()) {
            Value value = listed.value();
            byMark.get(mark(listed))
                    .add(Row.of(List.of(
                            listed.path(),
                            shown(listed.path(), value),
                            range(listed.path()),
                            mark(listed).map(Mark::label).orElse("as told"),
                            note(listed.path(), value))));
        }
        return new Sheet(
                "Every value in force",
                List.of(
                        Column.words("Value of"),
                        Column.words("is"),
                        Column.words("usual range"),
                        Column.words("mark"),
                        Column.words("from, note")),
                byMark.values().stream().flatMap(List::stream).toList(),
                Form.VALUES,
                List.of(
                        "“as told”: said in the scenario without a mark. The scenario’s own words are those of its file;"
                                + " the reference page lists what each key means."));
    }

    private String shown(String path, Value value) {
        String amount = path.startsWith(PRICES) ? Say.money(value.number(), Parts.currency(values)) : written(value);
        return part(path)
                .map(part -> amount + " per " + part.unit(material.units()))
                .orElse(amount);
    }

    /** The part that a price or a mass is of. */
    private static Optional<PricedPart> part(String path) {
        return path.startsWith(PRICES) || path.startsWith(MASSES)
                ? PricedPart.of(path.substring(path.indexOf('.') + 1))
                : Optional.empty();
    }

    private String written(Value value) {
        return value.dimension().isEmpty()
                ? value.text().lines().reduce((a, b) -> a + "; " + b).orElse("")
                : material.units().written(value.text(), value.dimension().get(), value.number());
    }

    /** Between what the members of the class usually lie, in the units of the document. */
    private String range(String path) {
        int dot = path.indexOf('.');
        String section = dot < 0 ? path : path.substring(0, dot);
        return material.presets()
                .find(section, values.word(section + ".preset"))
                .filter(preset -> preset.written().containsKey(path)
                        && !preset.range(path).isEmpty())
                .map(preset -> range(path, preset))
                .orElse(Say.NONE);
    }

    private String range(String path, Preset preset) {
        Value low = read(path, preset.low(path));
        Value high = read(path, preset.high(path));
        return low.dimension().isEmpty() || material.units() == UnitSystem.METRIC
                ? preset.range(path)
                : material.units().range(low.dimension().get(), low.number(), high.number(), 3);
    }

    private static Value read(String path, String text) {
        try {
            return Registry.parameter(path).orElseThrow().read(text, Origin.DEFAULT);
        } catch (QuantityException e) {
            throw new IllegalStateException(path + " " + e.getMessage(), e);
        }
    }

    private String note(String path, Value value) {
        if (isUnsaidPrice(path)) {
            return "default, only to rank options in the maps; no offer";
        }
        String origin = value.origin().toString();
        return value.note().isEmpty() ? origin : origin + "; " + inUnits(value);
    }

    /** The scenario's own words stay as they are. */
    private String inUnits(Value value) {
        return value.origin().line() > 0 ? value.note() : new Say(material.units()).sentence(value.note());
    }
}
