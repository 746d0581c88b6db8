package ampdays.report;

import ampdays.chart.SurvivalChart;
import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.report.Block.Text;
import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Chances.Tenths;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How sure the answer is: the same options on many trips. */
final class ChancesPart {
    private ChancesPart() {}

    static Part of(Chances chances) {
        return Part.of(
                "chances",
                "How sure it is",
                Stream.of(
                        new Text("Each option went on " + chances.trips()
                                + " trips that differ in what nobody knows beforehand: " + drawn(chances)
                                + ". All options went on the same trips."),
                        new Picture(
                                "not-yet-empty",
                                SurvivalChart.of(chances),
                                "The share of trips on which the bank has not been at its reserve yet."),
                        sheet(chances)));
    }

    private static String drawn(Chances chances) {
        return chances.drawn().stream()
                .filter(one -> !one.words().isEmpty())
                .map(one -> one.name() + " (" + one.words() + ")")
                .collect(Collectors.joining(", "));
    }

    private static Sheet sheet(Chances chances) {
        List<Row> rows = chances.options().stream()
                .map(option -> Row.of(List.of(
                        option.name(),
                        share(option.neverEmpty()),
                        tenths(option.days(), ChancesPart::days),
                        nights(option.nights()))))
                .toList();
        return new Sheet(
                "The options on many trips",
                List.of(
                        Column.words("Option"),
                        Column.numbers("Never at its reserve, of all trips"),
                        Column.numbers("Days until then: P10 / P50 / P90"),
                        Column.numbers("Comfortable nights: P10 / P50 / P90")),
                rows,
                Form.CARDS,
                List.of(
                        "P10, P50, P90: one trip of ten, half of them, nine of ten stay at or below. In brackets: bounds at"
                                + " 95 %, of the sampling alone." + lengths(chances)));
    }

    /** Counts of nights are read wrongly where not all trips have as many. */
    private static String lengths(Chances chances) {
        IntSummaryStatistics nights = new IntSummaryStatistics();
        chances.options().forEach(option -> nights.combine(option.nightsOfATrip()));
        return nights.getMin() == nights.getMax()
                ? ""
                : " A trip has " + nights.getMin() + " to " + nights.getMax() + " nights.";
    }

    private static String share(Bounded share) {
        return Say.percent(share.value()) + " (" + Say.percent(share.low()) + " to " + Say.percent(share.high()) + ")";
    }

    private static String days(double days) {
        return Double.isInfinite(days) ? "never" : Say.number("%.1f", days);
    }

    /** Of the option table as well. */
    static String nights(Tenths nights) {
        return tenths(nights, value -> Say.number("%.0f", value));
    }

    private static String tenths(Tenths tenths, DoubleFunction<String> words) {
        return Stream.of(tenths.p10(), tenths.p50(), tenths.p90())
                .map(place -> words.apply(place.value()))
                .collect(Collectors.joining(" / "));
    }
}
