package ampdays.scenario;

import ampdays.battery.BankSpec;
import ampdays.battery.ChargeSteps;
import ampdays.units.Dimension;
import ampdays.units.QuantityException;
import java.util.Optional;

/** Makes the record of the bank from its values. */
final class BankBuilder {
    private final Values values;
    private final ProblemList read;

    BankBuilder(Values values, ProblemList read) {
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
        if (BatterySection.isLeadAcid(values) && read.count("battery.cells") % 3 != 0) {
            read.add(
                    "battery.cells",
                    "battery.cells is " + values.word("battery.cells")
                            + ", but blocks of lead-acid have three or six. Write 6 for 12 V, 12 for 24 V.");
            return Optional.empty();
        }
        return read.build("battery", () -> {
            read.number("battery.capacity");
            return new BankSpec(
                    BatterySection.capacityAh(values),
                    read.count("battery.cells"),
                    read.number("battery.resistance"),
                    read.number("battery.health"),
                    read.number("battery.health-resistance"),
                    read.number("battery.charge-limit"),
                    read.number("battery.discharge-limit"),
                    read.number("battery.absorption"),
                    read.number("battery.tail"),
                    read.number("battery.self-discharge"),
                    read.number("battery.electronics"),
                    read.number("battery.start"),
                    read.number("battery.heat-capacity"),
                    read.number("battery.heat-conductance"),
                    new BankSpec.CutOut(
                            read.number("battery.cut-out"),
                            read.number("battery.cut-out-voltage"),
                            read.number("battery.reconnect")),
                    protection(),
                    new BankSpec.Strings(read.count("battery.strings"), read.number("battery.link")),
                    chemistry());
        });
    }

    private BankSpec.Protection protection() {
        return new BankSpec.Protection(
                read.number("battery.charge-cold"),
                read.number("battery.charge-hot"),
                read.number("battery.discharge-cold"),
                read.number("battery.discharge-hot"),
                read.number("battery.protection-band"),
                read.word("battery.over-current").equals("trips"),
                read.number("battery.trip-wait"),
                read.word("battery.protection").equals("open"));
    }

    private BankSpec.Chemistry chemistry() {
        return BatterySection.isLeadAcid(values)
                ? new BankSpec.LeadAcid(
                        read.number("battery.rated-time") / 3600,
                        read.number("battery.at-hand"),
                        read.number("battery.well-rate"),
                        chargeSteps(ChargeSteps.ANY_TEMPERATURE),
                        read.number("battery.float"),
                        read.number("battery.compensation") * read.count("battery.cells"))
                : new BankSpec.Lithium(
                        chargeSteps(ChargeSteps.PUBLISHED),
                        read.number("battery.taper-from"),
                        read.number("battery.coulombic-efficiency"),
                        read.number("battery.cold-capacity"));
    }

    private ChargeSteps chargeSteps(ChargeSteps published) {
        String written = values.word("battery.charge-limits");
        if (written.isEmpty()) {
            return published.times(values.number("battery.charge-rate") * BatterySection.capacityAh(values));
        }
        try {
            return ChargeLimitText.parse(written, BatterySection.capacityAh(values));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
