package ampdays.battery;

import java.util.Optional;

/**
 * A lead-acid bank: two wells of charge, rest voltage by the fill of the well at hand, charge efficiency by state of
 * charge, set points by temperature. The current of the step before sets the efficiency of this one, a lag that keeps the
 * step in closed form. Leaves out ageing and the change of resistance with temperature.
 */
public final class LeadAcidBattery extends Battery {
    /** State of charge below which a charger that floats begins a new absorption; practice. */
    private static final double ABSORB_AGAIN_SHARE = 0.95;

    private static final double LEAST_EFFICIENCY = 1e-3;
    private static final double MOST_RATIO = 1e6;

    private final BankSpec spec;
    private final BankSpec.LeadAcid cells;
    private final KineticWells wells;
    private final double wholeAh;
    private final double availableWholeAh;
    private final double tenHourA;
    private final double tailA;
    private double q1Ah;
    private double q2Ah;
    private double chargedA;
    private boolean floats;

    private double efficiency;
    private double driftOhm;
    private double polarOhm;

    LeadAcidBattery(BankSpec spec, BankSpec.LeadAcid cells, double startC, double stepS) {
        super(spec, cells.chargeSteps(), wholeAh(spec, cells), startC, stepS);
        this.spec = spec;
        this.cells = cells;
        this.wells = new KineticWells(cells.availableShare(), cells.ratePerH(), stepS / 3600);
        this.wholeAh = wholeAh(spec, cells);
        this.availableWholeAh = cells.availableShare() * wholeAh;
        this.tenHourA = wholeAh * KineticWells.fullBatteryA(cells.availableShare(), cells.ratePerH(), 10);
        this.tailA = spec.tailC() * spec.capacityAh();
        this.q1Ah = availableWholeAh * soc;
        this.q2Ah = (wholeAh - availableWholeAh) * soc;
    }

    private static double wholeAh(BankSpec spec, BankSpec.LeadAcid cells) {
        double ratedAh = spec.capacityAh() * spec.capacityHealth();
        return KineticWells.wholeAh(cells.availableShare(), cells.ratePerH(), ratedAh, cells.ratedH());
    }

    @Override
    void takeCharge(Battery before) {
        if (before instanceof LeadAcidBattery same) {
            q1Ah = same.q1Ah * (availableWholeAh / same.availableWholeAh);
            q2Ah = same.q2Ah * ((wholeAh - availableWholeAh) / (same.wholeAh - same.availableWholeAh));
            chargedA = same.chargedA;
            floats = same.floats;
        } else {
            q1Ah = availableWholeAh * soc;
            q2Ah = (wholeAh - availableWholeAh) * soc;
        }
    }

    @Override
    public void open() {
        double restAh = wells.availableAh(q1Ah, q2Ah, 0);
        double slopeV = spec.seriesCells() * LeadAcidPhysics.slopeV(temperatureC) / availableWholeAh;
        double atHandV = spec.seriesCells() * LeadAcidPhysics.cellV(q1Ah / availableWholeAh, temperatureC);
        emfV = atHandV + slopeV * (restAh - q1Ah) / 2;
        driftOhm = slopeV * wells.availableA() / 2;
        efficiency = LeadAcidPhysics.chargeEfficiency(soc, chargedA / tenHourA);
        efficiency = efficiency > LEAST_EFFICIENCY ? efficiency : LEAST_EFFICIENCY;
        polarOhm = spec.seriesCells() * LeadAcidPhysics.chargingOhm(soc, spec.capacityAh());
        chargeOhm = restOhm + polarOhm + efficiency * driftOhm;
        dischargeOhm = restOhm + driftOhm;
        floorShare = 1 - LeadAcidPhysics.capacityShare(temperatureC);
        double rateA = openProtection();
        floats = floats && soc >= ABSORB_AGAIN_SHARE;
        double setPointV = LeadAcidPhysics.compensatedV(
                floats ? cells.floatV() : spec.absorptionV(), cells.compensationVK(), temperatureC);
        double roomA = (wells.maxChargeA(q1Ah, q2Ah, wholeAh) + standbyA) / efficiency;
        double leftA = wells.maxDischargeA(q1Ah, q2Ah) - standbyA;
        double reachA = (soc - floorShare) * fullA - standbyA;
        double absorptionA = (setPointV - emfV) / chargeOhm;
        double nearA = absorptionA;
        if (roomA < absorptionA) {
            nearA = roomA;
            holdSetPoint(absorptionA / roomA);
        }
        offer(rateA, nearA, nearA, leftA < reachA ? leftA : reachA);
        if (floats && chargeLimit == ChargeLimit.NEAR_FULL) {
            chargeLimit = ChargeLimit.FULL;
        }
    }

    /** Where the wells take less than the set point would drive, the rest of its voltage is lost within the cells. */
    private void holdSetPoint(double ratio) {
        if (ratio > 1 && ratio < MOST_RATIO) {
            polarOhm += (ratio - 1) * chargeOhm;
            chargeOhm *= ratio;
        }
    }

    @Override
    public void settle(double currentA, double busV, double cabinC) {
        boolean charges = currentA > 0;
        double keptA = charges ? currentA * efficiency : currentA;
        double midV = emfV + driftOhm * keptA;
        double leftA = wells.maxDischargeA(q1Ah, q2Ah) + keptA;
        double standbyNowA = standbyA < leftA ? standbyA : leftA > 0 ? leftA : 0;
        double outA = standbyNowA - keptA;
        double q1EndAh = wells.availableAh(q1Ah, q2Ah, outA);
        q2Ah = wells.boundAh(q1Ah, q2Ah, outA);
        q1Ah = q1EndAh > 0 ? q1EndAh : 0;
        double next = (q1Ah + q2Ah) / wholeAh;
        soc = next > 1 ? 1 : next;
        floats = floats || (charges && currentA >= chargeMaxA && currentA <= tailA);
        chargedA = charges ? currentA : 0;

        storedW = midV * (keptA - standbyNowA);
        resistanceW = (charges ? restOhm + polarOhm : restOhm) * currentA * currentA;
        chargeLossW = midV * (currentA - keptA);
        standbyW = midV * standbyNowA;
        settleHeatAndLoads(busV, cabinC);
    }

    @Override
    public Optional<Ageing> ageing() {
        return Optional.empty();
    }
}
