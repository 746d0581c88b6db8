package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Source of the figures: "a vent, rack or air conditioner shading a few cells can remove a third, half or all of a panel; in
 * series strings it drags the string, in parallel it loses only that panel" (common practice, no source), and the way bypass
 * diodes work.
 */
class PartShadeTest {
    private static final double COS_45 = Math.sqrt(0.5);
    /** A clear sky: one seventh of the light reaches the shadow. */
    private static final double SHADOW_LIGHT = 1 / 7.0;

    private static double kept(double furnitureShare, int panels, int strings) {
        return new PartShade(furnitureShare, panels, 3, strings, 1).keptShare(COS_45, SHADOW_LIGHT, false);
    }

    @Test
    void aThirdOrAllOfOnePanel() {
        assertThat(kept(0.10, 1, 1)).isCloseTo(2 / 3.0, within(1e-9));
        assertThat(kept(0.40, 1, 1)).isCloseTo(1 / 3.0, within(1e-9));
        assertThat(kept(0.70, 1, 1)).isCloseTo(SHADOW_LIGHT, within(1e-9));
    }

    /** One cell is 1/60 of such a panel: a leaf that covers it costs the whole group, half a cell half of it. */
    @Test
    void oneLeafCostsAGroup() {
        assertThat(kept(1 / 59.0, 1, 1)).isCloseTo(2 / 3.0, within(1e-9));
        assertThat(kept(1 / 120.0, 1, 1)).isCloseTo(1 - 0.5 / 3, within(1e-9));
    }

    /** Eight panels side by side lose at most the shaded one; a smaller string beside another is dragged along. */
    @Test
    void stringsSideBySide() {
        double lostPanel = 1 - (1 - SHADOW_LIGHT) / 8;
        assertThat(kept(0.02, 8, 8)).isCloseTo(lostPanel, within(1e-9));
        assertThat(kept(0.02, 8, 1)).isCloseTo(1 - 1 / 24.0, within(1e-9));
    }

    /** Held at the battery's voltage, a panel with a bypassed group is too low: all of it counts as shaded. */
    @Test
    void pulseWidthLosesTheString() {
        PartShade vent = new PartShade(0.10, 2, 3, 2, 1);
        assertThat(vent.keptShare(COS_45, SHADOW_LIGHT, true)).isCloseTo(1 - 0.5 * (1 - SHADOW_LIGHT), within(1e-9));
        assertThat(vent.keptShare(COS_45, SHADOW_LIGHT, false)).isGreaterThan(0.65);
    }

    /** No shadow with the sun overhead, none that matters under an overcast sky, and a longer one when the sun is low. */
    @Test
    void followsTheSun() {
        PartShade vent = new PartShade(0.10, 2, 3, 1, 1);
        assertThat(vent.keptShare(1, SHADOW_LIGHT, false)).isEqualTo(1);
        assertThat(vent.keptShare(COS_45, 1, false)).isEqualTo(1);
        double before = 1;
        for (int elevationDeg = 89; elevationDeg > 0; elevationDeg--) {
            double now = vent.keptShare(Math.sin(Math.toRadians(elevationDeg)), SHADOW_LIGHT, false);
            assertThat(now).isBetween(SHADOW_LIGHT - 1e-12, before);
            before = now;
        }
    }

    /** Chance that all of several independent patches are lit: a half, a quarter, an eighth. */
    @Test
    void speckledShade() {
        assertThat(new PartShade(0, 1, 3, 1, 1).litShare(0.5)).isEqualTo(0.5);
        assertThat(new PartShade(0, 1, 3, 1, 3).litShare(0.5)).isEqualTo(0.125);
        assertThat(new PartShade(0, 1, 3, 1, 3).litShare(1)).isEqualTo(1);
    }

    @Test
    void stringsShareThePanels() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartShade(0, 3, 3, 2, 1))
                .withMessageContaining("same number");
    }
}
