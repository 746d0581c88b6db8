package ampdays.shop;

import ampdays.scenario.PricedPart;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a shop says of itself and asks for its work.
 *
 * @param contact lines of address, telephone and so on
 * @param logo a picture file that was looked into: PNG or JPEG, and not too large
 * @param currency a word that is printed behind sums
 * @param unitPrices price of one unit of each thing that it names
 * @param optionPrices price of whole options by their names; these go before what unit prices come to
 * @param tax the line about tax; may be empty
 * @param validity the line about how long prices hold; may be empty
 */
public record Shop(
        String name,
        List<String> contact,
        Optional<Path> logo,
        String currency,
        Map<PricedPart, Double> unitPrices,
        Map<String, Double> optionPrices,
        String tax,
        String validity) {
    public Shop {
        contact = List.copyOf(contact);
        unitPrices = Map.copyOf(unitPrices);
        optionPrices = Map.copyOf(optionPrices);
    }

    /** The lines that belong to every price. */
    public List<String> terms() {
        return Stream.of(tax, validity).filter(line -> !line.isEmpty()).toList();
    }

    /** Of a whole option. */
    public OptionalDouble price(String option) {
        Double price = optionPrices.get(option);
        return price == null ? OptionalDouble.empty() : OptionalDouble.of(price);
    }
}
