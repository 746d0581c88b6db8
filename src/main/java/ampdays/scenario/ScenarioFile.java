package ampdays.scenario;

import ampdays.units.Dimension;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A scenario as read: what can be simulated, and the values of the base design and of each option that it was built from.
 *
 * @param scenario all variants, the base design first
 * @param base values of the base design
 * @param options in the order written
 * @param sweeps that are kept under names, in the order written
 * @param failures of its own, in the order written
 */
public record ScenarioFile(
        Scenario scenario, Values base, List<Option> options, List<Sweep> sweeps, List<Failure> failures) {
    /** Name of the base design in tables and charts. */
    public static final String BASE_NAME = "as it is";

    /** A named set of changes, with the values of the base design already under it. */
    public record Option(String name, Values values) {}

    /** A sweep that is kept under a name. */
    public record Sweep(String name, Grid grid) {}

    /** A price that a design says in another currency than other prices have. */
    public record ApartPrice(String path, String currency) {}

    public ScenarioFile {
        options = List.copyOf(options);
        sweeps = List.copyOf(sweeps);
        failures = List.copyOf(failures);
    }

    /** What the designs say of money that cannot stand beside prices in a currency, nor is replaced by them. */
    public List<ApartPrice> pricesApart(Set<PricedPart> replaced, String currency) {
        return Stream.concat(Stream.of(base), options.stream().map(Option::values))
                .flatMap(values -> apart(values, replaced, currency)
                        .map(path -> new ApartPrice(path, values.word(PriceSection.CURRENCY))))
                .distinct()
                .toList();
    }

    private static Stream<String> apart(Values values, Set<PricedPart> replaced, String currency) {
        return values.word(PriceSection.CURRENCY).equals(currency)
                ? Stream.of()
                : PriceSection.said(values)
                        .filter(path -> replaced.stream()
                                .noneMatch(part -> part.pricePath().equals(path)));
    }

    /**
     * The same with other prices of parts in every design, without what is said {@link #pricesApart apart} from them.
     *
     * @param prices of one unit of each; what is not among them stays as it is
     * @param source where they come from
     */
    public ScenarioFile priced(Map<PricedPart, Double> prices, String currency, String source) {
        Origin origin = new Origin(source, 0, 0);
        Map<String, Value> said = new LinkedHashMap<>();
        said.put(PriceSection.CURRENCY, Value.word(currency, origin));
        prices.forEach((part, price) -> said.put(
                part.pricePath(),
                new Value(
                        BigDecimal.valueOf(price).stripTrailingZeros().toPlainString(),
                        price,
                        Optional.of(Dimension.NUMBER),
                        Optional.empty(),
                        "",
                        origin)));
        return new ScenarioFile(
                scenario,
                inOneCurrency(base, prices.keySet(), currency).withNumbers(said),
                options.stream()
                        .map(option -> new Option(
                                option.name(),
                                inOneCurrency(option.values(), prices.keySet(), currency)
                                        .withNumbers(said)))
                        .toList(),
                sweeps,
                failures);
    }

    private static Values inOneCurrency(Values values, Set<PricedPart> replaced, String currency) {
        Values left = values;
        for (String path : apart(values, replaced, currency).toList()) {
            left = left.without(path);
        }
        return left;
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
}
