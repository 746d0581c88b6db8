package ampdays.sim;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactorySpec;
import ampdays.alternator.TurningAlternator;
import ampdays.cabin.CabinSpec;
import ampdays.load.InverterSpec;
import ampdays.load.LoadSpec;
import ampdays.pv.SolarSpec;
import ampdays.scenario.Design;
import ampdays.scenario.Site;
import ampdays.scenario.Variant;
import ampdays.trip.Trip;
import ampdays.weather.WeatherSeries;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Everything about one option that is known before its first minute: timetable, sun and weather on roof and cabin, loads.
 * Immutable. A {@link Maker} shares the parts that options have in common.
 */
public final class RunPlan {
    private final Variant variant;
    private final TripClock clock;
    private final SkyPlan sky;
    private final RoofPlan roof;
    private final CabinPlan cabin;
    private final LoadPlan loads;
    /** Null without one. */
    private final TurningAlternator factory;

    private final TurningAlternator second;
    private final Measured measured;

    private RunPlan(
            Variant variant,
            TripClock clock,
            SkyPlan sky,
            RoofPlan roof,
            CabinPlan cabin,
            LoadPlan loads,
            TurningAlternator factory,
            TurningAlternator second,
            Measured measured) {
        this.variant = variant;
        this.clock = clock;
        this.sky = sky;
        this.roof = roof;
        this.cabin = cabin;
        this.loads = loads;
        this.factory = factory;
        this.second = second;
        this.measured = measured;
    }

    /**
     * The plan with what was measured in place of what it works out. Cabin, cooling and refrigerator go on as planned, but
     * take what was measured; panels, shade and people stay as planned where only the engine differs.
     */
    public RunPlan with(Measured instead) {
        TripClock running = instead.tellsEngine() ? clock.withEngine(instead) : clock;
        return new RunPlan(variant, running, sky, roof, cabin, loads, factory, second, instead);
    }

    /** The same for another variant that has all in common of which plans are made. */
    private RunPlan of(Variant other) {
        return new RunPlan(other, clock, sky, roof, cabin, loads, factory, second, measured);
    }

    Measured measured() {
        return measured;
    }

    public Variant variant() {
        return variant;
    }

    public TripClock clock() {
        return clock;
    }

    public SkyPlan sky() {
        return sky;
    }

    /** Whether the alternators of another plan and the engines that turn them are the same. */
    public boolean sameAlternators(RunPlan other) {
        Design a = variant.design();
        Design b = other.variant.design();
        return a.engine().equals(b.engine())
                && a.second().equals(b.second())
                && a.factory().equals(b.factory());
    }

    /** What the panels could give per rated watt; null without panels. */
    RoofPlan roof() {
        return roof;
    }

    CabinPlan cabin() {
        return cabin;
    }

    LoadPlan loads() {
        return loads;
    }

    /** The factory alternator on its engine; null without one. */
    TurningAlternator factory() {
        return factory;
    }

    /** The second alternator on its engine; null without one. */
    TurningAlternator second() {
        return second;
    }

    /**
     * Makes plans and remembers the parts that were used last by what they are made of, other parts by being the same. Not for use by several threads at
     * once.
     */
    public static final class Maker {
        /** Parts of some five plans that have nothing in common: enough for options in turn, and a bound for long studies. */
        private static final int MOST_PARTS = 24;

        private final int stepSeconds;
        /** The one used longest ago first. */
        private final Map<Object, Object> parts = new LinkedHashMap<>(2 * MOST_PARTS, 0.75f, true);

        private List<Object> lastInputs = List.of();
        private RunPlan last;

        /** @param stepSeconds a divisor of 300 s; 60 s is the usual step */
        public Maker(int stepSeconds) {
            this.stepSeconds = stepSeconds;
        }

        public RunPlan plan(Variant variant, WeatherSeries asRead) {
            List<Object> inputs = inputs(variant, asRead);
            if (!inputs.equals(lastInputs)) {
                last = make(variant, asRead);
                lastInputs = inputs;
            }
            return last.of(variant);
        }

        /** All that a plan is made of; two designs in turn that differ in their banks have it in common. */
        private static List<Object> inputs(Variant variant, WeatherSeries asRead) {
            Design design = variant.design();
            return List.of(
                    asRead,
                    variant.weatherOffsetK(),
                    variant.site(),
                    variant.trip(),
                    design.solar(),
                    design.cabin(),
                    design.loads(),
                    design.inverter(),
                    design.shed(),
                    design.cooler().isPresent(),
                    design.refrigerator().isPresent(),
                    design.engine(),
                    design.factory(),
                    design.second());
        }

        private RunPlan make(Variant variant, WeatherSeries asRead) {
            double offsetK = variant.weatherOffsetK();
            WeatherSeries series = offsetK == 0
                    ? asRead
                    : part(
                            new OffsetKey(asRead, offsetK),
                            WeatherSeries.class,
                            () -> OtherWeather.warmer(asRead, offsetK));
            Trip trip = variant.trip();
            TripClock clock = part(new ClockKey(trip), TripClock.class, () -> TripClock.of(trip, stepSeconds));
            SkyPlan sky = part(
                    new SkyKey(trip.start(), trip.days(), trip.zone(), variant.site(), series),
                    SkyPlan.class,
                    () -> SkyPlan.of(variant.site(), series, clock));
            Optional<SolarSpec> solar = variant.design().solar();
            RoofPlan roof = solar.map(panels -> part(
                            new RoofKey(sky, clock, panels.perWatt()),
                            RoofPlan.class,
                            () -> RoofPlan.of(sky, clock, panels)))
                    .orElse(null);
            double panelM2 = solar.map(SolarSpec::areaM2).orElse(0.0);
            CabinSpec cabinSpec = variant.design().cabin();
            CabinPlan cabin = part(
                    new CabinKey(sky, clock, roof, cabinSpec, panelM2),
                    CabinPlan.class,
                    () -> CabinPlan.of(sky, clock, cabinSpec, roof, panelM2));
            List<LoadSpec> loadSpecs = variant.design().loads();
            Optional<InverterSpec> inverter = variant.design().inverter();
            double[] thresholds = Shedding.thresholds(variant.design());
            LoadPlan loads = part(
                    new LoadKey(
                            clock,
                            loadSpecs,
                            inverter,
                            Arrays.stream(thresholds).boxed().toList()),
                    LoadPlan.class,
                    () -> LoadPlan.of(clock, loadSpecs, inverter, thresholds));
            EngineSpec engine = variant.design().engine();
            Optional<AlternatorSpec> factory = variant.design().factory().map(FactorySpec::alternator);
            return new RunPlan(
                    variant,
                    clock,
                    sky,
                    roof,
                    cabin,
                    loads,
                    turning(factory, engine, sky.densityShare()),
                    turning(variant.design().second(), engine, sky.densityShare()),
                    Measured.NONE);
        }

        private TurningAlternator turning(Optional<AlternatorSpec> spec, EngineSpec engine, double densityShare) {
            return spec.map(alternator -> part(
                            new TurningKey(alternator, engine, densityShare),
                            TurningAlternator.class,
                            () -> new TurningAlternator(alternator, engine, densityShare, stepSeconds)))
                    .orElse(null);
        }

        private <T> T part(Object key, Class<T> type, Supplier<T> make) {
            Object known = parts.get(key);
            if (known == null) {
                known = make.get();
                parts.put(key, known);
                if (parts.size() > MOST_PARTS) {
                    parts.remove(parts.keySet().iterator().next());
                }
            }
            return type.cast(known);
        }

        private record ClockKey(Trip trip) {}

        private record OffsetKey(WeatherSeries series, double offsetK) {}

        /** Timetables share a sky. */
        private record SkyKey(LocalDate start, int days, ZoneId zone, Site site, WeatherSeries series) {}

        private record RoofKey(SkyPlan sky, TripClock clock, SolarSpec perWatt) {}

        private record CabinKey(SkyPlan sky, TripClock clock, RoofPlan roof, CabinSpec cabin, double panelM2) {}

        private record TurningKey(AlternatorSpec spec, EngineSpec engine, double densityShare) {}

        private record LoadKey(
                TripClock clock, List<LoadSpec> loads, Optional<InverterSpec> inverter, List<Double> thresholds) {}
    }
}
