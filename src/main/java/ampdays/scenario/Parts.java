package ampdays.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The parts of a design that a scenario prices and weighs. All of each counts, also what the base design has. Test: {@code
 * PartsTest}.
 *
 * @param price in the scenario's currency
 * @param massKg with fittings
 * @param panelM2 roof that the panels cover
 */
public record Parts(double price, double massKg, double panelM2) {
    private static final double LEAST = 1e-9;

    /** The parts of a design. */
    public static Parts of(Values v) {
        double price = 0;
        double massKg = 0;
        for (PricedPart part : PricedPart.values()) {
            double count = part.count(v);
            price += count * v.number(part.pricePath());
            massKg += count * v.number(part.massPath());
        }
        double solarW = v.has("solar") ? v.number("solar.power") : 0;
        double panelM2 = solarW == 0 ? 0 : solarW / (1000 * v.number("solar.panel-efficiency"));
        return new Parts(price, massKg, panelM2);
    }

    /**
     * What has to be bought to change a design.
     *
     * @param count how many of its unit
     * @param unitPrice of one
     * @param isPriced whether somebody said that price, and it is no default
     */
    public record Bought(PricedPart part, double count, double unitPrice, boolean isPriced) {
        public double price() {
            return count * unitPrice;
        }
    }

    /** What a changed design needs new; what it has less of is no gain. */
    public static List<Bought> bought(Values was, Values is) {
        return Arrays.stream(PricedPart.values())
                .filter(part -> part.bought(was, is) > LEAST)
                .map(part -> new Bought(
                        part, part.bought(was, is), is.number(part.pricePath()), is.isSaid(part.pricePath())))
                .toList();
    }

    /** What all of it costs; empty where nobody said a price, or nothing has one. */
    public static OptionalDouble price(List<Bought> bought) {
        return bought.isEmpty() || !bought.stream().allMatch(Bought::isPriced)
                ? OptionalDouble.empty()
                : OptionalDouble.of(bought.stream().mapToDouble(Bought::price).sum());
    }

    /** The word behind prices. */
    public static String currency(Values v) {
        return v.word(PriceSection.CURRENCY);
    }

    /**
     * What a scenario allows them.
     *
     * @param budget in its currency; not a number without a limit, like the payload
     * @param payloadKg mass of the parts
     * @param roofM2 roof of the van
     */
    public record Limits(double budget, double payloadKg, double roofM2) {
        public static Limits of(Values v) {
            return new Limits(v.number(PriceSection.BUDGET), v.number(MassSection.PAYLOAD), v.number("cabin.roof"));
        }
    }
}
