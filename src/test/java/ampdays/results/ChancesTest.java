package ampdays.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares of energy not delivered, and the worst three days. */
class ChancesTest {
    private static TripOutcome trip(double servedWh, double unservedWh) {
        ThreeDays worst = new ThreeDays(LocalDate.of(2025, Month.JULY, 8), 0, 0);
        return new TripOutcome(1, worst.first(), "", List.of(), 60, 1, false, 0, 0, 0, servedWh, unservedWh, worst);
    }

    private static Chances.Option option(List<TripOutcome> trips) {
        Bounded any = new Bounded(0, 0, 0);
        Chances.Tenths tenths = new Chances.Tenths(any, any, any);
        return new Chances.Option(
                "", "", "", any, any, tenths, tenths, new Survival(List.of()), trips.get(0), 0, 0, trips);
    }

    /**
     * Source: table energy_bucket and the loss-of-load shares by energy worked out from it outside this program (six digits
     * after the point). Days of a series as trips: the share is that of the sums, not the mean of shares.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.296570", "2, 0.079508", "4, 0.025810", "6, 0.045725", "8, 0.028588"})
    void energyNotDeliveredIsTheLossOfLoadOfTheTable(String series, double share) {
        List<TripOutcome> days = ReferenceTable.rows("energy_bucket").stream()
                .filter(row -> row.text("series").equals(series))
                .map(ChancesTest::day)
                .toList();
        assertThat(days).hasSizeGreaterThan(20);
        assertThat(option(days).unservedShare()).isCloseTo(share, within(5e-7));
    }

    private static TripOutcome day(Row row) {
        double unserved = 1000 * row.number("unserved_kWh");
        return trip(1000 * row.number("load_kWh") - unserved, unserved);
    }

    @Test
    void nothingAskedIsNothingMissed() {
        assertThat(option(List.of(trip(0, 0))).unservedShare()).isZero();
    }

    /** Lacks of 1, 4, 2, 5, 0, 6 by hand: the sums of three are 7, 11, 7, 11; of the two with 11 the first is named. */
    @Test
    void theWorstThreeDaysAreTheFirstThatLackMost() {
        double[] lackWh = {1, 4, 2, 5, 0, 6};
        List<DayTotals> days =
                IntStream.range(0, 6).mapToObj(i -> lacking(i, lackWh[i])).toList();
        ThreeDays worst = ThreeDays.worst(days);
        assertThat(worst.first()).isEqualTo(LocalDate.of(2025, Month.JULY, 2));
        assertThat(worst.askedWh()).isEqualTo(3 * 10 + 3 * 7);
        assertThat(worst.lackWh()).isEqualTo(11);
        assertThat(ThreeDays.worst(days.subList(0, 2)).lackWh()).isEqualTo(5);
    }

    /** A day that asks for 17 Wh, 10 of them delivered. */
    private static DayTotals lacking(int day, double lackWh) {
        Map<Account, Double> sums = new EnumMap<>(Account.class);
        for (Account account : Account.values()) {
            sums.put(account, 0.0);
        }
        sums.put(Account.LOADS, 10.0);
        sums.put(Account.UNSERVED, 7.0);
        sums.put(Account.SOLAR, 17 - lackWh);
        LocalDate date = LocalDate.of(2025, Month.JULY, 1).plusDays(day);
        return new DayTotals(date, "every day", 1440 * day, 1440, new Energy(sums), 0.5, 0.5, 30, 20);
    }
}
