package ampdays.commission.bench;

import ampdays.commission.Conditions;

/**
 * What the sheet supposes of a day, or what a drawn day was like: the conditions told, and those that nobody tells.
 *
 * @param ambientC air in the shade, °C
 * @param underBonnetC air around the alternators, °C
 * @param socShare true state of charge of the bank, 0 to 1
 * @param sunWm2 light in the plane of the panels, W/m²; NaN when not told
 * @param workingShare share of it that gets through their front, 0 to 1
 * @param windMs wind over the panels, m/s
 * @param humidityShare relative humidity of the air in the shade, 0 to 1
 * @param shadeWm2 light on the windows of a van in the shade, W/m²
 * @param cellShiftV what a cell at rest is off its open-circuit voltage by its history, V
 * @param parasiticA draw that is on no list, A
 * @param systemShiftV what the vehicle's voltage is off its mean just then, V per 12 V
 * @param dayMeanC mean of the air in the cabin over the refrigerator's day, °C
 */
record Day(
        double ambientC,
        double underBonnetC,
        double socShare,
        double sunWm2,
        double workingShare,
        double windMs,
        double humidityShare,
        double shadeWm2,
        double cellShiftV,
        double parasiticA,
        double systemShiftV,
        double dayMeanC) {
    /** The middle of what is drawn. */
    static Day supposed(Conditions told, PanelSun sun) {
        return drawn(told, sun, () -> 0);
    }

    /** A draw from -1 to 1. */
    @FunctionalInterface
    interface Draw {
        double next();
    }

    /**
     * A day as it may have been when these conditions were written down: thermometer 1 K; air under a bonnet differs from
     * place to place by 5 K; counters of charge drift by 5 %; light is off by what {@link PanelSun} says; wind 0.5 to 3.5 m/s; humidity 20 to 60 %;
     * up to 60 W/m² on windows in the shade; a cell 15 mV off by its history (10 to 20 mV, from memory); up to 0.4 A that
     * nobody listed (practice: 0.3 to 0.6 A in all); a cabin of the air outside within 3 K. Guesses but for those named.
     */
    static Day drawn(Conditions told, PanelSun sun, Draw draw) {
        double ambientC = told.ambientC() + draw.next();
        double soc = told.socShare() + 0.05 * draw.next();
        return new Day(
                ambientC,
                told.underBonnetC() + 5 * draw.next(),
                Math.max(0, Math.min(1, soc)),
                sun.planeWm2() * (1 + sun.offShare() * draw.next()),
                sun.workingShare(),
                2 + 1.5 * draw.next(),
                0.4 + 0.2 * draw.next(),
                30 + 30 * draw.next(),
                0.015 * draw.next(),
                0.2 + 0.2 * draw.next(),
                0.3 * draw.next(),
                told.ambientC() + 3 * draw.next());
    }
}
