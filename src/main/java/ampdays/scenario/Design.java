package ampdays.scenario;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactorySpec;
import ampdays.battery.BankSpec;
import ampdays.battery.ShoreChargerSpec;
import ampdays.cabin.CabinSpec;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.RefrigeratorSpec;
import ampdays.load.InverterSpec;
import ampdays.load.LoadSpec;
import ampdays.pv.SolarSpec;
import java.util.List;
import java.util.Optional;

/** One van: every component of it, or none where the design has none. */
public record Design(
        CabinSpec cabin,
        Optional<CoolerSpec> cooler,
        Optional<RefrigeratorSpec> refrigerator,
        List<LoadSpec> loads,
        Optional<InverterSpec> inverter,
        BankSpec bank,
        Optional<SolarSpec> solar,
        EngineSpec engine,
        Optional<FactorySpec> factory,
        Optional<AlternatorSpec> second,
        Optional<ShoreChargerSpec> shore) {
    public Design {
        loads = List.copyOf(loads);
        if (inverter.isEmpty() && loads.stream().anyMatch(LoadSpec::onInverter)) {
            throw new IllegalArgumentException("a load hangs on the inverter, but there is no inverter");
        }
    }
}
