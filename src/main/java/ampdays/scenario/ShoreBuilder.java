package ampdays.scenario;

import ampdays.battery.ShoreChargerSpec;
import java.util.Optional;

/** Makes the record of the shore charger from its values. */
final class ShoreBuilder {
    private final Values values;
    private final ProblemList read;

    ShoreBuilder(Values values, ProblemList read) {
        this.values = values;
        this.read = read;
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
