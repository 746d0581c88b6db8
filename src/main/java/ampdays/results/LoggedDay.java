package ampdays.results;

/**
 * One day of a trip as promised and as logged. Sums run over the minutes that the log tells, on both sides; NaN where it
 * tells none.
 *
 * @param number of the day in the trip, from 0
 * @param coverage share of the day in which the log knows what went into and out of the bank, 0 to 1
 */
public record LoggedDay(int number, double coverage, Flows promised, Flows logged) {
    /**
     * Energies at the bus.
     *
     * @param alternatorWh DC-DC charger and second alternator
     * @param lowestSoc lowest state of charge, 0 to 1
     */
    public record Flows(double solarWh, double alternatorWh, double shoreWh, double useWh, double lowestSoc) {}
}
