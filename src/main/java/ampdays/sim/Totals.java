package ampdays.sim;

import ampdays.alternator.Alternator;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactoryUnit;
import ampdays.battery.Battery;
import ampdays.cabin.Cabin;
import ampdays.cabin.CabinSpec;
import ampdays.load.InverterSpec;
import ampdays.results.Account;
import ampdays.results.Ageing;
import ampdays.results.DayTotals;
import ampdays.results.Energy;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.trip.Trip;
import ampdays.trip.Vehicle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Adds up a run step by step and makes its result once. Allocates nothing in a step. */
final class Totals {
    static final double FULL_SHARE = 0.995;
    private static final double FULL_WITHIN_DAYS = 3;
    private static final int TREND_DAYS = 7;
    private static final double LEVEL_TREND = -0.002;
    private static final double SECONDS_A_DAY = 86_400;
    private static final double DAYS_A_YEAR = 365;

    private final RunPlan plan;
    private final TripClock clock;
    private final RunState state;
    private final Battery bank;
    private final Cabin cabin;
    /** Null without one, like the next. */
    private final Alternator second;

    private final FactoryUnit factory;
    private final double stepS;
    private final double stepH;
    private final double reserve;
    private final Nights nights;
    private final Findings findings;
    private final List<DayTotals> days = new ArrayList<>();
    final PatternHours served;
    /** What the loads asked less what they got. */
    private final PatternHours missed;

    private final EnumMap<Limit, StepSum> limits = new EnumMap<>(Limit.class);
    private final EnumMap<Limit, StepSum> curtailed = new EnumMap<>(Limit.class);
    private final boolean canCharge;
    private final Ledger sum;
    Ledger ledger;
    private StepSum rulingSum;

    private int emptyStep = -1;
    private int lastFullStep = -1;
    private double lowestSoc = 2;
    private int lowestStep;
    private double fuelLitres;
    private int chargingIdleSteps;
    double peakCaseC = Double.NaN;
    // sums of every step's mean
    double dischargedA;
    double coolingAskedW;
    double refrigeratorAskedW;

    double dayLowestSoc;

    /** A sum that a map may hold without boxing. */
    private static final class StepSum {
        private double sum;
    }

    Totals(RunPlan plan, RunState state) {
        this.plan = plan;
        this.clock = plan.clock();
        this.state = state;
        this.bank = state.bank;
        this.cabin = state.cabin;
        this.second = state.second;
        this.factory = state.factory;
        this.stepS = clock.stepSeconds();
        this.stepH = stepS / 3600;
        this.sum = new Ledger(stepS);
        this.reserve = clock.trip().reserveShare();
        CabinSpec comfort = plan.variant().design().cabin();
        this.nights = new Nights(comfort.comfortLowC(), comfort.comfortHighC());
        this.findings = new Findings(
                plan.variant().design().inverter().map(InverterSpec::ratedW).orElse(Double.NaN),
                plan.variant().design().bank());
        this.canCharge = second != null || factory != null;
        int patterns = plan.loads().patterns().length;
        this.served = new PatternHours(patterns);
        this.missed = new PatternHours(patterns);
        for (Limit limit : Limit.values()) {
            limits.put(limit, new StepSum());
            curtailed.put(limit, new StepSum());
        }
    }

    void beginDay(int day) {
        ledger = new Ledger(stepS);
        dayLowestSoc = bank.soc();
    }

    /**
     * Ends a day, or what of it was run.
     *
     * @param first its first step that was run
     * @param end first step no longer run
     */
    void endDay(int day, int first, int end) {
        sum.add(ledger);
        SkyPlan sky = plan.sky();
        boolean whole = first == clock.firstStepOfDay(day) && end == clock.firstStepOfDay(day + 1);
        Trip trip = clock.trip();
        days.add(new DayTotals(
                clock.date(day),
                trip.kinds().get(trip.kindOfDay().get(day)).name(),
                first,
                end - first,
                ledger.energy(),
                dayLowestSoc,
                bank.soc(),
                whole ? sky.warmestC(day) : sky.weather().warmestC(first, end),
                whole ? sky.coolestC(day) : sky.weather().coolestC(first, end)));
    }

    void addFuel(double litres) {
        fuelLitres += litres;
    }

    /**
     * Enters what the loads asked and got.
     *
     * @param wanted pattern of all that would run
     * @param left pattern of what the bank's state of charge leaves of it
     */
    void served(int wanted, int left, double share, double busV) {
        served.add(left, share * stepH, busV);
        if (share < 1 || left != wanted) {
            missed.add(wanted, stepH, busV);
            missed.add(left, -share * stepH, busV);
        }
    }

    void minute(Minute m, Scene now) {
        ledger.enter(m, bank);
        Limit ruling = Ruling.of(m, state, now.engineRuns());
        if (m.ruling != ruling) {
            m.ruling = ruling;
            rulingSum = limits.get(ruling);
        }
        rulingSum.sum += stepH;
        if (m.curtailedW > 0) {
            curtailed(Ruling.ofCurtailment(m, state), m.curtailedW);
        }
        charge(m.step, bank.soc(), bank.outOfReachShare());
        if (m.bankA < 0) {
            dischargedA -= m.bankA;
        }
        coolingAskedW += m.coolingAskedW + m.coolingMissedW;
        refrigeratorAskedW += m.refrigeratorAskedW;
        if (canCharge && now.idles()) {
            chargingIdleSteps++;
            EngineSpec engine = plan.variant().design().engine();
            fuelLitres +=
                    stepH * (now.vehicle() == Vehicle.IDLING ? engine.idleLitresPerH() : engine.fastIdleLitresPerH());
        }
        hottestCase();
        nights.step(m.step, now.asleep(), cabin.airC());
        findings.minute(m, state, now);
    }

    /** Enters the state of charge at the end of a step. */
    void charge(int step, double soc, double outOfReachShare) {
        if (soc < lowestSoc) {
            lowestSoc = soc;
            lowestStep = step;
        }
        if (emptyStep < 0 && (soc <= reserve || soc <= outOfReachShare)) {
            emptyStep = step;
        }
        if (soc < dayLowestSoc) {
            dayLowestSoc = soc;
        }
        if (soc >= FULL_SHARE) {
            lastFullStep = step;
        }
    }

    /** Enters a step whose charging path a limit ruled. */
    void ruled(Limit limit) {
        limits.get(limit).sum += stepH;
    }

    /** Enters what a limit took of the sun in a step. */
    void curtailed(Limit limit, double meanW) {
        curtailed.get(limit).sum += meanW * stepH;
    }

    /** Enters a step of which only the cabin's air is told: sleep, heat. */
    void air(int step, Scene now, double airC) {
        nights.step(step, now.asleep(), airC);
        findings.air(step, now, airC);
    }

    /** Hours in which a limit ruled the charging path. */
    double ruledH(Limit limit) {
        return limits.get(limit).sum;
    }

    void setRuledH(Limit limit, double hours) {
        limits.get(limit).sum = hours;
    }

    private void hottestCase() {
        if (second != null) {
            double caseC = second.caseC();
            peakCaseC = peakCaseC >= caseC ? peakCaseC : caseC;
        }
        if (factory != null) {
            double caseC = factory.caseC();
            peakCaseC = peakCaseC >= caseC ? peakCaseC : caseC;
        }
    }

    RunResult result() {
        Energy energy = sum.energy();
        double trend = trendPerDay();
        boolean neverEmpty = emptyStep < 0;
        boolean lately =
                lastFullStep >= 0 && (clock.steps() - 1 - lastFullStep) * stepS <= FULL_WITHIN_DAYS * SECONDS_A_DAY;
        double daysToEmpty = neverEmpty ? Double.NaN : (emptyStep + 1) * stepS / SECONDS_A_DAY;
        Map<String, Double> got = got(energy);
        Map<String, Double> unserved = new LinkedHashMap<>(plan.loads().byLoadWh(missed));
        unserved.put(Account.COOLING.label(), coolingAskedW * stepH - energy.wh(Account.COOLING));
        unserved.put(Account.REFRIGERATOR.label(), refrigeratorAskedW * stepH - energy.wh(Account.REFRIGERATOR));
        unserved.values().removeIf(wh -> wh < 1e-9 * energy.servedWh());
        return new RunResult(
                plan.variant().name(),
                clock.trip().zone(),
                clock.startEpochSecond(),
                clock.stepSeconds(),
                clock.steps(),
                reserve,
                daysToEmpty,
                neverEmpty && (lately || trend >= LEVEL_TREND),
                trend,
                lowestSoc,
                clock.epochSecond(lowestStep + 1),
                nights.comfortable(),
                nights.nights(),
                energy,
                positive(limits),
                positive(curtailed),
                got,
                unserved,
                fuelLitres,
                chargingIdleSteps * stepH,
                peakCaseC,
                dischargedA * stepH / plan.variant().design().bank().capacityAh(),
                ageing(),
                energy.residualWh(),
                days,
                findings.list(clock));
    }

    private Ageing ageing() {
        double runsAYear = DAYS_A_YEAR * SECONDS_A_DAY / (clock.steps() * stepS);
        return bank.ageing()
                .map(cells -> new Ageing(
                        cells.useLossShare(1) + cells.calendarLossShare(1),
                        cells.useLossShare(runsAYear) + cells.calendarLossShare(runsAYear),
                        cells.useLossShare(runsAYear),
                        cells.resistanceGrowthShare(runsAYear)))
                .orElse(Ageing.UNKNOWN);
    }

    private Map<String, Double> got(Energy energy) {
        Map<String, Double> sums = new LinkedHashMap<>(plan.loads().byLoadWh(served));
        if (state.cooler != null) {
            sums.put(Account.COOLING.label(), energy.wh(Account.COOLING));
        }
        if (state.refrigerator != null) {
            sums.put(Account.REFRIGERATOR.label(), energy.wh(Account.REFRIGERATOR));
        }
        return sums;
    }

    private static Map<Limit, Double> positive(EnumMap<Limit, StepSum> sums) {
        EnumMap<Limit, Double> positive = new EnumMap<>(Limit.class);
        sums.forEach((limit, step) -> {
            if (step.sum > 0) {
                positive.put(limit, step.sum);
            }
        });
        return positive;
    }

    /** Least-squares slope of the state of charge at the end of the last days, per day; NaN with less than three. */
    private double trendPerDay() {
        int count = days.size() < TREND_DAYS ? days.size() : TREND_DAYS;
        if (count < 3) {
            return Double.NaN;
        }
        double meanDay = (count - 1) / 2.0;
        double sumXy = 0;
        double sumXx = 0;
        for (int i = 0; i < count; i++) {
            double x = i - meanDay;
            sumXy += x * days.get(days.size() - count + i).endSoc();
            sumXx += x * x;
        }
        return sumXy / sumXx;
    }
}
