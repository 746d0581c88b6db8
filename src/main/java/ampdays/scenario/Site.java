package ampdays.scenario;

import ampdays.units.Require;

/** Where the van stands. */
public record Site(double latitudeDeg, double longitudeDeg, double elevationM) {
    public Site {
        Require.within("latitude", latitudeDeg, -90, 90);
        Require.within("longitude", longitudeDeg, -180, 180);
        Require.within("elevation", elevationM, -430, 6000);
    }
}
