package ampdays.battery;

import java.util.Optional;

/** A bank of lithium iron phosphate. */
public final class LithiumBattery extends Battery {
    /** Temperature at which all of the charge is within reach, °C. */
    static final double WHOLE_FROM_C = 25;

    final double efficiency;
    final double perEfficiency;
    final double taperFromShare;
    final int seriesCells;
    final OpenCircuit openCircuit;
    private final OpenCircuit.Reading cell = new OpenCircuit.Reading();
    private final BankPhysics.ResistanceFactor resistanceFactor = new BankPhysics.ResistanceFactor();
    final double absorptionV;
    final double tailA;
    final double outOfReachPerK;
    final double standbyShare;
    final double sharePerA;
    final double driftOhmPerV;
    final Ageing ageing;
    private double driftOhm;
    private double ohmicOhm;

    /** @param openCircuit of one cell */
    LithiumBattery(BankSpec spec, BankSpec.Lithium cells, OpenCircuit openCircuit, double startC, double stepS) {
        super(spec, cells.chargeSteps(), spec.capacityAh() * spec.capacityHealth(), startC, stepS);
        this.efficiency = cells.coulombicEfficiency();
        this.perEfficiency = 1 / efficiency;
        this.taperFromShare = cells.taperFromShare();
        this.seriesCells = spec.seriesCells();
        this.openCircuit = openCircuit;
        this.absorptionV = spec.absorptionV();
        this.tailA = spec.tailC() * spec.capacityAh();
        this.outOfReachPerK = (1 - cells.coldShare()) / WHOLE_FROM_C;
        this.standbyShare = standbyA / fullA;
        this.sharePerA = 1 / fullA;
        this.driftOhmPerV = seriesCells * 0.5 / fullA;
        this.ageing = new Ageing(spec.capacityAh(), 1 - spec.capacityHealth(), stepS);
    }

    @Override
    void takeCharge(Battery before) {
        // the state of charge says it all
    }

    @Override
    public void open() {
        openCircuit.read(soc, temperatureC, cell);
        emfV = seriesCells * cell.cellV;
        driftOhm = cell.slopeV * driftOhmPerV;
        ohmicOhm = restOhm * resistanceFactor.at(temperatureC);
        chargeOhm = ohmicOhm + driftOhm;
        dischargeOhm = chargeOhm;
        double coldK = WHOLE_FROM_C - temperatureC;
        floorShare = coldK > 0 ? coldK * outOfReachPerK : 0;
        double rateA = openProtection();
        double limitA = rateA < chargeProtectionA ? rateA : chargeProtectionA;
        double nearA = BankPhysics.taperA(soc, limitA, tailA, taperFromShare);
        double aboveV = absorptionV - emfV;
        double absorbedA = aboveV / chargeOhm;
        nearA = absorbedA < nearA ? absorbedA : nearA;
        double roomA = ((1 - soc) * fullA + standbyA) * perEfficiency;
        offer(rateA, nearA, roomA, (soc - floorShare) * fullA - standbyA);
    }

    @Override
    public void settle(double currentA, double busV, double cabinC) {
        double midV = emfV + driftOhm * currentA;
        double keptA = currentA > 0 ? currentA * efficiency : currentA;
        double charged = soc + keptA * sharePerA;
        double drained = standbyShare < charged ? standbyShare : charged > 0 ? charged : 0;
        double next = charged - drained;
        soc = next < 0 ? 0 : next > 1 ? 1 : next;

        double standbyNowA = drained * fullA;
        storedW = midV * (keptA - standbyNowA);
        resistanceW = ohmicOhm * currentA * currentA;
        chargeLossW = midV * (currentA - keptA);
        standbyW = midV * standbyNowA;
        ageing.step(currentA, temperatureC, soc);
        settleHeatAndLoads(busV, cabinC);
    }

    @Override
    public Optional<Ageing> ageing() {
        return Optional.of(ageing);
    }
}
