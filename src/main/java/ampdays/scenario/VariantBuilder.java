package ampdays.scenario;

import ampdays.load.LoadSpec;
import ampdays.wiring.Circuit;
import ampdays.wiring.SideVoltages;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes a variant, ready to be simulated, from the values of a design. */
public final class VariantBuilder {
    private VariantBuilder() {}

    /**
     * Builds one variant.
     *
     * @throws ScenarioException when values are missing or contradict each other; it names all of them
     */
    public static Variant build(String name, Values values) throws ScenarioException {
        ProblemList read = new ProblemList(values);
        for (Section section : Registry.sections()) {
            if (section.presence() == Section.Presence.REQUIRED && !values.isSaid(section.name())) {
                read.add(
                        section.name(),
                        "The section " + section.name() + " is missing. Write it with " + least(section, values) + ".");
            }
        }
        if (!read.problems().isEmpty()) {
            throw new ScenarioException(read.problems());
        }
        String weather = read.word("weather");
        Optional<Site> site = read.build(
                "place",
                () -> new Site(
                        read.number("place.latitude"), read.number("place.longitude"), read.number("place.elevation")));
        var trip = new TripBuilder(values, read).trip();
        var design = design(values, read);
        if (!read.problems().isEmpty()) {
            throw new ScenarioException(read.problems());
        }
        return new Variant(
                name,
                site.orElseThrow(),
                weather,
                values.number(TripSections.WEATHER_OFFSET),
                trip.orElseThrow(),
                design.orElseThrow());
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

    private static Optional<Design> design(Values values, ProblemList read) {
        LivingBuilder living = new LivingBuilder(values, read);
        AlternatorBuilder alternators = new AlternatorBuilder(values, read);
        var cabin = living.cabin();
        var cooler = living.cooler();
        var preCooling = living.preCooling();
        var dash = living.dash();
        var refrigerator = living.refrigerator();
        List<LoadSpec> loads = living.loads();
        var shed = living.shed();
        var inverter = living.inverter();
        var bank = new BankBuilder(values, read).bank();
        var solar = new SolarBuilder(values, read).solar();
        var engine = alternators.engine();
        var factory = alternators.factory();
        var second = alternators.second();
        var shore = new ShoreBuilder(values, read).shore();
        SideVoltages voltages = CircuitBuilder.voltages(values);
        List<Circuit> circuits = new CircuitBuilder(values, voltages, read).circuits();
        if (!read.problems().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Design(
                cabin.orElseThrow(),
                cooler,
                preCooling,
                dash,
                refrigerator,
                loads,
                shed.orElseThrow(),
                inverter,
                bank.orElseThrow(),
                solar,
                engine.orElseThrow(),
                factory,
                second,
                shore,
                voltages,
                circuits));
    }
}
