package ampdays.cooling;

import ampdays.units.Require;

/**
 * The vehicle's own air conditioner, which cools the cabin while the vehicle moves. It takes nothing from the house bank.
 *
 * @param toC air temperature it is set to, °C
 * @param capacityW cooling that reaches the living area, W
 * @param cop cooling over the shaft power of its compressor
 */
public record DashCooling(double toC, double capacityW, double cop) {
    public DashCooling {
        Require.within("dash cooling temperature", toC, 5, 45);
        Require.positive("dash cooling capacity", capacityW);
        Require.positive("dash cooling coefficient of performance", cop);
    }

    /**
     * Total cooling for a wanted sensible one, W: all that the capacity allows of it, moisture included.
     *
     * @param excessW sensible heat that should leave the air, W, from 0
     * @param sensibleShare share of the cooling that lowers the temperature, above 0 to 1
     */
    public double totalW(double excessW, double sensibleShare) {
        double wantedW = excessW / sensibleShare;
        return wantedW < capacityW ? wantedW : capacityW;
    }
}
