package ampdays.commission.bench;

import ampdays.battery.BankPhysics;
import ampdays.battery.Battery;
import ampdays.cabin.Cabin;
import ampdays.cabin.CabinSpec;
import ampdays.cooling.Cooler;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.MoistAir;
import ampdays.scenario.Design;

/**
 * A shut cabin in the shade, nobody in it, as warm as the air outside at the start, cooled for an hour at the lowest
 * setting.
 */
final class CoolingRun {
    private static final double STEP_S = 60;
    private static final int MINUTES = 60;
    private static final int READ_AT_MINUTE = 5;

    /** Lowest setting of the usual thermostat, °C; practice. */
    private static final double LOWEST_C = 16;

    private final double currentA;
    private final double cabinC;

    /**
     * @param air of the place
     * @param battery as it is at the start, opened
     */
    CoolingRun(
            Design design, CoolerSpec spec, double densityShare, Day day, MoistAir air, Battery battery, double baseA) {
        CabinSpec room = design.cabin();
        double outsideRatio = day.humidityShare() * air.saturationRatio(day.ambientC());
        Cabin cabin = new Cabin(room, new double[] {0}, densityShare, day.ambientC(), outsideRatio, STEP_S);
        Cooler cooler = new Cooler(spec);
        double glassW = room.glassM2() * room.glassSolarShare() * day.shadeWm2();
        double busV = battery.emfV();
        double readA = Double.NaN;
        for (int minute = 1; minute <= MINUTES; minute++) {
            cabin.open(0, false, false, day.ambientC(), 0, glassW, 0);
            if (room.leakM2() > 0) {
                cabin.leak(day.ambientC(), day.windMs());
            }
            double latentW = 0;
            double atBankW = 0;
            if (cooler.mayRun(busV)) {
                cooler.step(
                        cabin.nodes(),
                        cabin.airC(),
                        cabin.massC(),
                        cabin.q1W(),
                        cabin.q2W(),
                        LOWEST_C,
                        air.wetBulbC(cabin.airC(), cabin.humidityRatio()),
                        day.ambientC(),
                        busV);
                cabin.cooledTo(cooler.node1C(), cooler.node2C());
                latentW = cooler.latentW();
                atBankW = atBankW(design, spec, cooler.inputW());
            } else {
                cooler.off(STEP_S);
                cabin.floatFree();
            }
            cabin.moisten(outsideRatio, 0, latentW);
            busV = BankPhysics.busV(battery.emfV(), battery.dischargeOhm(), -baseA, -atBankW);
            if (minute == READ_AT_MINUTE) {
                readA = atBankW / busV + baseA;
            }
        }
        currentA = readA;
        cabinC = cabin.airC();
    }

    private static double atBankW(Design design, CoolerSpec spec, double inputW) {
        return spec.onInverter() ? design.inverter().map(i -> i.inputW(inputW)).orElseThrow() : inputW;
    }

    /** At the bank after five minutes, base draw included, A; NaN when the bank cannot carry it. */
    double currentA() {
        return currentA;
    }

    /** Cabin after an hour, °C. */
    double cabinC() {
        return cabinC;
    }
}
