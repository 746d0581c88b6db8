package ampdays.scenario;

import ampdays.trip.Trip;
import java.util.Optional;

/**
 * One change on a design, of a certain size, with its price.
 *
 * @param words what is changed, as in "200 W more solar"
 * @param price what it costs
 * @param perTrip whether it is that of this trip, to be paid on others anew
 * @param currency of that price
 * @param priceFrom where the price comes from: a mark, or "your price"; empty when it takes no money
 * @param values the changed design
 * @param trip the changed trip, where that is what changes
 */
public record SingleChange(
        String words,
        double price,
        boolean perTrip,
        String currency,
        String priceFrom,
        Values values,
        Optional<Trip> trip) {
    /** The changed design, ready to be simulated under the name of the change. */
    public Variant variant() throws ScenarioException {
        return variant(new VariantBuilder());
    }

    /** The same by a builder that may remember parts of another design. */
    public Variant variant(VariantBuilder designs) throws ScenarioException {
        Variant built = designs.next(words, values);
        return trip.map(changed -> built.onTrip(words, changed)).orElse(built);
    }
}
