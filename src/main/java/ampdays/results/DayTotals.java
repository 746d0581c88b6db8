package ampdays.results;

import java.time.LocalDate;

/**
 * One local calendar day of a run.
 *
 * @param firstStep index of its first step in the run
 * @param steps how many steps it has
 * @param lowestSoc lowest state of charge in it, 0 to 1
 * @param endSoc state of charge at its end, 0 to 1
 */
public record DayTotals(
        LocalDate date,
        String kind,
        int firstStep,
        int steps,
        Energy energy,
        double lowestSoc,
        double endSoc,
        double warmestOutsideC,
        double coolestOutsideC) {}
