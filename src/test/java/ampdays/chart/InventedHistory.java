package ampdays.chart;

import ampdays.results.AlternatorDay;
import ampdays.results.AlternatorDay.Drive;
import ampdays.results.AlternatorDay.Ruled;
import ampdays.results.AlternatorWork;
import ampdays.results.AlternatorWork.Pace;
import ampdays.results.CabinHistory;
import ampdays.results.CabinHistory.Sleep;
import ampdays.results.Limit;
import ampdays.results.Series;
import ampdays.results.TripCurve;
import ampdays.study.Comparison.Alternators;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Cabin and alternators that look like results. Invented, to have something to draw. */
final class InventedHistory {
    private InventedHistory() {}

    /** Nights from 22:00 to 06:30, the first and the last cut off by the trip; the warm ones by {@code tooWarm}. */
    static CabinHistory cabin(int days, double[] tooWarm) {
        List<Sleep> sleeps = new ArrayList<>();
        for (int night = 0; night <= days; night++) {
            double from = Math.max(0, night - 2 / 24.0);
            double to = Math.min(days, night + 6.5 / 24);
            double warm = tooWarm[night % tooWarm.length];
            sleeps.add(new Sleep(from, to, Math.min(warm, 24 * (to - from)), night == 3 ? 0.75 : 0));
        }
        return new CabinHistory(
                wave(days, day -> 33 + 7.5 * Math.cos((24 * day - 16) / 12 * Math.PI)),
                wave(days, day -> {
                    double hour = 24 * (day % 1);
                    return hour > 7 && hour < 20 ? 30 + 12 * Math.sin((hour - 7) / 13 * Math.PI) : 26.3;
                }),
                18,
                27,
                sleeps);
    }

    private static TripCurve wave(int days, DoubleUnaryOperator ofDay) {
        double[] day =
                IntStream.range(0, 48 * days).mapToDouble(i -> (i + 0.5) / 48).toArray();
        double[] value = DoubleStream.of(day).map(ofDay).toArray();
        return new TripCurve(
                Series.of(day),
                Series.of(DoubleStream.of(value).map(v -> v - 0.3).toArray()),
                Series.of(DoubleStream.of(value).map(v -> v + 0.3).toArray()));
    }

    static Alternators alternators(LocalDate date, boolean second) {
        List<AlternatorWork> work = new ArrayList<>();
        if (second) {
            work.add(work("second alternator", 270, 180, 2.7));
        }
        work.add(work("factory alternator", 180, Double.POSITIVE_INFINITY, 2.5));
        List<Drive> drives = List.of(drive(6.5, 0.75, second), drive(16.75, 0.75, second));
        return new Alternators(new AlternatorDay(date, drives, 2), work);
    }

    private static AlternatorWork work(String name, double endA, double capA, double pulley) {
        double[] rpm = IntStream.range(0, 101).mapToDouble(i -> 80 * i).toArray();
        double[] coldA = DoubleStream.of(rpm)
                .map(n -> n < 1000 ? 0 : endA * (1 - Math.exp(-(n - 1000) / 1500)))
                .toArray();
        double binA = endA / 60;
        return new AlternatorWork(
                name,
                25,
                130,
                Series.of(rpm),
                Series.of(coldA),
                Series.of(DoubleStream.of(coldA).map(a -> 0.82 * a).toArray()),
                Series.of(DoubleStream.of(rpm).map(n -> capA).toArray()),
                binA,
                List.of(
                        pace("idle", 750 * pulley, 0.45, 1.5),
                        pace("town", 1600 * pulley, 0.6, 4),
                        pace("highway", 2200 * pulley, 0.64, 14)));
    }

    private static Pace pace(String name, double rpm, double share, double hours) {
        double[] bins = new double[61];
        int middle = (int) (60 * share);
        for (int i = -4; i <= 4; i++) {
            bins[middle + i] = hours * (5 - Math.abs(i)) / 25;
        }
        return new Pace(name, rpm, 1.5 * middle, Series.of(bins));
    }

    private static Drive drive(double fromHour, double hours, boolean second) {
        double first = fromHour - 5 / 60.0;
        double last = fromHour + hours + 0.5;
        int rows = (int) Math.round(60 * (last - first));
        double[] hour = IntStream.range(0, rows)
                .mapToDouble(i -> first + (i + 1) / 60.0)
                .toArray();
        Map<String, Series> temperatures = new LinkedHashMap<>();
        Map<String, Series> currents = new LinkedHashMap<>();
        double end = fromHour + hours;
        if (second) {
            temperatures.put("second alternator winding", warm(hour, fromHour, end, 125));
            temperatures.put("second alternator case", warm(hour, fromHour, end, 98));
            currents.put("second alternator", on(hour, fromHour, end, 185));
        }
        temperatures.put("factory alternator winding", warm(hour, fromHour, end, 88));
        temperatures.put("factory alternator case", warm(hour, fromHour, end, 76));
        currents.put("factory alternator", on(hour, fromHour, end, 95));
        currents.put("DC-DC charger, into the bank", on(hour, fromHour, end, 40));
        double ramp = fromHour + 1 / 30.0;
        return new Drive(
                first,
                last,
                Series.of(hour),
                temperatures,
                currents,
                List.of(
                        new Ruled(Limit.START_RAMP, fromHour, ramp),
                        new Ruled(Limit.REGULATOR_CAP, ramp, ramp + 0.3),
                        new Ruled(Limit.ALTERNATOR_HEAT, ramp + 0.3, end)));
    }

    private static Series warm(double[] hour, double from, double end, double topC) {
        return Series.of(DoubleStream.of(hour)
                .map(h -> {
                    double atEndC = 36 + (topC - 36) * (1 - Math.exp(-(end - from) / 0.2));
                    return h < from
                            ? 36
                            : h < end
                                    ? 36 + (topC - 36) * (1 - Math.exp(-(h - from) / 0.2))
                                    : 40 + (atEndC - 40) * Math.exp(-(h - end) / 0.5);
                })
                .toArray());
    }

    private static Series on(double[] hour, double from, double end, double currentA) {
        return Series.of(DoubleStream.of(hour)
                .map(h -> h > from && h <= end + 1e-9 ? currentA * (1 - 0.1 * (h - from)) : 0)
                .toArray());
    }
}
