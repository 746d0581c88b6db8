package ampdays.io;

/** What the rows of every weather format carry, and what values are possible on earth. */
enum WeatherColumn {
    GHI("global irradiance", "W/m²", -20, 1600),
    DNI("beam irradiance", "W/m²", -20, 1500),
    DHI("diffuse irradiance", "W/m²", -20, 1200),
    AIR("air temperature", "°C", -90, 60),
    DEW_POINT("dew point", "°C", -90, 45),
    HUMIDITY("relative humidity", "%", 0, 110),
    WIND("wind speed", "m/s", 0, 60),
    PRESSURE("air pressure", "Pa", 30_000, 110_000),
    RAIN("rain", "mm", 0, 500);

    final String label;
    final String unit;
    final double least;
    final double most;

    WeatherColumn(String label, String unit, double least, double most) {
        this.label = label;
        this.unit = unit;
        this.least = least;
        this.most = most;
    }
}
