package ampdays.cli;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Chances.Tenths;
import ampdays.study.Digits;
import ampdays.study.Verdict;
import java.io.PrintWriter;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** The distribution of each option as text. */
final class ChancesScreen {
    /** Nearest to never and always that a share is told. */
    private static final double LEAST_TOLD = 0.0001;

    private static final String NONE = "–";

    private final PrintWriter out;
    private final Chances chances;
    private final Table table;

    ChancesScreen(PrintWriter out, Chances chances) {
        this.out = out;
        this.chances = chances;
        this.table =
                new Table(chances.options().stream().map(Chances.Option::name).toList());
    }

    void print() {
        out.println(chances.title());
        out.println();
        Paragraph.print(out, drawn(), "");
        out.println();
        row("never empty", option -> percent(option.neverEmpty().value()));
        row("  95 % sure", option -> between(option.neverEmpty()));
        row("all nights comfortable", option -> percent(option.comfortable().value()));
        row("  95 % sure", option -> between(option.comfortable()));
        days();
        double tripDays = Math.rint(chances.longestTripDays());
        DoubleStream.of(tripDays / 4, tripDays / 2, tripDays)
                .map(Math::ceil)
                .distinct()
                .forEach(day -> row(number("not yet empty after %.0f d", day), option -> notYetEmpty(option, day)));
        nights();
        row("energy not delivered", option -> percent(option.unservedShare()));
        if (chances.options().size() > 1) {
            row("outlasts the first", option -> beside(option, option.betterShare()));
            row("the first outlasts it", option -> beside(option, option.worseShare()));
        }
        row(
                "worst 3 days lacked",
                option -> number("%.1f kWh", option.worst().worst().lackWh() / 1000));
        row("  on trip", option -> Integer.toString(option.worst().trip()));
        row("  from", option -> option.worst().worst().first().toString());
        table.print(out);
        Paragraph.print(out, digits(), "");
        out.println();
    }

    /** Past the end of its trip nothing is known of an option. */
    private static String notYetEmpty(Chances.Option option, double day) {
        return day > Math.rint(option.tripDays())
                ? NONE
                : percent(option.survival().shareAfter(day));
    }

    private void row(String label, Function<Chances.Option, String> cell) {
        table.row(label, chances.options().stream().map(cell).toList());
    }

    /** The first has nothing to tell beside itself. */
    private String beside(Chances.Option option, double share) {
        return option.name().equals(chances.options().get(0).name()) ? NONE : percent(share);
    }

    private String drawn() {
        String drawn = chances.drawn().stream()
                .filter(d -> !d.words().isEmpty())
                .map(d -> d.name() + " " + d.words() + " (" + d.source() + ")")
                .collect(Collectors.joining(", "));
        return number("%,d trips", chances.trips()) + " of each option, the same for all. They begin "
                + told(Chances.Option::starts) + ", " + told(Chances.Option::weather) + ". "
                + (drawn.isEmpty() ? "Nothing else is drawn" : "Drawn besides: " + drawn) + ". Seed " + chances.seed()
                + ".";
    }

    /** What all options have in common, or else what each has. */
    private String told(Function<Chances.Option, String> what) {
        List<String> told = chances.options().stream().map(what).distinct().toList();
        return told.size() == 1
                ? told.get(0)
                : chances.options().stream()
                        .map(option -> what.apply(option) + " (" + option.name() + ")")
                        .collect(Collectors.joining(", "));
    }

    private void days() {
        row("empty by: 1 trip in 10", option -> day(option, Tenths::p10));
        row("          half of them", option -> day(option, Tenths::p50));
        row("          9 in 10", option -> day(option, Tenths::p90));
    }

    private static String day(Chances.Option option, Function<Tenths, Bounded> place) {
        double days = place.apply(option.days()).value();
        return Double.isFinite(days)
                ? Verdict.twoDigits(days) + " days"
                : number("not in %.0f days", option.tripDays());
    }

    private void nights() {
        row("good nights: 1 in 10 has", option -> night(option, Tenths::p10) + " or fewer");
        row("             half have", option -> night(option, Tenths::p50) + " or fewer");
        row("             9 in 10 have", option -> night(option, Tenths::p90) + " or fewer");
        row("             of", ChancesScreen::nightsOfATrip);
        if (chances.options().stream().anyMatch(ChancesScreen::isOfManyLengths)) {
            row(
                    "good of all nights",
                    option -> option.nightsOfATrip().getMax() == 0 ? NONE : percent(option.comfortableShare()));
        }
    }

    private static String nightsOfATrip(Chances.Option option) {
        IntSummaryStatistics nights = option.nightsOfATrip();
        return (isOfManyLengths(option) ? nights.getMin() + " to " : "") + nights.getMax() + " nights";
    }

    private static boolean isOfManyLengths(Chances.Option option) {
        return option.nightsOfATrip().getMin() < option.nightsOfATrip().getMax();
    }

    private static String night(Chances.Option option, Function<Tenths, Bounded> place) {
        return number("%.0f", place.apply(option.nights()).value());
    }

    private String digits() {
        double shareOff = chances.options().stream()
                .mapToDouble(option -> Math.max(
                        option.neverEmpty().halfWidth(), option.comfortable().halfWidth()))
                .max()
                .orElseThrow();
        double unit = Digits.unit(shareOff);
        double next = unit / 10;
        return number("With %,d trips ", chances.trips())
                + number("a share is off by %.1f points at most", 100 * shareOff)
                + " (95 % sure): "
                + (unit > 0.1 ? "too much for any digit of it" : "enough for the nearest " + digit(unit))
                + ". The nearest " + digit(next) + " takes about "
                + number("%,.0f trips.", roundedUp(Digits.samplesFor(next, shareOff, chances.trips())));
    }

    private static String digit(double unit) {
        return Verdict.twoDigits(Math.rint(1e9 * unit) / 1e7).replaceAll("\\.0$", "") + " %";
    }

    /** To two digits, since it is only about so many. */
    private static double roundedUp(double samples) {
        double unit = Math.pow(10, Math.floor(Math.log10(samples)) - 1);
        return Math.ceil(samples / unit) * unit;
    }

    static String between(Bounded share) {
        return percent(share.low()).replace(" %", "") + " to " + percent(share.high());
    }

    /** A share; what is neither never nor always is not told as if it were. */
    static String percent(double share) {
        double toTheEnd = Math.min(share, 1 - share);
        boolean between = toTheEnd > 0;
        double told = between ? Math.max(LEAST_TOLD, Math.min(1 - LEAST_TOLD, share)) : share;
        return number(
                between && toTheEnd < 0.001 ? "%.2f %%" : between && toTheEnd < 0.01 ? "%.1f %%" : "%.0f %%",
                100 * told);
    }

    private static String number(String format, Object value) {
        return String.format(Locale.ROOT, format, value);
    }
}
