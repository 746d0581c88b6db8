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
import ampdays.wiring.Circuit;
import ampdays.wiring.End;
import ampdays.wiring.SideVoltages;
import java.util.List;
import java.util.Optional;

/** One van: every component of it, or none where the design has none. */
public record Design(
        CabinSpec cabin,
        Optional<CoolerSpec> cooler,
        Optional<PreCooling> preCooling,
        Optional<DashCooling> dash,
        Optional<RefrigeratorSpec> refrigerator,
        List<LoadSpec> loads,
        ShedSpec shed,
        Optional<InverterSpec> inverter,
        BankSpec bank,
        Optional<SolarSpec> solar,
        EngineSpec engine,
        Optional<FactorySpec> factory,
        Optional<AlternatorSpec> second,
        Optional<ShoreChargerSpec> shore,
        SideVoltages voltages,
        List<Circuit> circuits) {
    public Design {
        loads = List.copyOf(loads);
        circuits = List.copyOf(circuits);
        if (inverter.isEmpty() && loads.stream().anyMatch(LoadSpec::onInverter)) {
            throw new IllegalArgumentException("a load hangs on the inverter, but there is no inverter");
        }
        if (inverter.isEmpty() && cooler.map(CoolerSpec::onInverter).orElse(false)) {
            throw new IllegalArgumentException("the air conditioner hangs on the inverter, but there is no inverter");
        }
    }

    /** Whether the design has what a circuit ends at. */
    public boolean has(End end) {
        return switch (end.point()) {
            case BANK, BUS, LOAD_PANEL -> true;
            case INVERTER -> inverter.isPresent();
            case AIR_CONDITIONER -> cooler.isPresent();
            case REFRIGERATOR -> refrigerator.isPresent();
            case SHORE_CHARGER -> shore.isPresent();
            case SOLAR_CONTROLLER, SOLAR_PANELS -> solar.isPresent();
            case SECOND_ALTERNATOR -> second.isPresent();
            case CHARGER, START_BATTERY, FACTORY_ALTERNATOR -> factory.isPresent();
            case LOAD -> loads.stream().anyMatch(l -> l.name().equals(end.load()));
        };
    }
}
