package ampdays.scenario;

import ampdays.trip.Trip;

/**
 * One option, ready to be simulated: the base design with its named changes.
 *
 * @param name as the designer wrote it
 * @param weather path of the weather file, as written, relative to the scenario file
 * @param weatherOffsetK added to every air temperature of that file, K
 */
public record Variant(String name, Site site, String weather, double weatherOffsetK, Trip trip, Design design) {
    /** Energy of the bank from full to flat at its nominal voltage, Wh. */
    public double bankWh() {
        return design.bank().nominalWh();
    }

    /** The same design on another trip. */
    Variant onTrip(String otherName, Trip other) {
        return new Variant(otherName, site, weather, weatherOffsetK, other, design);
    }

    /** Whether the van drives on any day. */
    public boolean drives() {
        return trip.kindOfDay().stream()
                .flatMap(kind -> trip.kinds().get(kind).stretches().stream())
                .anyMatch(stretch -> stretch.vehicle().moves());
    }
}
