package ampdays.sim;

import ampdays.alternator.AlternatorPhysics;
import ampdays.alternator.Fuel;
import ampdays.battery.Battery;
import ampdays.cabin.Cabin;
import ampdays.cabin.CabinSpec;
import ampdays.cabin.PeopleHeat;
import ampdays.cooling.Cooler;
import ampdays.cooling.CoolerPhysics;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.DashCooling;
import ampdays.cooling.MoistAir;
import ampdays.load.InverterSpec;
import ampdays.load.PreCooling;
import ampdays.scenario.Design;
import ampdays.weather.MinuteWeather;

/**
 * The living area in the loop: fans that let air through, the vehicle's own cooling while it moves, the air conditioner
 * with its wish to pre-cool, and the moisture. One run, one thread.
 */
final class Climate {
    /** Outside must be that much cooler, and the cabin that much too warm, before fans begin to move air; practice. */
    private static final double AIRING_OUTSIDE_K = 1;

    private static final double AIRING_INSIDE_K = 0.5;

    private final RunPlan plan;
    private final Battery bank;
    private final Shedding shedding;
    private final MinuteWeather weather;
    private final CabinPlan gains;
    private final CabinSpec spec;
    private final Cabin cabin;
    private final Cooler cooler;
    private final MoistAir moistAir;
    private final DashCooling dash;
    private final PreCooling preCooling;
    private final Fuel fuel;
    private final double stepS;
    private final boolean airsByWish;
    private final boolean leaks;
    private final double solarConversion;
    private final double inverterShare;
    boolean airing;
    private double fuelLitres;

    Climate(RunPlan plan, RunState state) {
        Design design = plan.variant().design();
        this.plan = plan;
        this.bank = state.bank;
        this.shedding = state.shedding;
        this.gains = plan.cabin();
        this.weather = plan.sky().weather();
        this.spec = design.cabin();
        this.cabin = state.cabin;
        this.cooler = state.cooler;
        this.moistAir = state.moistAir;
        this.dash = design.dash().orElse(null);
        this.preCooling = design.preCooling().orElse(null);
        this.fuel = design.engine().fuel();
        this.stepS = plan.clock().stepSeconds();
        this.airsByWish = !Double.isNaN(spec.airingC());
        this.leaks = spec.leakM2() > 0;
        this.solarConversion =
                design.solar().map(s -> s.controller().conversionShare()).orElse(1.0);
        this.inverterShare = design.cooler().map(CoolerSpec::onInverter).orElse(false)
                ? design.inverter().map(InverterSpec::shareAtRating).orElse(1.0)
                : 1;
    }

    /** Goes on from where another was; fuel is counted from here. */
    void goOnFrom(Climate before) {
        airing = before.airing;
    }

    /**
     * Whether fans that move air run in this step, as far as their times allow: with a wish, only while outside is cooler
     * than the cabin and the cabin warmer than wanted.
     */
    boolean fansRun(double outsideC) {
        if (!airsByWish) {
            return true;
        }
        double airC = cabin.airC();
        airing = airs(airing, airC, outsideC, spec.airingC());
        return airing;
    }

    /** Whether fans with a wish run in a step, if they did or did not in the one before. */
    static boolean airs(boolean before, double airC, double outsideC, double wishedC) {
        return before
                ? airC > outsideC && airC > wishedC
                : airC > outsideC + AIRING_OUTSIDE_K && airC > wishedC + AIRING_INSIDE_K;
    }

    /**
     * One step of the cabin.
     *
     * @param flow place of the air flow that the running fans drive
     * @param applianceHeatW heat that appliances gave off in the step before
     */
    void step(Minute m, Scene now, int flow, double applianceHeatW, boolean powered) {
        int i = m.step;
        boolean moves = now.moves();
        double airC = cabin.airC();
        double setC = now.setC();
        boolean wanted = cooler != null && now.wanted();
        boolean closed = !powered || (wanted && !airsByWish);
        double peopleW = 0;
        double moistureW = 0;
        if (now.present() > 0) {
            double shiftShare = PeopleHeat.shiftShare(airC);
            peopleW = now.present() * PeopleHeat.sensibleW(shiftShare);
            moistureW = now.present() * PeopleHeat.latentW(shiftShare, now.asleep());
        }
        cabin.open(
                closed ? 0 : flow,
                moves,
                now.covered(),
                m.outsideC,
                gains.faceGainW(i),
                gains.glassGainW(i),
                peopleW + applianceHeatW);
        if (leaks && !moves) {
            cabin.leak(m.outsideC, weather.windMs(i));
        }
        double coilW = dash != null && moves ? coolFromDash(dash, airC) : 0;
        m.coolingAskedW = 0;
        m.coolingMissedW = 0;
        if (cooler == null) {
            cabin.floatFree();
        } else {
            double aimC = preCooling == null ? setC : preCooled(m, preCooling, setC, moves);
            boolean mayRun = !Double.isNaN(aimC) && powered && !shedding.coolingOff() && cooler.mayRun(m.busV);
            if (mayRun && cooler.idles(cabin.nodes(), airC, cabin.massC(), cabin.q1W(), cabin.q2W(), aimC)) {
                cooler.off(stepS);
                cabin.floatFree();
            } else if (mayRun) {
                double wetBulbC = moistAir.wetBulbC(airC, cabin.humidityRatio());
                cooler.step(
                        cabin.nodes(),
                        airC,
                        cabin.massC(),
                        cabin.q1W(),
                        cabin.q2W(),
                        aimC,
                        wetBulbC,
                        m.outsideC,
                        m.busV);
                cabin.cooledTo(cooler.node1C(), cooler.node2C());
                m.coolingAskedW = cooler.inputW();
                coilW += cooler.latentW();
            } else {
                cooler.off(stepS);
                cabin.floatFree();
                m.coolingMissedW = wanted && airC > setC ? cooler.fullInputW(m.outsideC) : 0;
            }
        }
        cabin.moisten(weather.humidityRatio(i), moistureW, coilW);
    }

    /** What the vehicle's own air conditioner takes out of the air; its moisture is returned, W. */
    private double coolFromDash(DashCooling dash, double airC) {
        double sensibleShare = CoolerPhysics.sensibleShare(airC, moistAir.wetBulbC(airC, cabin.humidityRatio()));
        double totalW = dash.totalW(cabin.excessW(dash.toC()), sensibleShare);
        cabin.drawOff(totalW * sensibleShare);
        fuelLitres += AlternatorPhysics.fuelLitresPerH(totalW / dash.cop(), fuel) * stepS / 3600;
        return totalW * (1 - sensibleShare);
    }

    /**
     * Temperature that the air conditioner aims at, °C; NaN when none is wanted, infinite when only surplus sun may cool.
     * Surplus is the sun lost in the step before and what pre-cooling took then, less what the bank lacked.
     */
    private double preCooled(Minute m, PreCooling wish, double setC, boolean moves) {
        double aimC = setC;
        if (wish.holds(moves, plan.clock().minuteOfDay(m.step)) && !(wish.toC() >= setC)) {
            aimC = wish.toC();
        }
        if (wish.surplusSun()) {
            double lackW = (bank.chargeMaxA() - m.bankA) * m.busV;
            double surplusW = cooler.surplusInputW() / inverterShare
                    + (m.bankLimits ? m.curtailedW * solarConversion : 0)
                    - (lackW > 0 ? lackW : 0);
            if (surplusW > 0) {
                cooler.allowSurplus(wish.toC(), surplusW * inverterShare);
                aimC = Double.isNaN(aimC) ? Double.POSITIVE_INFINITY : aimC;
            }
        }
        return aimC;
    }

    /** Fuel that the vehicle's own air conditioner has taken so far, L. */
    double fuelLitres() {
        return fuelLitres;
    }
}
