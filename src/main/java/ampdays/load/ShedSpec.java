package ampdays.load;

import ampdays.units.Require;

/**
 * Below which state of charge air conditioner and refrigerator are switched off, and how far it must rise above that, or
 * above a load's own, before they come back; 0 stays on until the bank's cut-out.
 *
 * @param coolingBelowShare 0 to 1
 * @param refrigeratorBelowShare 0 to 1
 * @param bandShare 0 to 1
 */
public record ShedSpec(double coolingBelowShare, double refrigeratorBelowShare, double bandShare) {
    public ShedSpec {
        Require.share("shedding of the air conditioner", coolingBelowShare);
        Require.share("shedding of the refrigerator", refrigeratorBelowShare);
        Require.share("shedding band", bandShare);
    }
}
