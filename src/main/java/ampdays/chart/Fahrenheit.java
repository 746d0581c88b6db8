package ampdays.chart;

import ampdays.units.DegreesFahrenheit;
import java.util.List;
import java.util.function.UnaryOperator;

/** Charts with temperatures in degrees Fahrenheit; those without temperatures stay as they are. */
public final class Fahrenheit {
    private Fahrenheit() {}

    public static ChartModel of(ChartModel chart) {
        if (chart instanceof DayChart day) {
            return day(day);
        }
        if (chart instanceof DriveChart drive) {
            return drive(drive);
        }
        if (chart instanceof CabinChart cabin) {
            return cabin(cabin);
        }
        if (chart instanceof OperatingPoints points) {
            return new OperatingPoints(
                    points.title(),
                    points.subtitle(),
                    points.units().stream()
                            .map(unit -> unit(unit, Fahrenheit::label))
                            .toList());
        }
        return chart;
    }

    /** Charts with degrees Celsius, and those of Fahrenheit in brackets behind. */
    public static ChartModel beside(ChartModel chart) {
        if (chart instanceof DayChart c) {
            return new DayChart(
                    c.title(),
                    c.subtitle(),
                    c.socLabel(),
                    c.powerLabel(),
                    both(c.temperatureLabel()),
                    c.low(),
                    c.reservePercent(),
                    c.highestSourceW(),
                    c.highestUseW(),
                    c.coolestC(),
                    c.warmestC(),
                    c.sources(),
                    c.uses(),
                    c.days(),
                    true);
        }
        if (chart instanceof DriveChart c) {
            return new DriveChart(
                    c.title(),
                    c.subtitle(),
                    both(c.temperatureLabel()),
                    c.currentLabel(),
                    c.limitLabel(),
                    c.coolestC(),
                    c.warmestC(),
                    c.highestA(),
                    c.temperatures(),
                    c.currents(),
                    c.limits(),
                    c.columns(),
                    true);
        }
        if (chart instanceof CabinChart c) {
            return new CabinChart(
                    c.title(),
                    c.subtitle(),
                    both(c.temperatureLabel()),
                    both(c.comfortLabel()),
                    c.outOfBandLabel(),
                    c.outOfBandTotal(),
                    c.days(),
                    c.comfortLowC(),
                    c.comfortHighC(),
                    c.coolestC(),
                    c.warmestC(),
                    c.nights(),
                    c.sleeps(),
                    c.day(),
                    c.outsideC(),
                    c.cabinC(),
                    true);
        }
        if (chart instanceof OperatingPoints points) {
            return new OperatingPoints(
                    points.title(),
                    points.subtitle(),
                    points.units().stream()
                            .map(unit -> unit(unit, Fahrenheit::both))
                            .toList());
        }
        return chart;
    }

    private static DayChart day(DayChart c) {
        return new DayChart(
                c.title(),
                c.subtitle(),
                c.socLabel(),
                c.powerLabel(),
                label(c.temperatureLabel()),
                c.low(),
                c.reservePercent(),
                c.highestSourceW(),
                c.highestUseW(),
                DegreesFahrenheit.of(c.coolestC()),
                DegreesFahrenheit.of(c.warmestC()),
                c.sources(),
                c.uses(),
                c.days().stream()
                        .map(d -> new DayChart.Day(
                                d.heading(),
                                d.sourceW(),
                                d.useW(),
                                d.socPercent(),
                                all(d.outsideC()),
                                all(d.cabinC()),
                                d.asleep()))
                        .toList(),
                false);
    }

    private static DriveChart drive(DriveChart c) {
        return new DriveChart(
                c.title(),
                c.subtitle(),
                label(c.temperatureLabel()),
                c.currentLabel(),
                c.limitLabel(),
                DegreesFahrenheit.of(c.coolestC()),
                DegreesFahrenheit.of(c.warmestC()),
                c.highestA(),
                c.temperatures(),
                c.currents(),
                c.limits(),
                c.columns().stream()
                        .map(d -> new DriveChart.Column(
                                d.fromHour(),
                                d.toHour(),
                                d.hour(),
                                d.temperatureC().stream().map(Fahrenheit::all).toList(),
                                d.currentA(),
                                d.ruled()))
                        .toList(),
                false);
    }

    private static CabinChart cabin(CabinChart c) {
        return new CabinChart(
                c.title(),
                c.subtitle(),
                label(c.temperatureLabel()),
                label(c.comfortLabel()),
                c.outOfBandLabel(),
                c.outOfBandTotal(),
                c.days(),
                DegreesFahrenheit.of(c.comfortLowC()),
                DegreesFahrenheit.of(c.comfortHighC()),
                DegreesFahrenheit.of(c.coolestC()),
                DegreesFahrenheit.of(c.warmestC()),
                c.nights(),
                c.sleeps(),
                c.day(),
                all(c.outsideC()),
                all(c.cabinC()),
                false);
    }

    private static OperatingPoints.Unit unit(OperatingPoints.Unit u, UnaryOperator<String> worded) {
        return new OperatingPoints.Unit(
                u.heading(),
                u.xLabel(),
                u.yLabel(),
                worded.apply(u.coldLabel()),
                worded.apply(u.hotLabel()),
                u.capLabel(),
                u.rpm(),
                u.coldA(),
                u.hotA(),
                u.capA(),
                u.highestA(),
                u.binA(),
                u.longestHours(),
                u.speeds());
    }

    /** A label in which temperatures or their unit stand. */
    static String label(String text) {
        return DegreesFahrenheit.inPlace(text).replace("°C", "°F");
    }

    /** A label with the other degrees in brackets behind. */
    static String both(String text) {
        String both = DegreesFahrenheit.beside(text);
        return both.equals(text) ? text.replace("°C", "°C (°F)") : both;
    }

    private static List<Double> all(List<Double> celsius) {
        return celsius.stream().map(DegreesFahrenheit::of).toList();
    }
}
