package ampdays.cabin;

import ampdays.units.Require;

/**
 * The living area as a heat balance sees it.
 *
 * @param roofM2 opaque roof, m²
 * @param wallM2 opaque side, front and rear walls, m²
 * @param floorM2 floor, m²
 * @param glassM2 windows, m²
 * @param insulationM thickness of foam in roof and walls, m (0 = bare metal and lining)
 * @param insulationWmK conductivity of that foam, W/(m K)
 * @param bridgeWm2K what ribs and frames add to the transmittance of roof and walls, W/(m² K)
 * @param floorUWm2K transmittance of the floor, W/(m² K)
 * @param glassUWm2K transmittance of glass without covers, W/(m² K)
 * @param solarAbsorptance share of sunlight the paint absorbs, 0 to 1
 * @param glassSolarShare share of the light on the glass that becomes heat indoors, without covers, 0 to 1
 * @param solarToAirShare share of that heat that warms the air and linings first, 0 to 1
 * @param covers what covers the windows, and when
 * @param faces which way the upright faces look
 * @param volumeM3 air volume, m³
 * @param parkedAirChangesPerH outside air through a closed, parked van, volumes per hour
 * @param drivingAirChangesPerH the same while driving
 * @param leakM2 area of all gaps through which wind and warmth drive air while parked, m²; 0 = constant air changes
 * @param airingC fans that move air do so only while outside is cooler than the cabin and the cabin warmer than this,
 *     °C; NaN = at all their times
 * @param airJK heat capacity of the air with its linings, J/K
 * @param massJK heat capacity of furniture and structure, J/K
 * @param airToMassWK conductance between the two, W/K
 * @param panelHeatShare how much of the panels' warmth above outside air the roof beneath them feels, 0 to 1
 * @param people how many live in it
 * @param asleepC temperature wanted asleep, °C; NaN when cooling is off then
 * @param awakeC the same awake
 * @param aboardC the same while riding
 * @param awayC the same with nobody home
 * @param comfortLowC a night is comfortable from this temperature, °C
 * @param comfortHighC a night is comfortable up to this temperature, °C
 */
public record CabinSpec(
        double roofM2,
        double wallM2,
        double floorM2,
        double glassM2,
        double insulationM,
        double insulationWmK,
        double bridgeWm2K,
        double floorUWm2K,
        double glassUWm2K,
        double solarAbsorptance,
        double glassSolarShare,
        double solarToAirShare,
        Covers covers,
        Faces faces,
        double volumeM3,
        double parkedAirChangesPerH,
        double drivingAirChangesPerH,
        double leakM2,
        double airingC,
        double airJK,
        double massJK,
        double airToMassWK,
        double panelHeatShare,
        int people,
        double asleepC,
        double awakeC,
        double aboardC,
        double awayC,
        double comfortLowC,
        double comfortHighC) {
    public CabinSpec {
        Require.positive("roof area", roofM2);
        Require.positive("wall area", wallM2);
        Require.positive("floor area", floorM2);
        Require.notNegative("glass area", glassM2);
        Require.within("insulation", insulationM, 0, 0.5);
        Require.positive("insulation conductivity", insulationWmK);
        Require.notNegative("bridges", bridgeWm2K);
        Require.positive("floor transmittance", floorUWm2K);
        Require.positive("glass transmittance", glassUWm2K);
        Require.share("solar absorptance", solarAbsorptance);
        Require.share("solar share of the glass", glassSolarShare);
        Require.share("solar share to air", solarToAirShare);
        Require.positive("volume", volumeM3);
        Require.notNegative("air changes", parkedAirChangesPerH);
        Require.notNegative("air changes driving", drivingAirChangesPerH);
        Require.within("leak area", leakM2, 0, 1);
        Require.positive("heat capacity of the air", airJK);
        Require.positive("heat capacity of the mass", massJK);
        Require.positive("air to mass conductance", airToMassWK);
        Require.share("panel heat share", panelHeatShare);
        Require.within("people", people, 0, 20);
        if (!(comfortHighC > comfortLowC)) {
            throw new IllegalArgumentException("the comfort band is empty");
        }
    }
}
