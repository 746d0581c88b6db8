package ampdays.wiring;

/**
 * Nominal voltages of what a van's circuits belong to: a drop is a share of them, and fuses interrupt less at higher ones.
 *
 * @param bankV of the house bank, V
 * @param vehicleV of the start battery, V
 * @param panelsV best voltage of a string of panels at 25 °C, V
 */
public record SideVoltages(double bankV, double vehicleV, double panelsV) {
    /** The voltage of a side, V. */
    public double at(Harness.Side side) {
        return switch (side) {
            case HOUSE -> bankV;
            case VEHICLE -> vehicleV;
            case PANELS -> panelsV;
        };
    }
}
