package ampdays.sim;

import ampdays.battery.Battery;
import ampdays.cooling.Cooler;
import ampdays.cooling.CoolerSpec;
import ampdays.load.InverterSpec;

/**
 * The half second in which a fixed-speed compressor starts, on top of everything else that runs. It is too short for the
 * energy account, but inverter, bank and the air conditioner's own low-voltage protection must stand it. The sag is that
 * of the bank's resistance; what capacitors hold up is left out.
 */
final class StartSurge {
    private StartSurge() {}

    /** @param inverter null when the air conditioner hangs on the bank */
    static void meet(Minute m, Battery bank, Cooler cooler, CoolerSpec spec, InverterSpec inverter) {
        double moreW = cooler.startW() - m.coolingAskedW;
        m.startOutletW = 0;
        m.startSagV = 0;
        if (inverter != null) {
            double peakW = m.outletW + moreW;
            m.startOutletW = peakW > inverter.surgeW() ? peakW : 0;
            moreW = inverter.inputW(peakW) - m.inverterAskedW;
        }
        double bankA = m.bankA - moreW / m.busV;
        m.startBankA = -bankA > bank.dischargeMaxA() ? -bankA : 0;
        double sagV = m.busV - moreW / m.busV * bank.dischargeOhm();
        if (sagV < spec.cutOutV()) {
            m.startSagV = sagV;
            cooler.trip();
        }
    }
}
