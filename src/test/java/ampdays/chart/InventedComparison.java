package ampdays.chart;

import ampdays.results.Account;
import ampdays.results.Ageing;
import ampdays.results.DayProfile;
import ampdays.results.DayTotals;
import ampdays.results.Energy;
import ampdays.results.Finding;
import ampdays.results.Finding.Severity;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import ampdays.results.Series;
import ampdays.results.TripCurve;
import ampdays.study.Comparison;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Results that look like results: a toy bank in quarter hours. Invented, to have something to draw and to write. */
public final class InventedComparison {
    public static final int DAYS = 14;
    private static final int PER_DAY = 96;
    private static final double RESERVE = 0.2;
    private static final LocalDate START = LocalDate.of(2024, 7, 8);
    private static final ZoneId ZONE = ZoneId.of("America/Phoenix");
    private static final double[] CLOUD = {1, 0.95, 1, 0.9, 0.35, 0.5, 1, 1, 0.85, 1, 1, 0.6, 0.3, 0.95};

    private InventedComparison() {}

    /** What one option changes. */
    private record Van(String name, double capacityWh, double panelW, double secondW, double coolingW) {}

    private static final List<Van> VANS = List.of(
            new Van("as it is", 5120, 400, 0, 420),
            new Van("more solar", 5120, 900, 0, 420),
            new Van("bigger bank", 10240, 400, 0, 420),
            new Van("second alternator", 5120, 400, 2600, 420),
            new Van("less heat", 5120, 400, 0, 260),
            new Van("less heat and more solar", 5120, 1000, 0, 260),
            new Van("bigger bank, more solar and covers", 10240, 1080, 0, 300),
            new Van("everything", 10240, 900, 2600, 260));

    public static Comparison five() {
        return of(5);
    }

    /** The first options of eight. */
    public static Comparison of(int count) {
        List<Comparison.Option> options =
                VANS.stream().limit(count).map(InventedComparison::option).toList();
        List<Comparison.Span> darkness = new ArrayList<>();
        darkness.add(new Comparison.Span(0, 5.5 / 24));
        for (int day = 0; day < DAYS; day++) {
            darkness.add(new Comparison.Span(day + 19.6 / 24, Math.min(DAYS, day + 1 + 5.5 / 24)));
        }
        return new Comparison(
                "desert-survey", "Desert survey, two people, fourteen days in July", RESERVE, DAYS, darkness, options);
    }

    private static double cloud(int day) {
        return CLOUD[day % CLOUD.length];
    }

    private static double outsideC(int day, double hour) {
        return 33 + 7.5 * Math.cos((hour - 16) / 24 * 2 * Math.PI) + 1.5 * Math.sin(day);
    }

    private static boolean asleep(double hour) {
        return hour >= 22 || hour < 6.5;
    }

    private static Comparison.Option option(Van van) {
        int n = DAYS * PER_DAY;
        double[] soc = new double[n];
        Map<String, double[]> source = new LinkedHashMap<>();
        Map<String, double[]> use = new LinkedHashMap<>();
        for (String name : List.of("solar", "factory alternator", "second alternator")) {
            source.put(name, new double[n]);
        }
        for (String name : List.of("loads", "cooling", "refrigerator", "unserved")) {
            use.put(name, new double[n]);
        }
        double stored = van.capacityWh;
        double emptyAt = Double.NaN;
        for (int i = 0; i < n; i++) {
            int day = i / PER_DAY;
            double hour = (i % PER_DAY) / 4.0;
            boolean drives = (hour >= 6.5 && hour < 7.25) || (hour >= 17.5 && hour < 18.25);
            double solarW = hour < 5.5 || hour > 19.6
                    ? 0
                    : 0.72 * van.panelW * cloud(day) * Math.sin((hour - 5.5) / 14.1 * Math.PI);
            double secondW = drives ? van.secondW * (0.85 - 0.2 * (hour % 1)) : 0;
            double factoryW = drives ? 380 : 0;
            double out = outsideC(day, hour);
            double coolingW = hour > 7.25 && hour < 17.5 ? 0 : van.coolingW * Math.max(0.15, (out - 24) / 14);
            double refrigeratorW = 28 + 0.8 * (out - 25);
            double loadsW = 18 + (hour > 18.5 && hour < 22 ? 85 : 0) + (hour > 12 && hour < 14 ? 40 : 0);
            double wantedW = coolingW + refrigeratorW + loadsW;
            double inW = solarW + secondW + factoryW;
            double room = (van.capacityWh - stored) * 4 + wantedW;
            double kept = inW > room ? room / inW : 1;
            double servedW = Math.min(wantedW, (stored - 0.05 * van.capacityWh) * 4 + inW * kept);
            double share = Math.max(0, servedW / wantedW);
            stored += (inW * kept - wantedW * share) / 4;
            source.get("solar")[i] = solarW * kept;
            source.get("factory alternator")[i] = factoryW * kept;
            source.get("second alternator")[i] = secondW * kept;
            use.get("loads")[i] = loadsW * share;
            use.get("cooling")[i] = coolingW * share;
            use.get("refrigerator")[i] = refrigeratorW * share;
            use.get("unserved")[i] = wantedW * (1 - share);
            soc[i] = stored / van.capacityWh;
            if (Double.isNaN(emptyAt) && soc[i] <= RESERVE) {
                emptyAt = (i + 1.0) / PER_DAY;
            }
        }
        return new Comparison.Option(
                result(van, soc, source, use, emptyAt),
                curve(soc),
                profile("ordinary day", 2, soc, source, use),
                profile("worst day", 12, soc, source, use),
                InventedHistory.cabin(DAYS, van.secondW > 0 ? new double[] {0, 0.4} : new double[] {0, 0.4, 3.2, 6}),
                Optional.of(InventedHistory.alternators(START.plusDays(4), van.secondW > 0)));
    }

    private static RunResult result(
            Van van, double[] soc, Map<String, double[]> source, Map<String, double[]> use, double emptyAt) {
        double trend = (soc[soc.length - 1] - soc[soc.length - 1 - 3 * PER_DAY]) / 3;
        boolean holds = Double.isNaN(emptyAt) && van.secondW > 0;
        int lowest = 0;
        for (int i = 1; i < soc.length; i++) {
            lowest = soc[i] < soc[lowest] ? i : lowest;
        }
        List<DayTotals> days = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            int from = day * PER_DAY;
            days.add(new DayTotals(
                    START.plusDays(day),
                    day % 7 < 5 ? "field days" : "rest days",
                    day * 1440,
                    1440,
                    energy(source, use, from, from + PER_DAY),
                    Arrays.stream(soc, from, from + PER_DAY).min().orElseThrow(),
                    soc[from + PER_DAY - 1],
                    outsideC(day, 16),
                    outsideC(day, 4)));
        }
        long start = START.atStartOfDay(ZONE).toEpochSecond();
        Energy whole = energy(source, use, 0, soc.length);
        return new RunResult(
                van.name,
                ZONE,
                start,
                60,
                DAYS * 1440,
                RESERVE,
                emptyAt,
                holds,
                holds ? 0 : Math.min(trend, -0.004),
                soc[lowest],
                start + (lowest + 1) * 900L,
                holds ? 14 : 4,
                14,
                whole,
                Map.of(Limit.ENGINE_OFF, 315.0, Limit.CHARGER_RATING, 21.0),
                Map.of(Limit.FULL, 5400.25, Limit.ACCEPTANCE, 120.5),
                Map.of("laptops, two", 6160.0, "cooling", whole.wh(Account.COOLING)),
                Map.of("cooling", whole.unservedWh()),
                van.secondW > 0 ? 9.4 : 0,
                0,
                van.secondW > 0 ? 131.5 : Double.NaN,
                6.2,
                Ageing.UNKNOWN,
                3e-9,
                days,
                List.of(new Finding(
                        Severity.CAUTION, "bank empty", start + 90_000, 95, 0.05, "share", "The bank was empty.")));
    }

    private static Energy energy(Map<String, double[]> source, Map<String, double[]> use, int from, int to) {
        Map<Account, Double> wh = new EnumMap<>(Account.class);
        for (Account account : Account.values()) {
            double[] power = source.getOrDefault(account.label(), use.get(account.label()));
            wh.put(account, power == null ? 0 : Arrays.stream(power, from, to).sum() / 4);
        }
        return new Energy(wh);
    }

    private static TripCurve curve(double[] soc) {
        int buckets = soc.length / 2;
        double[] day = new double[buckets];
        double[] low = new double[buckets];
        double[] high = new double[buckets];
        for (int i = 0; i < buckets; i++) {
            day[i] = (i + 0.5) * 2 / PER_DAY;
            low[i] = Math.min(soc[2 * i], soc[2 * i + 1]);
            high[i] = Math.max(soc[2 * i], soc[2 * i + 1]);
        }
        return new TripCurve(Series.of(day), Series.of(low), Series.of(high));
    }

    private static DayProfile profile(
            String name, int day, double[] soc, Map<String, double[]> source, Map<String, double[]> use) {
        double[] outside = new double[24];
        double[] cabin = new double[24];
        double[] asleep = new double[24];
        for (int hour = 0; hour < 24; hour++) {
            outside[hour] = outsideC(day, hour + 0.5);
            cabin[hour] = hour > 7 && hour < 17 ? outside[hour] + 6 : Math.min(outside[hour], asleep(hour) ? 24 : 27);
            asleep[hour] = hour == 6 ? 0.5 : asleep(hour) ? 1 : 0;
        }
        return new DayProfile(
                name,
                START.plusDays(day),
                hourly(source, day),
                hourly(use, day),
                Series.of(Arrays.copyOfRange(soc, day * PER_DAY, (day + 1) * PER_DAY)),
                Series.of(outside),
                Series.of(cabin),
                Series.of(asleep));
    }

    private static Map<String, Series> hourly(Map<String, double[]> quarters, int day) {
        Map<String, Series> hourly = new LinkedHashMap<>();
        quarters.forEach((name, values) -> {
            double[] mean = new double[24];
            for (int hour = 0; hour < 24; hour++) {
                int from = day * PER_DAY + 4 * hour;
                mean[hour] = Arrays.stream(values, from, from + 4).sum() / 4;
            }
            hourly.put(name, Series.of(mean));
        });
        return hourly;
    }
}
