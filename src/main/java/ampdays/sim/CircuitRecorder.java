package ampdays.sim;

import ampdays.cooling.CoolerSpec;
import ampdays.cooling.RefrigeratorSpec;
import ampdays.load.InverterSpec;
import ampdays.load.LoadSpec;
import ampdays.pv.PulseWidth;
import ampdays.pv.SolarSpec;
import ampdays.scenario.Design;
import ampdays.wiring.Circuit;
import ampdays.wiring.End;
import ampdays.wiring.End.Point;
import ampdays.wiring.Harness;
import ampdays.wiring.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Works out what flows in each circuit from what its components give and take: on a tree of cables that is the sum over all
 * that hangs beyond it (Kirchhoff's current law). Where sources and uses hang there together, both a moment with every use
 * that may be on and one with the mean are looked at, and the larger size counts.
 */
final class CircuitRecorder implements Recorder {
    private static final double SOLAR_COLDEST_C = 25;

    private final TripClock clock;
    private final RunPlan plan;
    private final List<Flows> flows = new ArrayList<>();
    private final List<float[]> currentA = new ArrayList<>();
    private final Map<Place, float[]> airC = new EnumMap<>(Place.class);
    private final CoolerSpec cooler;
    private final RefrigeratorSpec refrigerator;
    private final InverterSpec inverter;
    private final SolarSpec solar;
    private final double[] outletOnW;
    private double secondMostA;

    CircuitRecorder(RunPlan plan, List<Circuit> circuits) {
        this.plan = plan;
        this.clock = plan.clock();
        Design design = plan.variant().design();
        this.cooler = design.cooler().orElse(null);
        this.refrigerator = design.refrigerator().orElse(null);
        this.inverter = design.inverter().orElse(null);
        this.solar = design.solar().orElse(null);
        this.outletOnW = outletOnW(plan.loads(), design.loads());
        Harness harness = new Harness(circuits);
        for (Circuit circuit : circuits) {
            flows.add(new Flows(harness, circuit, design.loads(), plan.loads()));
            currentA.add(new float[clock.steps()]);
        }
        for (Place place : Place.values()) {
            airC.put(place, new float[clock.steps()]);
        }
    }

    /** Outlet power of all loads behind the inverter that may be on together, W, by pattern. */
    private static double[] outletOnW(LoadPlan plan, List<LoadSpec> loads) {
        double[] watts = new double[plan.patterns().length];
        for (int pattern = 0; pattern < watts.length; pattern++) {
            for (int load = 0; load < loads.size(); load++) {
                boolean on = loads.get(load).onInverter() && plan.duty(pattern, load) > 0;
                watts[pattern] += on ? loads.get(load).drawW() : 0;
            }
        }
        return watts;
    }

    /** Which components a circuit carries, and the loads beyond it by pattern. */
    private static final class Flows {
        private final Harness.Side side;
        private final boolean toStartBattery;
        private final boolean solar;
        private final boolean shore;
        private final boolean second;
        private final boolean charger;
        private final boolean inverter;
        private final boolean cooler;
        private final boolean refrigerator;
        private final double[] onA;
        private final double[] onW;
        private final double[] meanA;
        private final double[] meanW;

        Flows(Harness harness, Circuit circuit, List<LoadSpec> loads, LoadPlan plan) {
            side = Harness.side(circuit);
            toStartBattery = circuit.joins(Point.START_BATTERY) && circuit.joins(Point.FACTORY_ALTERNATOR);
            boolean house = side == Harness.Side.HOUSE;
            solar = house && harness.carries(circuit, End.of(Point.SOLAR_CONTROLLER));
            shore = house && harness.carries(circuit, End.of(Point.SHORE_CHARGER));
            second = house && harness.carries(circuit, End.of(Point.SECOND_ALTERNATOR));
            charger = house && harness.carries(circuit, End.of(Point.CHARGER));
            inverter = house && harness.carries(circuit, End.of(Point.INVERTER));
            cooler = house && harness.carries(circuit, End.of(Point.AIR_CONDITIONER));
            refrigerator = house && harness.carries(circuit, End.of(Point.REFRIGERATOR));
            int patterns = plan.patterns().length;
            onA = new double[patterns];
            onW = new double[patterns];
            meanA = new double[patterns];
            meanW = new double[patterns];
            for (int load = 0; load < loads.size(); load++) {
                LoadSpec spec = loads.get(load);
                if (house && !spec.onInverter() && harness.carries(circuit, End.ofLoad(spec.name()))) {
                    for (int pattern = 0; pattern < patterns; pattern++) {
                        double duty = plan.duty(pattern, load);
                        onA[pattern] += duty > 0 ? spec.drawA() : 0;
                        onW[pattern] += duty > 0 ? spec.drawW() : 0;
                        meanA[pattern] += duty * spec.drawA();
                        meanW[pattern] += duty * spec.drawW();
                    }
                }
            }
        }
    }

    @Override
    public void minute(Minute m, RunState state) {
        secondMostA = secondMostA > m.secondPossibleA ? secondMostA : m.secondPossibleA;
        airC.get(Place.CABIN)[m.step] = (float) state.cabin.airC();
        airC.get(Place.OUTSIDE)[m.step] = (float) m.outsideC;
        airC.get(Place.BONNET)[m.step] = (float) (m.outsideC + state.bonnet.riseK());
        double roofC = plan.roof() == null ? m.outsideC : plan.roof().cellC(m.step);
        airC.get(Place.ROOF)[m.step] = (float) (roofC > m.outsideC ? roofC : m.outsideC);
        for (int i = 0; i < flows.size(); i++) {
            currentA.get(i)[m.step] = (float) currentA(flows.get(i), m, state);
        }
    }

    private double currentA(Flows flow, Minute m, RunState state) {
        return switch (flow.side) {
            case PANELS -> panelsA(m);
            case VEHICLE ->
                state.factory == null ? 0 : flow.toStartBattery ? state.factory.outputA() : m.factorySourceA;
            case HOUSE -> houseA(flow, m, state);
        };
    }

    /** What the panels can give at their best voltage, whether it is taken or not. */
    private double panelsA(Minute m) {
        if (solar == null) {
            return 0;
        }
        double cellC = plan.roof().cellC(m.step);
        double bestV =
                PulseWidth.bestV(solar.controller().stringV(), cellC > SOLAR_COLDEST_C ? cellC : SOLAR_COLDEST_C);
        double possibleW = plan.roof().possibleWPerW(m.step) * solar.ratedW();
        return possibleW / bestV;
    }

    private double houseA(Flows flow, Minute m, RunState state) {
        double givenA = (flow.solar ? m.solarW : 0) + (flow.shore ? m.shoreW : 0) + (flow.charger ? m.factoryW : 0);
        givenA = givenA / m.busV + (flow.second ? m.secondA : 0);
        double meanA = 0;
        double onA = 0;
        if (m.askedA > 0 || m.askedW > 0) {
            double served = m.servedShare;
            int pattern = m.leftPattern;
            meanA = served * (flow.meanA[pattern] + flow.meanW[pattern] / m.busV);
            onA = flow.onA[pattern] + flow.onW[pattern] / m.busV;
            if (flow.inverter && inverter != null) {
                meanA += served * m.inverterAskedW / m.busV;
                onA += inverterOnW(m, state) / m.busV;
            }
            if (flow.cooler && cooler != null && !cooler.onInverter()) {
                meanA += m.coolingW / m.busV;
                onA += coolerOnW(m, state) / m.busV;
            }
            if (flow.refrigerator && refrigerator != null) {
                meanA += m.refrigeratorW / m.busV;
                boolean compressor = m.refrigeratorW > refrigerator.standingW();
                onA += (compressor ? refrigerator.compressorW() + refrigerator.standingW() : m.refrigeratorW) / m.busV;
            }
        }
        double atRestA = abs(givenA - meanA);
        double allOnA = abs(givenA - (onA > meanA ? onA : meanA));
        return atRestA > allOnA ? atRestA : allOnA;
    }

    private double inverterOnW(Minute m, RunState state) {
        double cooling = cooler != null && cooler.onInverter() ? coolerOnW(m, state) : 0;
        double outlets = outletOnW[m.leftPattern] + cooling;
        double held = outlets < inverter.ratedW() ? outlets : inverter.ratedW();
        return m.inverterAskedW > 0 ? inverter.inputW(held > m.outletW ? held : m.outletW) : 0;
    }

    private double coolerOnW(Minute m, RunState state) {
        boolean whole = m.coolingW > 0 && !cooler.variableSpeed();
        double fullW = whole ? state.cooler.fullInputW(m.outsideC) : 0;
        return fullW > m.coolingW ? fullW : m.coolingW;
    }

    private static double abs(double x) {
        return x < 0 ? -x : x;
    }

    CircuitLog log() {
        return new CircuitLog(
                clock,
                currentA,
                airC,
                secondMostA,
                BankTerminals.of(plan.variant().design()));
    }
}
