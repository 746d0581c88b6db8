package ampdays.pv;

import ampdays.units.Require;

/**
 * How panels suffer from shade on some of their cells: bypass groups and strings.
 *
 * @param furnitureShare cells in the shadow of roof furniture (vents, rack, air conditioner) with the sun 45° high, 0 to 0.9
 * @param panels number of panels, 1 or more
 * @param groups bypass groups in each panel
 * @param strings strings side by side; the panels of a string are in series
 * @param patches patches of a tree's shade across one bypass group: 1 when the shade is even, more when it is speckled
 */
public record PartShade(double furnitureShare, int panels, int groups, int strings, int patches) {
    /** Cells of a bypass group; 12 to 24 are usual (practice). */
    private static final double CELLS_IN_GROUP = 20;

    public PartShade {
        Require.within("shadow of roof furniture", furnitureShare, 0, 0.9);
        Require.within("panels", panels, 1, 100);
        Require.within("bypass groups", groups, 1, 20);
        Require.within("patches", patches, 1, 20);
        if (strings < 1 || panels % strings != 0) {
            throw new IllegalArgumentException(
                    "strings is " + strings + ", but each string has the same number of the " + panels + " panels");
        }
    }

    /** Nothing on the roof and even shade. */
    public static final PartShade NONE = new PartShade(0, 1, 3, 1, 1);

    /**
     * Share of the beam that works under trees: all patches on a group must be lit, because its darkest cell sets its
     * current, so the share of lit ground counts to the power of the number of patches (chance of independent patches).
     * Leaves out that groups in shade still use what little beam they get. Ours; test: {@code PartShadeTest}.
     *
     * @param beamShare share of the beam that gets through, 0 to 1
     * @return 0 to 1
     */
    public double litShare(double beamShare) {
        double lit = beamShare;
        for (int i = 1; i < patches; i++) {
            lit *= beamShare;
        }
        return lit;
    }

    /**
     * Share of the panels' power that is left while roof furniture shades them. The shadow covers the given share of the
     * cells times {@code tan z} (an upright thing's shadow grows as the sun sinks) and lies in one piece. It touches {@code q}
     * bypass groups, rounded up, less than one only while it is smaller than a cell. Then the controller does the better of
     *
     * <ul>
     *   <li>going down to the voltage without the bypassed groups, in all strings: {@code 1 − q/groups in a string}; a
     *       pulse-width controller, held at the battery's voltage, cannot;
     *   <li>letting the touched strings run at the current of their shaded cells: {@code 1 − t (1 − r)}, with {@code t} the
     *       share of strings touched and {@code r} the light in the shadow over that beside it.
     * </ul>
     *
     * <p>Leaves out where the shadow falls, half shadow, and panels in series whose shaded cells differ. Ours, from the way
     * bypass diodes work; the trade's "a third, half or all of a panel" has no better source. Test: {@code PartShadeTest}.
     *
     * @param cosZenith cosine of the sun's zenith angle, above 0
     * @param shadowLight light on shaded cells over light on the others, 0 to 1
     * @param heldByBattery whether the battery's voltage holds the panels
     * @return 0 to 1
     */
    public double keptShare(double cosZenith, double shadowLight, boolean heldByBattery) {
        double shadow = furnitureShare * Math.sqrt(1 - cosZenith * cosZenith) / cosZenith;
        double inShadow = (shadow < 1 ? shadow : 1) * panels * groups;
        double touched = touchedGroups(inShadow);
        double groupsInString = (double) panels * groups / strings;
        double stringsTouched = touched < 1 ? touched : Math.ceil(touched / groupsInString);
        double atShadowLight = 1 - stringsTouched / strings * (1 - shadowLight);
        double bypassed = heldByBattery || touched > groupsInString ? 0 : 1 - touched / groupsInString;
        return bypassed > atShadowLight ? bypassed : atShadowLight;
    }

    private static double touchedGroups(double inShadow) {
        double cells = inShadow * CELLS_IN_GROUP;
        return cells < 1 ? cells : Math.ceil(inShadow);
    }
}
