package ampdays.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The designs of a study, by row: every combination of the values of its knobs, the last knob changing fastest; or, when
 * its knobs vary together, the first value of each, then the second of each, and so on.
 */
public record Grid(List<Knob> knobs, boolean together) {
    public Grid {
        knobs = List.copyOf(knobs);
        if (knobs.isEmpty()) {
            throw new IllegalArgumentException("nothing is varied.");
        }
        if (together
                && knobs.stream().mapToInt(k -> k.values().size()).distinct().count() > 1) {
            StringJoiner counts = new StringJoiner(", ");
            knobs.forEach(k -> counts.add(k.path() + " has " + k.values().size()));
            throw new IllegalArgumentException(
                    "knobs that vary together need the same number of values, but " + counts + ".");
        }
    }

    /** How many designs; {@link Long#MAX_VALUE} when there are more than that. */
    public long rows() {
        if (together) {
            return knobs.get(0).values().size();
        }
        long rows = 1;
        for (Knob knob : knobs) {
            long most = Long.MAX_VALUE / knob.values().size();
            rows = rows > most ? Long.MAX_VALUE : rows * knob.values().size();
        }
        return rows;
    }

    /** Which value each knob has in a row. */
    public List<Integer> places(long row) {
        Integer[] places = new Integer[knobs.size()];
        long rest = row;
        for (int knob = knobs.size() - 1; knob >= 0; knob--) {
            int count = knobs.get(knob).values().size();
            places[knob] = (int) (rest % count);
            rest = together ? rest : rest / count;
        }
        return List.of(places);
    }

    /** Designs that between them have every word of every knob, and both ends of its numbers. */
    public List<List<Integer>> samples() {
        Set<List<Integer>> samples = new LinkedHashSet<>();
        for (int knob = 0; knob < knobs.size(); knob++) {
            int count = knobs.get(knob).values().size();
            for (int place = 0; place < count; place += knobs.get(knob).isNumber() ? Math.max(1, count - 1) : 1) {
                Integer[] places = new Integer[knobs.size()];
                Arrays.fill(places, together ? place : 0);
                places[knob] = place;
                samples.add(List.of(places));
            }
        }
        return List.copyOf(samples);
    }

    /** A design in words, such as {@code battery.capacity 400 Ah, solar.power 600 W}. */
    public String words(List<Integer> places) {
        return IntStream.range(0, places.size())
                .mapToObj(i -> knobs.get(i).path() + " " + knobs.get(i).values().get(places.get(i)))
                .collect(Collectors.joining(", "));
    }

    /** What all designs have alike of what was to be varied, such as {@code second alternator, solar.power 400 W}; may be empty. */
    public String alike() {
        return knobs.stream()
                .filter(knob -> knob.values().size() == 1)
                .map(knob -> (knob.isOption() ? "" : knob.path() + " ")
                        + knob.values().get(0))
                .collect(Collectors.joining(", "));
    }

    /** The option that a design starts from. */
    public String option(List<Integer> places) {
        for (int knob = 0; knob < places.size(); knob++) {
            if (knobs.get(knob).isOption()) {
                return knobs.get(knob).values().get(places.get(knob));
            }
        }
        return ScenarioFile.BASE_NAME;
    }

    /**
     * The values of a design.
     *
     * @param places which value each knob has
     */
    public Values values(ScenarioFile file, List<Integer> places) {
        Values values = file.values(option(places)).orElseThrow();
        for (int knob = 0; knob < places.size(); knob++) {
            if (!knobs.get(knob).isOption()) {
                values = values.with(
                        knobs.get(knob).path(), knobs.get(knob).values().get(places.get(knob)));
            }
        }
        return values;
    }

    /**
     * A design, ready to be simulated; it keeps the name of its option.
     *
     * @param places which value each knob has
     * @param builder that may have made others before
     * @throws ScenarioException when the values contradict each other
     */
    public Variant variant(ScenarioFile file, List<Integer> places, VariantBuilder builder) throws ScenarioException {
        return builder.next(option(places), values(file, places));
    }

    /**
     * Some designs as a scenario of their own, each named by its values.
     *
     * @throws ScenarioException when the values of one contradict each other
     */
    public ScenarioFile only(ScenarioFile file, List<Integer> rows) throws ScenarioException {
        VariantBuilder builder = new VariantBuilder();
        List<Variant> variants = new ArrayList<>();
        List<ScenarioFile.Option> options = new ArrayList<>();
        for (int row : rows) {
            List<Integer> places = places(row);
            Values values = values(file, places);
            variants.add(builder.next(words(places), values));
            options.add(new ScenarioFile.Option(words(places), values));
        }
        Scenario all = file.scenario();
        return new ScenarioFile(
                new Scenario(all.name(), all.title(), all.notes(), variants),
                file.base(),
                options,
                List.of(),
                file.failures());
    }
}
