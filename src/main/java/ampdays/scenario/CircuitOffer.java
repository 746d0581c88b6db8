package ampdays.scenario;

import ampdays.load.LoadSpec;
import ampdays.units.QuantityException;
import ampdays.wiring.Ampacity;
import ampdays.wiring.CableRun;
import ampdays.wiring.Conductor;
import ampdays.wiring.End;
import ampdays.wiring.Fault;
import ampdays.wiring.Harness;
import ampdays.wiring.Harness.Side;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Circuits that suit the components of a design, for a scenario that names none: sized by the plates of the components, with
 * lengths and air of a usual van. All of it is a guess to begin with.
 */
public final class CircuitOffer {
    private static final double BONNET_C = 85;
    private static final double CABIN_C = 50;
    private static final double ROOF_C = 75;
    private static final double WARM_CONDUCTOR_C = 60;
    private static final double JOINTS_OHM = 4 * 0.00005;
    private static final double BONNET_INSULATION_C = 125;
    private static final double INSULATION_C = 105;
    /** Input of an air conditioner on the hottest day over that at its rating point. */
    private static final double HOT_DAY = 1.3;

    /** Of a bank in charge, per 12 V of it, V. */
    private static final double CHARGING_V = 14;

    /** Lowest voltage at a charger's input over the nominal one of the vehicle: 12 V of 12.8 V. */
    private static final double CHARGER_INPUT_SHARE = 12 / 12.8;

    private final Design design;
    private final double systemV;
    private final double twelves;
    private final double faultA;
    private final Map<String, String> texts = new LinkedHashMap<>();

    private CircuitOffer(Values values, Design design) {
        this.design = design;
        this.systemV = design.voltages().bankV();
        this.twelves = BatterySection.twelveVolts(values);
        int strings = (int) values.number("battery.strings");
        int cells = (int) values.number("battery.cells");
        double stringAh = BatterySection.capacityAh(values) / strings;
        this.faultA = Fault.bankA(!BatterySection.isLeadAcid(values), cells, strings, stringAh);
    }

    /** These values with the circuits offered for them; values that name circuits stay as they are. */
    public static Values added(Values values, Design design) {
        Values with = values;
        for (Map.Entry<String, String> text : of(values, design).entrySet()) {
            with = with.with(text.getKey(), text.getValue());
        }
        return with;
    }

    /** The circuits offered, path to text; empty when the values name some. */
    public static Map<String, String> of(Values values, Design design) {
        return values.has("circuits") ? Map.of() : new CircuitOffer(values, design).texts();
    }

    private Map<String, String> texts() {
        double givesA = sources();
        double takesA = uses();
        Run bank = new Run("bank to bus", "bank", "bus", 0.5, "cabin", CABIN_C, INSULATION_C, 0.03);
        run(bank, Math.min(Math.max(givesA, takesA), design.bank().dischargeLimitA()), true);
        return texts;
    }

    private double sources() {
        double sum = 0;
        if (design.second().isPresent()) {
            double currentA = Math.min(
                    design.second().get().ratedA(), design.second().get().capA());
            String name = "second alternator to bus";
            run(
                    new Run(name, "second alternator", "bus", 5, "under bonnet", BONNET_C, BONNET_INSULATION_C, 0.10),
                    currentA,
                    true);
            texts.put("circuits." + name + ".sensed", "at the bank (guess)");
            sum += currentA;
        }
        if (design.factory().isPresent()) {
            double outA = design.factory().get().charger().ratedA();
            double ratio = CHARGING_V
                    * twelves
                    / (CHARGER_INPUT_SHARE * design.voltages().vehicleV());
            double inA = outA * ratio / design.factory().get().charger().efficiency();
            run(
                    new Run(
                            "start battery to charger",
                            "start battery",
                            "DC-DC charger",
                            5,
                            "under bonnet",
                            BONNET_C,
                            BONNET_INSULATION_C,
                            0.03),
                    inA,
                    true);
            run(new Run("charger to bus", "DC-DC charger", "bus", 1, "cabin", CABIN_C, INSULATION_C, 0.03), outA, true);
            sum += outA;
        }
        if (design.solar().isPresent()) {
            double ratedW = design.solar().get().ratedW();
            double panelsA = ratedW / design.solar().get().controller().stringV();
            double outA = Math.min(design.solar().get().controller().mostA(), ratedW / systemV);
            run(
                    new Run(
                            "panels to controller",
                            "solar panels",
                            "solar controller",
                            4,
                            "roof",
                            ROOF_C,
                            INSULATION_C,
                            0.03),
                    panelsA,
                    false);
            run(
                    new Run("controller to bus", "solar controller", "bus", 1.5, "cabin", CABIN_C, INSULATION_C, 0.03),
                    outA,
                    true);
            sum += outA;
        }
        if (design.shore().isPresent()) {
            double outA = design.shore().get().ratedA();
            run(
                    new Run("shore charger to bus", "shore charger", "bus", 1, "cabin", CABIN_C, INSULATION_C, 0.03),
                    outA,
                    true);
            sum += outA;
        }
        return sum;
    }

    private double uses() {
        double sum = 0;
        if (design.inverter().isPresent()) {
            double currentA =
                    design.inverter().get().inputW(design.inverter().get().ratedW()) / systemV;
            run(new Run("inverter", "bus", "inverter", 1, "cabin", CABIN_C, INSULATION_C, 0.03), currentA, true);
            sum += currentA;
        }
        if (design.cooler().isPresent() && !design.cooler().get().onInverter()) {
            double inputW = HOT_DAY
                    * design.cooler().get().ratedCapacityW()
                    / design.cooler().get().ratedCop();
            double currentA = inputW / systemV;
            run(
                    new Run("air conditioner", "bus", "air conditioner", 4, "cabin", CABIN_C, INSULATION_C, 0.03),
                    currentA,
                    true);
            sum += currentA;
        }
        double panelA = design.loads().stream()
                .filter(load -> !load.onInverter())
                .mapToDouble(this::drawA)
                .sum();
        panelA += design.refrigerator()
                .map(r -> (r.compressorW() + r.standingW()) / systemV)
                .orElse(0.0);
        if (panelA > 0) {
            run(new Run("load panel", "bus", "load panel", 3, "cabin", CABIN_C, INSULATION_C, 0.03), panelA, true);
            sum += panelA;
        }
        return sum;
    }

    private double drawA(LoadSpec load) {
        return load.drawA() + load.drawW() / systemV;
    }

    /** A run to be sized. */
    private record Run(
            String name,
            String from,
            String to,
            double lengthM,
            String air,
            double airC,
            double insulationC,
            double drop) {
        Side side() {
            return Harness.side(End.named(from).orElseThrow(), End.named(to).orElseThrow());
        }
    }

    private void run(Run run, double currentA, boolean fused) {
        double floorA = Protection.CONTINUOUS_SHARE * currentA;
        double rating = Protection.ratings().stream()
                .filter(r -> r >= floorA)
                .findFirst()
                .orElse(floorA);
        Conductor conductor = conductor(run, currentA, rating);
        String path = "circuits." + run.name() + ".";
        texts.put(path + "from", run.from());
        texts.put(path + "to", run.to());
        texts.put(path + "length", number(run.lengthM()) + " m (guess)");
        texts.put(path + "conductor", conductor.label() + " (guess)");
        texts.put(path + "insulation", number(run.insulationC()) + " °C (guess)");
        texts.put(path + "air", run.air() + " (guess)");
        if (fused) {
            texts.put(path + "protection", kind(run).label() + " (guess)");
            texts.put(path + "rating", number(rating) + " A (guess)");
        }
    }

    /** The thinnest that carries the rating in its air and keeps the drop; the thickest if none does. */
    private Conductor conductor(Run run, double currentA, double ratingA) {
        List<Conductor> sizes;
        try {
            sizes = Conductor.parse("14 AWG").andLarger();
        } catch (QuantityException e) {
            throw new IllegalStateException(e);
        }
        double voltage = design.voltages().at(run.side());
        for (Conductor size : sizes) {
            double allowedA = Math.min(
                    Ampacity.allowedA(size.areaMm2(), run.insulationC(), 2, run.airC()),
                    Ampacity.thinConductorA(size.areaMm2()));
            double ohm = CableRun.loopOhm(run.lengthM(), size.ohmPerKm(WARM_CONDUCTOR_C), JOINTS_OHM);
            double dropShare = CableRun.dropShare(CableRun.dropV(ohm, currentA), voltage);
            if (allowedA >= ratingA && dropShare <= run.drop()) {
                return size;
            }
        }
        return sizes.get(sizes.size() - 1);
    }

    private ProtectionKind kind(Run run) {
        return run.side() == Side.VEHICLE || ProtectionKind.POST_FUSE.usualInterruptA(systemV) >= faultA
                ? ProtectionKind.POST_FUSE
                : ProtectionKind.CLASS_T_FUSE;
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }
}
