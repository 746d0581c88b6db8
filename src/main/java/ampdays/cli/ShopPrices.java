package ampdays.cli;

import ampdays.io.InputException;
import ampdays.io.InputProblem;
import ampdays.scenario.PricedPart;
import ampdays.scenario.ScenarioFile.ApartPrice;
import ampdays.scenario.Variant;
import ampdays.shop.Shop;
import ampdays.units.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The prices of a shop's file over those of a scenario. Test: {@code ProposalCommandTest}. */
record ShopPrices(Shop shop, String source, Loaded asWritten) {
    /** The scenario with the shop's prices before its own. */
    Loaded laidOver() throws InputException {
        requireKnownOptions();
        if (shop.currency().isEmpty()) {
            return asWritten;
        }
        for (ApartPrice price : apart()) {
            if (isOfAPart(price)) {
                throw new InputException(List.of(problem(
                        "Its prices are in " + shop.currency() + ", but the scenario's " + price.path() + " is in "
                                + price.currency() + ". Give that price here too, or write one currency in both.")));
            }
        }
        return asWritten.priced(shop.unitPrices(), shop.currency(), source);
    }

    /** What else the scenario says in another currency, such as a budget; there is no rate of exchange. */
    Optional<String> leftOut() {
        List<ApartPrice> left =
                apart().stream().filter(price -> !isOfAPart(price)).toList();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of(source + ": its prices are in " + shop.currency() + ", so what the scenario says in "
                        + told(left, ApartPrice::currency) + " is left out: " + told(left, ApartPrice::path) + ".");
    }

    private static String told(List<ApartPrice> prices, Function<ApartPrice, String> what) {
        return prices.stream().map(what).distinct().collect(Collectors.joining(", "));
    }

    private List<ApartPrice> apart() {
        return shop.currency().isEmpty()
                ? List.of()
                : asWritten.file().pricesApart(shop.unitPrices().keySet(), shop.currency());
    }

    private static boolean isOfAPart(ApartPrice price) {
        return Arrays.stream(PricedPart.values())
                .anyMatch(part -> part.pricePath().equals(price.path()));
    }

    /** A price for an option that is not there is a misspelt name: it would silently be left out. */
    private void requireKnownOptions() throws InputException {
        List<String> known = asWritten.scenario().variants().stream()
                .skip(1)
                .map(Variant::name)
                .toList();
        List<InputProblem> problems = new ArrayList<>();
        for (String option : new TreeSet<>(shop.optionPrices().keySet())) {
            if (!known.contains(option)) {
                problems.add(problem("options has a price for \"" + option + "\", which is no option of the scenario."
                        + Nearest.of(option, known)
                                .map(name -> " Did you mean \"" + name + "\"?")
                                .orElse(" Its options: " + String.join(", ", known) + ".")));
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private InputProblem problem(String message) {
        return new InputProblem(source, 0, 0, message);
    }
}
