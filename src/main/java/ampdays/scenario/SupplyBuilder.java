package ampdays.scenario;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactorySpec;
import ampdays.alternator.Fuel;
import ampdays.battery.BankSpec;
import ampdays.battery.ShoreChargerSpec;
import ampdays.units.Dimension;
import java.util.Optional;

/** Makes the records of the bank and of what charges it from their values. */
final class SupplyBuilder {
    private final Values values;
    private final ProblemList read;

    SupplyBuilder(Values values, ProblemList read) {
        this.values = values;
        this.read = read;
    }

    Optional<BankSpec> bank() {
        if (values.number("battery.reconnect") < values.number("battery.cut-out")) {
            read.add(
                    "battery.reconnect",
                    "battery.reconnect lies below battery.cut-out, "
                            + Dimension.SHARE.show(values.number("battery.cut-out")) + ". Write a higher share.");
            return Optional.empty();
        }
        if (values.number("battery.tail") > values.number("battery.charge-rate")) {
            read.add("battery.tail", "battery.tail lies above battery.charge-rate. Write a lower one, like 0.05 C.");
            return Optional.empty();
        }
        return read.build("battery", () -> {
            read.number("battery.capacity");
            return new BankSpec(
                    SupplySections.capacityAh(values),
                    read.count("battery.cells"),
                    read.number("battery.resistance"),
                    read.number("battery.charge-rate"),
                    read.number("battery.charge-limit"),
                    read.number("battery.discharge-limit"),
                    read.number("battery.absorption"),
                    read.number("battery.taper-from"),
                    read.number("battery.tail"),
                    read.number("battery.coulombic-efficiency"),
                    read.number("battery.self-discharge"),
                    read.number("battery.electronics"),
                    read.number("battery.start"),
                    read.number("battery.cut-out"),
                    read.number("battery.cut-out-voltage"),
                    read.number("battery.reconnect"),
                    read.number("battery.heat-capacity"),
                    read.number("battery.heat-conductance"));
        });
    }

    Optional<EngineSpec> engine() {
        return read.build(
                "engine",
                () -> new EngineSpec(
                        Fuel.valueOf(LivingBuilder.constant(read.word("engine.fuel"))),
                        read.number("engine.idle"),
                        read.number("engine.town"),
                        read.number("engine.highway"),
                        read.number("engine.idle-fuel"),
                        read.number("engine.idle-rise"),
                        read.number("engine.town-rise"),
                        read.number("engine.highway-rise"),
                        read.number("engine.rise-time") / 60));
    }

    Optional<FactorySpec> factory() {
        String name = "factory-alternator";
        if (!values.has(name)) {
            return Optional.empty();
        }
        Optional<AlternatorSpec> alternator = alternator(name);
        double charger = read.number(name + ".charger");
        if (alternator.isEmpty()) {
            return Optional.empty();
        }
        return read.build(
                name,
                () -> new FactorySpec(
                        alternator.get(),
                        read.number(name + ".vehicle-idle"),
                        read.number(name + ".vehicle-driving"),
                        charger,
                        read.number(name + ".charger-efficiency")));
    }

    Optional<AlternatorSpec> second() {
        String name = "second-alternator";
        return values.has(name) ? alternator(name) : Optional.empty();
    }

    private Optional<AlternatorSpec> alternator(String name) {
        if (values.number(name + ".cut-back-to") <= values.number(name + ".cut-back-from")) {
            read.add(
                    name + ".cut-back-to",
                    name + ".cut-back-to is not above " + name + ".cut-back-from, "
                            + Dimension.TEMPERATURE.show(values.number(name + ".cut-back-from"))
                            + ". Write a higher temperature.");
            return Optional.empty();
        }
        return read.build(
                name,
                () -> new AlternatorSpec(
                        read.number(name + ".rated"),
                        read.number(name + ".cut-in"),
                        read.number(name + ".curve"),
                        read.number(name + ".pulley"),
                        read.number(name + ".set-point"),
                        read.number(name + ".cap"),
                        read.number(name + ".start-delay"),
                        read.number(name + ".ramp"),
                        read.number(name + ".cut-back-from"),
                        read.number(name + ".cut-back-to"),
                        read.number(name + ".belt"),
                        read.number(name + ".belt-speed"),
                        read.number(name + ".efficiency"),
                        read.number(name + ".winding-capacity"),
                        read.number(name + ".case-capacity"),
                        read.number(name + ".winding-to-case"),
                        read.number(name + ".winding-to-air"),
                        read.number(name + ".case-to-air"),
                        read.number(name + ".cable")));
    }

    Optional<ShoreChargerSpec> shore() {
        if (!values.has("shore-charger")) {
            return Optional.empty();
        }
        return read.build(
                "shore-charger",
                () -> new ShoreChargerSpec(
                        read.number("shore-charger.rated"),
                        read.number("shore-charger.efficiency"),
                        read.number("shore-charger.hook-up")));
    }
}
