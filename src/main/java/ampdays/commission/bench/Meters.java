package ampdays.commission.bench;

/** How far a usual meter may be off, to either side; practice: hand-held instruments of the trade. */
final class Meters {
    private Meters() {}

    /**
     * Half-width in the unit of the reading.
     *
     * @param unit A, V, mV, °C, K/min, W or Wh
     */
    static double halfWidth(String unit, double reading) {
        double size = Math.abs(reading);
        return switch (unit) {
            case "A" -> 0.015 * size + 0.1;
            case "V" -> 0.003 * size + 0.01;
            case "mV" -> 0.01 * size + 1;
            case "°C" -> 2;
            case "K/min" -> 0.2;
            case "W" -> 0.02 * size + 1;
            case "Wh" -> 0.03 * size;
            default -> throw new IllegalArgumentException("no meter reads " + unit);
        };
    }
}
