package ampdays.trip;

import ampdays.units.Require;

/**
 * Shares of the light that get through to the roof and the cabin.
 *
 * @param beamShare share of the sun's beam (and the bright sky around the sun), 0 to 1
 * @param diffuseShare share of the light from the rest of the sky, 0 to 1
 */
public record Shade(double beamShare, double diffuseShare) {
    public static final Shade NONE = new Shade(1, 1);

    public Shade {
        Require.share("beam share", beamShare);
        Require.share("diffuse share", diffuseShare);
    }
}
