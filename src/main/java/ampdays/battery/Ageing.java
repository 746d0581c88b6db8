package ampdays.battery;

/**
 * Capacity that a lithium bank loses along a run, by use and by the calendar. It ranks designs; it promises no date.
 *
 * <p>Both laws are powers, so loss at varying conditions, taken at each moment as d/dAh and d/dt at the loss reached (the
 * virtual-time form), has a closed form: use^(1/0.55) = Σ a^(1/0.55) dAh and calendar² = Σ k² dt. The sums are taken hour
 * by hour with the temperature and state of charge at the hour's end and the hour's rate of discharge, its mean by charge;
 * a last part of an hour is left out. A
 * bank that starts with a loss is taken to have it half by use and half by the calendar (a guess). Reference: AgeingTest.
 */
public final class Ageing {
    private static final double USE_ROOT = 1 / AgeingPhysics.USE_POWER;
    private static final double LOG_SHARE = Math.log(0.01);

    private final double capacityAh;
    private final double stepS;
    private final int stepsAnHour;
    private final double useSumAtStart;
    private final double calendarSumAtStart;

    int steps;
    double dischargeSumA;
    double dischargeSumA2;

    private double useSum;
    private double calendarSum;
    private double resistanceShare;

    /**
     * @param capacityAh when new, Ah
     * @param startLossShare capacity lost before the run, 0 to 1
     * @param stepS length of the step, s
     */
    Ageing(double capacityAh, double startLossShare, double stepS) {
        this.capacityAh = capacityAh;
        this.stepS = stepS;
        this.stepsAnHour = (int) Math.round(3600 / stepS);
        this.useSumAtStart = Math.pow(startLossShare / 2, USE_ROOT);
        this.calendarSumAtStart = startLossShare * startLossShare / 4;
    }

    void step(double currentA, double temperatureC, double soc) {
        if (currentA < 0) {
            dischargeSumA -= currentA;
            dischargeSumA2 += currentA * currentA;
        }
        if (++steps == stepsAnHour) {
            endHour(temperatureC, soc);
        }
    }

    void endHour(double temperatureC, double soc) {
        double seconds = steps * stepS;
        double k = AgeingPhysics.calendarFade(soc, temperatureC);
        calendarSum += k * k * seconds;
        resistanceShare += AgeingPhysics.resistanceGrowth(soc, temperatureC) * seconds;
        if (dischargeSumA > 0) {
            double cRate = dischargeSumA2 / dischargeSumA / capacityAh;
            double throughputAh = dischargeSumA * stepS / 3600 * AgeingPhysics.TEST_CELL_AH / capacityAh;
            useSum += Math.exp((AgeingPhysics.logUseFade(cRate, temperatureC) + LOG_SHARE) * USE_ROOT) * throughputAh;
        }
        steps = 0;
        dischargeSumA = 0;
        dischargeSumA2 = 0;
    }

    /** Capacity lost by use if the run came so many times over, share of the capacity when new. */
    public double useLossShare(double runs) {
        return Math.pow(useSumAtStart + runs * useSum, AgeingPhysics.USE_POWER)
                - Math.pow(useSumAtStart, AgeingPhysics.USE_POWER);
    }

    /** Capacity lost by the calendar if the run came so many times over, share of the capacity when new. */
    public double calendarLossShare(double runs) {
        return Math.sqrt(calendarSumAtStart + runs * calendarSum) - Math.sqrt(calendarSumAtStart);
    }

    /** Growth of resistance by the calendar if the run came so many times over, share of that when new. */
    public double resistanceGrowthShare(double runs) {
        return runs * resistanceShare;
    }
}
