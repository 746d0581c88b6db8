package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import ampdays.chart.DaysBars.End;
import ampdays.results.DayProfile;
import ampdays.results.Series;
import ampdays.results.TripCurve;
import ampdays.study.Comparison;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the charts say, checked against the results that they were made of. */
class ChartModelTest {
    private static final Comparison COMPARISON = InventedComparison.of(8);

    @Test
    void stateOfChargeHasALinePerOptionThroughLowAndHigh() {
        SocChart chart = SocChart.of(COMPARISON);
        assertThat(chart.yLabel()).isEqualTo("state of charge, %");
        assertThat(chart.reserveLabel()).isEqualTo("reserve 20 %");
        assertThat(chart.days()).isEqualTo(14);
        assertThat(chart.nights()).hasSize(15);
        assertThat(chart.lines())
                .extracting(SocChart.Line::label)
                .startsWith("as it is", "more solar")
                .hasSize(8);
        for (int i = 0; i < 8; i++) {
            TripCurve curve = COMPARISON.options().get(i).curve();
            SocChart.Line line = chart.lines().get(i);
            for (int bucket = 0; bucket < curve.day().size(); bucket++) {
                assertThat(line.day().subList(2 * bucket, 2 * bucket + 2))
                        .containsOnly(curve.day().get(bucket));
                assertThat(line.percent().subList(2 * bucket, 2 * bucket + 2))
                        .containsExactlyInAnyOrder(
                                100 * curve.low().get(bucket),
                                100 * curve.high().get(bucket));
            }
        }
    }

    @Test
    void aLineMeetsTheNearerEndOfABucketFirst() {
        TripCurve falling = new TripCurve(Series.of(0.5, 1.5), Series.of(0.6, 0.2), Series.of(0.9, 0.5));
        Comparison.Option first = COMPARISON.options().get(0);
        Comparison one = new Comparison(
                "a",
                "A",
                0.2,
                2,
                List.of(),
                List.of(new Comparison.Option(
                        first.result(),
                        falling,
                        first.ordinaryDay(),
                        first.worstDay(),
                        first.cabin(),
                        first.alternators())));
        assertThat(SocChart.of(one).lines().get(0).percent()).containsExactly(90.0, 60.0, 50.0, 20.0);
    }

    @Test
    void outcomesAreSaidInPlainWords() {
        DaysBars bars = DaysBars.of(COMPARISON);
        assertThat(bars.xLabel()).contains("days");
        assertThat(bars.bars().get(0).words()).matches("\\d\\.\\d days");
        assertThat(bars.bars().get(0).end()).isEqualTo(End.EMPTY);
        assertThat(bars.bars().get(0).days())
                .isEqualTo(COMPARISON.options().get(0).result().daysToEmpty());
        assertThat(bars.bars().get(3).words()).isEqualTo("holds 14 days");
        assertThat(bars.bars().get(3).end()).isEqualTo(End.HOLDS);
        assertThat(bars.bars().get(3).days()).isEqualTo(14);
        assertThat(bars.bars().get(5).words()).matches("not empty in 14 days, falling [0-9.]+ % a day");
        assertThat(bars.bars().get(5).end()).isEqualTo(End.NOT_EMPTY);
    }

    @Test
    void numbersHaveTwoSignificantDigits() {
        assertThat(Words.twoDigits(3.44)).isEqualTo("3.4");
        assertThat(Words.twoDigits(12.4)).isEqualTo("12");
        assertThat(Words.twoDigits(0.456)).isEqualTo("0.46");
        assertThat(Words.twoDigits(2)).isEqualTo("2");
        assertThat(Words.days(14)).isEqualTo("14 days");
        assertThat(Words.days(1)).isEqualTo("1 day");
        assertThat(Words.days(1.54)).isEqualTo("1.5 days");
    }

    @Test
    void aDayTellsOptionDateAndNameAndKeepsTheScaleOfBothDays() {
        Comparison.Option option = COMPARISON.options().get(0);
        DayChart chart = DayChart.of(COMPARISON, option);
        assertThat(chart.title()).isEqualTo("as it is: ordinary day and worst day");
        assertThat(chart.days())
                .extracting(DayChart.Day::heading)
                .containsExactly("Ordinary day, Wednesday 10 July 2024", "Worst day, Saturday 20 July 2024");
        assertThat(chart.powerLabel()).contains("W");
        assertThat(chart.temperatureLabel()).contains("°C");
        assertThat(chart.sources()).containsExactly("solar", "factory alternator");
        assertThat(chart.uses()).containsExactly("loads", "cooling", "refrigerator", DayChart.UNSERVED);
        double noonW = option.ordinaryDay().sourceW().get("solar").get(12);
        assertThat(chart.days().get(0).sourceW().get(0).get(12)).isEqualTo(noonW);
        for (DayChart.Day day : chart.days()) {
            for (int hour = 0; hour < 24; hour++) {
                int h = hour;
                double stackW =
                        day.useW().stream().mapToDouble(use -> use.get(h)).sum();
                assertThat(stackW).isLessThanOrEqualTo(chart.highestUseW());
            }
        }
        assertThat(chart.coolestC()).isLessThan(chart.warmestC());
    }

    @Test
    void manyUsesAreAddedUpAndNothingIsLost() {
        Comparison.Option option = COMPARISON.options().get(0);
        Map<String, Series> many = new LinkedHashMap<>();
        double[] hour = new double[24];
        for (int i = 1; i <= 9; i++) {
            hour[0] = i;
            many.put("use " + i, Series.of(hour));
        }
        DayProfile profile = option.ordinaryDay();
        DayProfile crowded = new DayProfile(
                profile.name(),
                profile.date(),
                profile.sourceW(),
                many,
                profile.socAtQuarter(),
                profile.outsideC(),
                profile.cabinC(),
                profile.asleep());
        DayChart chart = DayChart.of(
                COMPARISON,
                new Comparison.Option(
                        option.result(), option.curve(), crowded, crowded, option.cabin(), option.alternators()));
        assertThat(chart.uses()).containsExactly("use 6", "use 7", "use 8", "use 9", "other uses");
        double sumW = chart.days().get(0).useW().stream()
                .mapToDouble(use -> use.get(0))
                .sum();
        assertThat(sumW).isCloseTo(45, within(1e-9));
    }

    @Test
    void aLineNeedsAValueForEachPlace() {
        assertThatThrownBy(() -> new LinesChart.Line("air", List.of(1.0), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the line \"air\" has 1 places and 0 values");
    }
}
