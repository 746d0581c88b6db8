package ampdays.results;

import java.util.List;

/**
 * Why a design does not hold, from runs in which its causes are taken away, and what would turn it.
 *
 * @param drawWh what the trip draws from the bank at worst, counted from full, with what it asked for and did not get, Wh
 * @param usableWh what the bank gives from full down to the reserve, Wh
 * @param shares shares of the draw, largest first; they add up to one
 * @param remedies single changes: first those that turn the design, the cheapest first, then the others, the one that lacks
 *     least first
 */
public record Causes(double drawWh, double usableWh, List<Share> shares, List<Remedy> remedies) {
    public Causes {
        shares = List.copyOf(shares);
        remedies = List.copyOf(remedies);
    }

    /**
     * One cause.
     *
     * @param cause in words
     * @param share of the draw; below zero where taking the cause away makes it worse
     */
    public record Share(String cause, double share) {}

    /**
     * A single change at the smallest of its steps that turns the design, or at its best step where none does.
     *
     * @param change in words, with its size
     * @param turns whether the design then holds, with no fewer comfortable nights
     * @param price of the change; 0 where it takes no money
     * @param perTrip whether it is that of this trip, to be paid on others anew
     * @param currency of that price
     * @param priceFrom the mark of the price, or "your price"; empty where it takes no money
     * @param lackWh what the trip then draws less what the bank then gives, Wh; below zero where something is to spare
     * @param result of the changed design
     */
    public record Remedy(
            String change,
            boolean turns,
            double price,
            boolean perTrip,
            String currency,
            String priceFrom,
            double lackWh,
            RunResult result) {}
}
