package ampdays.sim;

import ampdays.alternator.Alternator;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactoryUnit;
import ampdays.alternator.UnderBonnet;
import ampdays.battery.Battery;
import ampdays.cabin.Cabin;
import ampdays.cooling.Cooler;
import ampdays.cooling.MoistAir;
import ampdays.cooling.Refrigerator;
import ampdays.scenario.Design;
import ampdays.weather.MinuteWeather;

/** The components of one run, made from the design; a component that the design has not is null. One run, one thread. */
final class RunState {
    final Battery bank;
    final Shedding shedding;
    final Cabin cabin;
    final Cooler cooler;
    final Refrigerator refrigerator;
    final FactoryUnit factory;
    final Alternator second;
    final UnderBonnet bonnet;
    final MoistAir moistAir;

    RunState(RunPlan plan) {
        Design design = plan.variant().design();
        MinuteWeather weather = plan.sky().weather();
        double stepS = plan.clock().stepSeconds();
        double density = plan.sky().densityShare();
        double startC = weather.airC(0);
        EngineSpec engine = design.engine();
        bank = Battery.of(design.bank(), startC, stepS);
        shedding = new Shedding(design);
        double[] airflowsM3H = plan.loads().airflowsM3H();
        cabin = new Cabin(design.cabin(), airflowsM3H, density, startC, weather.humidityRatio(0), stepS);
        cooler = design.cooler().map(Cooler::new).orElse(null);
        refrigerator =
                design.refrigerator().map(spec -> new Refrigerator(spec, stepS)).orElse(null);
        factory = plan.factory() == null
                ? null
                : new FactoryUnit(design.factory().orElseThrow(), plan.factory(), startC, startC);
        second = plan.second() == null ? null : new Alternator(plan.second(), startC);
        bonnet = new UnderBonnet(engine, stepS);
        moistAir = plan.sky().moistAir();
    }

    /** Goes on from where another was: each part that both have. */
    void goOnFrom(RunState before) {
        bank.goOnFrom(before.bank);
        shedding.goOnFrom(before.shedding);
        cabin.goOnFrom(before.cabin);
        bonnet.goOnFrom(before.bonnet);
        if (cooler != null && before.cooler != null) {
            cooler.goOnFrom(before.cooler);
        }
        if (refrigerator != null && before.refrigerator != null) {
            refrigerator.goOnFrom(before.refrigerator);
        }
        if (factory != null && before.factory != null) {
            factory.goOnFrom(before.factory);
        }
        if (second != null && before.second != null) {
            second.goOnFrom(before.second);
        }
    }
}
