package ampdays.cli;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Survival;
import ampdays.results.ThreeDays;
import ampdays.results.TripOutcome;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shares as text: what is neither never nor always is not told as if it were. No outside source. */
class ChancesScreenTest {
    private static TripOutcome trip(double days, int comfortable, int nights) {
        ThreeDays worst = new ThreeDays(LocalDate.of(2025, 7, 1), 0, 0);
        return new TripOutcome(
                1, worst.first(), "", List.of(), days, Double.NaN, true, 0.5, comfortable, nights, 1, 0, worst);
    }

    private static TripOutcome trip(int comfortable, int nights) {
        return trip(7, comfortable, nights);
    }

    private static Chances.Option option(Survival survival, TripOutcome... trips) {
        Bounded any = new Bounded(0.5, 0.4, 0.6);
        Chances.Tenths tenths = new Chances.Tenths(any, any, any);
        return new Chances.Option(
                "as it is", "in July", "", any, any, tenths, tenths, survival, trips[0], 0, 0, List.of(trips));
    }

    private static String printed(TripOutcome... trips) {
        return printed(option(new Survival(List.of()), trips));
    }

    private static String printed(Chances.Option... options) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        int trips = options[0].trips().size();
        new ChancesScreen(out, new Chances("van", "Van", trips, 1, 0.2, List.of(), List.of(options))).print();
        out.flush();
        return text.toString();
    }

    /** Seven days and fourteen: a week tells nothing of the day after it. One trip of two is empty on day 6. */
    @Test
    void daysAreThoseOfTheLongestTripAndNothingIsToldPastAShorterOne() {
        Survival half = new Survival(List.of(new Survival.Step(6, 0.5)));
        assertThat(printed(
                        option(half, trip(7, 6, 6), trip(7, 6, 6)),
                        option(new Survival(List.of()), trip(14, 13, 13), trip(14, 13, 13))))
                .containsPattern("\nnot yet empty after 4 d +100 % +100 %\n")
                .containsPattern("\nnot yet empty after 7 d +50 % +100 %\n")
                .containsPattern("\nnot yet empty after 14 d +– +100 %\n");
    }

    /** Clocks set back make a trip an hour longer, clocks set forward an hour shorter: it stays one of 14 days. */
    @ParameterizedTest
    @ValueSource(doubles = {14 + 1 / 24.0, 14 - 1 / 24.0})
    void anHourOfTheClocksIsNoDayOfTheTrip(double days) {
        assertThat(printed(trip(days, 13, 13)))
                .containsPattern("\nnot yet empty after 14 d +100 %\n")
                .doesNotContain("after 15 d");
    }

    /** With the number of the trip beside it the cell would be broken. */
    @Test
    void theDateOfTheWorstDaysStandsOnOneLine() {
        assertThat(printed(trip(6, 7)))
                .containsPattern("\\nworst 3 days lacked +0\\.0 kWh\\n  on trip +1\\n  from +2025-07-01\\n\\n");
    }

    /** By hand: 6 of 7 and 3 of 5 nights are 9 of 12. */
    @Test
    void tripsOfDifferentLengthsAreNotAllSaidToBeAsLongAsTheFirst() {
        assertThat(printed(trip(6, 7), trip(3, 5)))
                .containsPattern("\\n +of +5 to 7 nights\\n")
                .containsPattern("\\ngood of all nights +75 %\\n");
        assertThat(printed(trip(6, 7), trip(3, 7)))
                .containsPattern("\\n +of +7 nights\\n")
                .doesNotContain("good of all nights");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.94   | 0.996  | 94 to 99.6 %",
                "0.991  | 0.9996 | 99.1 to 99.96 %",
                "0.00002 | 0.99998 | 0.01 to 99.99 %",
                "0.996  | 1      | 99.6 to 100 %",
                "0      | 0.004  | 0 to 0.4 %",
                "0.0004 | 0.06   | 0.04 to 6 %",
                "0.01   | 0.99   | 1 to 99 %",
            })
    void sharesNearTheirEndsKeepTheirDigits(double low, double high, String text) {
        assertThat(ChancesScreen.between(new Bounded((low + high) / 2, low, high)))
                .isEqualTo(text);
    }
}
