package ampdays.sim;

import ampdays.io.PresetReader;
import ampdays.results.RunResult;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.weather.SeriesInfo;
import ampdays.weather.WeatherSeries;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** A van for tests, written as paths and values like a scenario, and steady weather to put it in. */
public final class Van {
    private Values values = Values.empty(PresetReader.presets())
            .with("title", "test")
            .with("place.latitude", "0°")
            .with("place.longitude", "0°")
            .with("place.elevation", "0 m")
            .with("place.zone", "UTC")
            .with("weather", "steady.csv")
            .with("trip.start", "2025-03-20")
            .with("trip.days", "10")
            .with("trip.reserve", "20 %")
            .with("trip.all days", "others")
            .with("trip.timetable.all days", "00:00 park open, away")
            .with("cabin.preset", "high-roof van, insulated")
            .with("cabin.set.asleep", "off")
            .with("cabin.set.awake", "off")
            .with("battery.preset", "lithium iron phosphate 12 V")
            .with("battery.capacity", "400 Ah")
            .with("battery.start", "100 %");

    /** Sets one value by its path. */
    public Van with(String path, String text) {
        values = values.with(path, text);
        return this;
    }

    /** A load on the bank. */
    public Van load(String name, String draw, String when) {
        return with("loads." + name + ".draw", draw).with("loads." + name + ".when", when);
    }

    /** A bank that loses nothing: its charge is all there is to reckon with. */
    public Van lossless() {
        return with("battery.self-discharge", "0 %/month")
                .with("battery.electronics", "0 A")
                .with("battery.coulombic-efficiency", "100 %")
                .with("battery.resistance", "0.01 mΩ");
    }

    public Values values() {
        return values;
    }

    public Variant variant() {
        try {
            return VariantBuilder.build("test", values);
        } catch (ScenarioException e) {
            throw new IllegalStateException(e.problems().toString(), e);
        }
    }

    RunPlan plan(WeatherSeries weather) {
        return plan(weather, 60);
    }

    RunPlan plan(WeatherSeries weather, int stepSeconds) {
        return new RunPlan.Maker(stepSeconds).plan(variant(), weather);
    }

    RunResult run(WeatherSeries weather) {
        return Simulator.run(plan(weather));
    }

    /** Runs and shows every step, as it ends, to a recorder. */
    RunResult run(WeatherSeries weather, Recorder recorder) {
        return Simulator.run(plan(weather), recorder);
    }

    /** Amp-hours taken from the bank a day. */
    static double dischargedAhPerDay(RunResult result, double capacityAh) {
        return result.cycles() * capacityAh / result.tripDays();
    }

    /** Every day alike: one temperature, no sun. */
    public static WeatherSeries dark(double airC) {
        return weather(hour -> airC, hour -> 0);
    }

    /** Every day alike, by the hour: air temperature, and global light (W/m²) of which 15 % is diffuse. */
    public static WeatherSeries weather(IntToDoubleFunction airC, IntToDoubleFunction ghiWm2) {
        return weather(airC, ghiWm2, 5);
    }

    /** The same in a given wind, m/s. */
    static WeatherSeries weather(IntToDoubleFunction airC, IntToDoubleFunction ghiWm2, double windMs) {
        return weather(airC, ghiWm2, windMs, LocalDate.of(2025, 3, 19), 33, 0);
    }

    /** The same days by the hours of a standard time so many hours ahead of UTC, so many times 15° east. */
    static WeatherSeries eastward(IntToDoubleFunction airC, IntToDoubleFunction ghiWm2, int utcOffsetHours) {
        return weather(airC, ghiWm2, 5, LocalDate.of(2025, 3, 19), 33, utcOffsetHours);
    }

    /** Every day of every year, by the hours of a standard time so many hours ahead of UTC, without sun. */
    static WeatherSeries darkYear(IntToDoubleFunction airC, double utcOffsetHours) {
        return weather(airC, hour -> 0, 5, LocalDate.of(WeatherSeries.NOMINAL_YEAR, 1, 1), 365, utcOffsetHours);
    }

    private static WeatherSeries weather(
            IntToDoubleFunction airC,
            IntToDoubleFunction ghiWm2,
            double windMs,
            LocalDate first,
            int days,
            double utcOffsetHours) {
        int rows = 24 * days;
        double[] air = new double[rows];
        double[] ghi = new double[rows];
        double[] dhi = new double[rows];
        double[] dni = new double[rows];
        double[] dew = new double[rows];
        double[] wind = new double[rows];
        double[] pressure = new double[rows];
        Arrays.setAll(air, row -> airC.applyAsDouble(row % 24));
        Arrays.setAll(ghi, row -> ghiWm2.applyAsDouble(row % 24));
        Arrays.setAll(dhi, row -> 0.15 * ghi[row]);
        Arrays.fill(dni, Double.NaN);
        Arrays.fill(dew, 8);
        Arrays.fill(wind, windMs);
        Arrays.fill(pressure, 101_325);
        long start = first.toEpochDay() * 86_400 - Math.round(utcOffsetHours * 3600);
        SeriesInfo info = new SeriesInfo(
                "steady", 0, 15 * utcOffsetHours, 0, utcOffsetHours, start, 3600, days == 365, 0.5, List.of());
        return SkyCompletion.complete(WeatherSeries.of(info, ghi, dni, dhi, air, dew, wind, pressure));
    }
}
