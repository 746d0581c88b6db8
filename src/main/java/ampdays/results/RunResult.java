package ampdays.results;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/**
 * What one simulated option came to.
 *
 * @param startEpochSecond first instant of the trip
 * @param stepSeconds length of a step, s
 * @param steps how many
 * @param daysToEmpty days from the start to the end of the first step at or below the reserve, or with
 *     nothing left within reach at the bank's temperature; NaN when never
 * @param holds never empty and not trending down
 * @param trendPerDay change of state of charge per day at one clock time over the last days, share; NaN on short trips
 * @param lowestSoc lowest state of charge, 0 to 1
 * @param lowestSocEpochSecond when
 * @param comfortableNights nights with the cabin in its band
 * @param nights whole nights in the trip
 * @param limitHours hours at each ruling limit, only those that ruled
 * @param curtailedWhByCause what the panels could have given, by the limit that kept it out
 * @param servedWhByUse energy delivered to each load, cooling and refrigerator, by its name
 * @param unservedWhByUse energy asked for and not delivered, by its name
 * @param fuelLitres fuel for charging, l
 * @param engineChargingHours hours the engine ran only to charge (parked, idling), h
 * @param alternatorPeakCaseC hottest case temperature, °C; NaN without an alternator
 * @param cycles discharge throughput over capacity
 * @param ageing capacity that the bank loses
 * @param ledgerResidualWh closing error of the energy ledger
 */
public record RunResult(
        String option,
        ZoneId zone,
        long startEpochSecond,
        int stepSeconds,
        int steps,
        double reserveShare,
        double daysToEmpty,
        boolean holds,
        double trendPerDay,
        double lowestSoc,
        long lowestSocEpochSecond,
        int comfortableNights,
        int nights,
        Energy energy,
        Map<Limit, Double> limitHours,
        Map<Limit, Double> curtailedWhByCause,
        Map<String, Double> servedWhByUse,
        Map<String, Double> unservedWhByUse,
        double fuelLitres,
        double engineChargingHours,
        double alternatorPeakCaseC,
        double cycles,
        Ageing ageing,
        double ledgerResidualWh,
        List<DayTotals> days,
        List<Finding> findings) {
    public RunResult {
        days = List.copyOf(days);
        findings = List.copyOf(findings);
    }

    public Fate fate() {
        return Fate.of(holds, daysToEmpty, trendPerDay);
    }

    public double tripDays() {
        return steps * (double) stepSeconds / 86_400;
    }
}
