package ampdays.scenario;

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
