package ampdays.scenario;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactorySpec;
import ampdays.battery.BankSpec;
import ampdays.battery.ShoreChargerSpec;
import ampdays.cabin.CabinSpec;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.DashCooling;
import ampdays.cooling.RefrigeratorSpec;
import ampdays.load.InverterSpec;
import ampdays.load.LoadSpec;
import ampdays.load.PreCooling;
import ampdays.load.ShedSpec;
import ampdays.pv.SolarSpec;
import ampdays.trip.Trip;
import ampdays.wiring.Circuit;
import ampdays.wiring.SideVoltages;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Makes variants one after another, and anew only what looks up a value that the last one was given otherwise: of a
 * thousand banks the timetable is read once. Not for use by several threads at once.
 */
public final class VariantBuilder {
    private final List<Part<?>> parts = new ArrayList<>();
    private final Part<Optional<Site>> site = new Part<>();
    private final Part<Optional<Trip>> trip = new Part<>();
    private final Part<Optional<CabinSpec>> cabin = new Part<>();
    private final Part<Optional<CoolerSpec>> cooler = new Part<>();
    private final Part<Optional<PreCooling>> preCooling = new Part<>();
    private final Part<Optional<DashCooling>> dash = new Part<>();
    private final Part<Optional<RefrigeratorSpec>> refrigerator = new Part<>();
    private final Part<List<LoadSpec>> loads = new Part<>();
    private final Part<Optional<ShedSpec>> shed = new Part<>();
    private final Part<Optional<InverterSpec>> inverter = new Part<>();
    private final Part<Optional<BankSpec>> bank = new Part<>();
    private final Part<Optional<SolarSpec>> solar = new Part<>();
    private final Part<Optional<EngineSpec>> engine = new Part<>();
    private final Part<Optional<FactorySpec>> factory = new Part<>();
    private final Part<Optional<AlternatorSpec>> second = new Part<>();
    private final Part<Optional<ShoreChargerSpec>> shore = new Part<>();
    private final Part<SideVoltages> voltages = new Part<>();
    private final Part<List<Circuit>> circuits = new Part<>();
    private final Part<List<String>> pricesRefused = new Part<>();
    private Values last;
    private ProblemList read;
    private Set<String> lookedUp = new HashSet<>();

    /** One record of a variant, and the paths that its builder looked up; nothing is kept of one with problems. */
    private final class Part<T> {
        private T made;
        private Set<String> lookedAt;

        Part() {
            parts.add(this);
        }

        T of(Supplier<T> builder) {
            if (made == null) {
                lookedUp = new HashSet<>();
                int problems = read.count();
                T fresh = builder.get();
                if (read.count() > problems) {
                    return fresh;
                }
                made = fresh;
                lookedAt = lookedUp;
            }
            return made;
        }

        void forgetIfAnyOf(Unlike unlike) {
            if (made != null && unlike.isAnyOf(lookedAt)) {
                made = null;
            }
        }
    }

    /**
     * Makes a single variant.
     *
     * @throws ScenarioException when values are missing or contradict each other; it names all of them
     */
    public static Variant build(String name, Values values) throws ScenarioException {
        return new VariantBuilder().next(name, values);
    }

    /**
     * Makes one variant after another.
     *
     * @throws ScenarioException when values are missing or contradict each other; it names all of them
     */
    public Variant next(String name, Values values) throws ScenarioException {
        if (last != null) {
            Unlike unlike = values.unlike(last);
            parts.forEach(part -> part.forgetIfAnyOf(unlike));
        }
        last = values;
        Values told = values.toldTo(path -> lookedUp.add(path));
        read = new ProblemList(told);
        requireSections(values);
        String weather = read.word("weather");
        Optional<Site> place = site.of(() -> read.build(
                "place",
                () -> new Site(
                        read.number("place.latitude"),
                        read.number("place.longitude"),
                        read.number("place.elevation"))));
        Optional<Trip> travelled = trip.of(() -> new TripBuilder(told, read).trip());
        pricesRefused.of(() -> PriceSection.refused(told, read));
        Optional<Design> design = design(told);
        requireNoProblem();
        return new Variant(
                name,
                place.orElseThrow(),
                weather,
                values.number(TripSections.WEATHER_OFFSET),
                travelled.orElseThrow(),
                design.orElseThrow());
    }

    private void requireSections(Values values) throws ScenarioException {
        for (Section section : Registry.sections()) {
            if (section.presence() == Section.Presence.REQUIRED && !values.isSaid(section.name())) {
                read.add(
                        section.name(),
                        "The section " + section.name() + " is missing. Write it with " + least(section, values) + ".");
            }
        }
        requireNoProblem();
    }

    private void requireNoProblem() throws ScenarioException {
        if (read.count() > 0) {
            throw new ScenarioException(read.problems());
        }
    }

    /** The keys that a section must say at least. */
    private static String least(Section section, Values values) {
        return section.parameters().stream()
                .filter(p -> p.key().equals("preset")
                        || p.path().equals("trip.timetable")
                        || (p.fallback() instanceof Fallback.Required && !values.presetWouldGive(p.path())))
                .map(Parameter::key)
                .collect(Collectors.joining(", "));
    }

    private Optional<Design> design(Values values) {
        LivingBuilder living = new LivingBuilder(values, read);
        AlternatorBuilder alternators = new AlternatorBuilder(values, read);
        var itsCabin = cabin.of(living::cabin);
        var itsCooler = cooler.of(living::cooler);
        var itsPreCooling = preCooling.of(living::preCooling);
        var itsDash = dash.of(living::dash);
        var itsRefrigerator = refrigerator.of(living::refrigerator);
        var itsLoads = loads.of(living::loads);
        var itsShed = shed.of(living::shed);
        var itsInverter = inverter.of(living::inverter);
        var itsBank = bank.of(() -> new BankBuilder(values, read).bank());
        var itsSolar = solar.of(() -> new SolarBuilder(values, read).solar());
        var itsEngine = engine.of(alternators::engine);
        var itsFactory = factory.of(alternators::factory);
        var itsSecond = second.of(alternators::second);
        var itsShore = shore.of(() -> new ShoreBuilder(values, read).shore());
        var itsVoltages = voltages.of(() -> CircuitBuilder.voltages(values));
        var itsCircuits =
                circuits.of(() -> new CircuitBuilder(values, CircuitBuilder.voltages(values), read).circuits());
        if (read.count() > 0) {
            return Optional.empty();
        }
        return Optional.of(new Design(
                itsCabin.orElseThrow(),
                itsCooler,
                itsPreCooling,
                itsDash,
                itsRefrigerator,
                itsLoads,
                itsShed.orElseThrow(),
                itsInverter,
                itsBank.orElseThrow(),
                itsSolar,
                itsEngine.orElseThrow(),
                itsFactory,
                itsSecond,
                itsShore,
                itsVoltages,
                itsCircuits));
    }
}
