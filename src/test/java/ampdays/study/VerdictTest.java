package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Account;
import ampdays.results.Ageing;
import ampdays.results.CabinHistory;
import ampdays.results.DayProfile;
import ampdays.results.Energy;
import ampdays.results.RunResult;
import ampdays.results.Series;
import ampdays.results.TripCurve;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words of the verdict; numbers invented. */
class VerdictTest {
    private static final double LOWEST_SOC = 0.05;
    private static final double TREND_PER_DAY = -0.015;

    @Test
    void oneOptionHolds() {
        assertThat(verdict(
                        run("as it is", 2.34, false, 1),
                        run("panels", 4.56, false, 3),
                        run("alternator", Double.NaN, true, 12)))
                .isEqualTo(
                        "As it is, the van is empty after 2.3 days, with 1 comfortable night of 13. Only \"alternator\""
                                + " holds, with 12 comfortable nights of 13. Not enough alone: \"panels\" (empty after 4.6 days).");
    }

    @Test
    void severalHold() {
        assertThat(verdict(
                        run("as it is", Double.NaN, true, 9),
                        run("a", Double.NaN, true, 10),
                        run("b", Double.NaN, true, 12)))
                .isEqualTo(
                        "As it is, the van holds, with 9 comfortable nights of 13. \"a\" and \"b\" hold too; \"b\" does"
                                + " it best, with 12 comfortable nights of 13.");
    }

    /** The base design holds as well, so no option is the only one. */
    @Test
    void oneOptionSleepsBetterThanABaseThatHolds() {
        assertThat(verdict(run("as it is", Double.NaN, true, 9), run("a", Double.NaN, true, 12), run("b", 3, false, 9)))
                .isEqualTo(
                        "As it is, the van holds, with 9 comfortable nights of 13. \"a\" holds too, with 12 comfortable"
                                + " nights of 13. It no longer holds with \"b\" (empty after 3.0 days).");
    }

    @Test
    void noneHolds() {
        assertThat(verdict(run("as it is", 1.2, false, 0), run("a", 3.3, false, 2), run("b", Double.NaN, false, 5)))
                .isEqualTo(
                        "As it is, the van is empty after 1.2 days, with 0 comfortable nights of 13. No option holds;"
                                + " \"b\" comes nearest: it is not empty within 14 days, but falls 1.5 % a day, with 5 comfortable"
                                + " nights of 13. Not enough alone: \"a\" (empty after 3.3 days).");
    }

    @Test
    void aDesignThatHoldsAndSleepsAsWellWithoutThemNeedsNoneOfTheChanges() {
        assertThat(verdict(
                        run("as it is", Double.NaN, true, 13),
                        run("a", Double.NaN, true, 13),
                        run("b", Double.NaN, true, 12),
                        run("c", Double.NaN, true, 13),
                        run("d", 4.06, false, 13)))
                .isEqualTo(
                        "As it is, the van holds, with 13 comfortable nights of 13. None of the changes is needed: \"a\","
                                + " \"b\" and \"c\" hold too and add no comfortable night. It no longer holds with \"d\" (empty after"
                                + " 4.1 days).");
        assertThat(verdict(run("as it is", Double.NaN, true, 13), run("a", Double.NaN, true, 13)))
                .endsWith("None of the changes is needed: \"a\" holds too and adds no comfortable night.");
    }

    @Test
    void noneHoldsButTheBaseDesign() {
        assertThat(verdict(
                        run("as it is", Double.NaN, true, 9), run("a", 3.3, false, 2), run("b", Double.NaN, false, 5)))
                .isEqualTo("As it is, the van holds, with 9 comfortable nights of 13. None of the changes leaves it so:"
                        + " \"b\" (not empty within 14 days, but falls 1.5 % a day), \"a\" (empty after 3.3 days).");
    }

    /** Without a trend nobody knows whether a design that is not empty yet would hold. */
    @Test
    void whatTheTripIsTooShortToTellIsNotSaidToFail() {
        assertThat(verdict(unknown("as it is"), run("a", Double.NaN, true, 9), unknown("b"), run("c", 1.5, false, 9)))
                .isEqualTo(
                        "As it is, the van is not empty within 14 days, with 9 comfortable nights of 13. \"a\" holds, with"
                                + " 9 comfortable nights of 13. Not enough alone: \"c\" (empty after 1.5 days). Not empty, on a trip"
                                + " too short to tell more: \"b\".");
        assertThat(verdict(run("as it is", 1.2, false, 9), unknown("b"), run("c", 1.5, false, 9)))
                .contains(" No option is sure to hold; \"b\" comes nearest: it is not empty within 14 days, with 9"
                        + " comfortable nights of 13. Not enough alone: \"c\" (empty after 1.5 days).");
        assertThat(verdict(run("as it is", Double.NaN, true, 9), unknown("b")))
                .endsWith(" nights of 13. Not empty, on a trip too short to tell more: \"b\".");
    }

    /** 84 kWh asked in 14 days is 6.0 a day, 56 kWh of it for the load named, 35 kWh of sun 2.5 a day. */
    @Test
    void theBalanceOfADayIsToldOfADesignThatDoesNotHold() {
        Map<String, Double> served = Map.of("lights", 14_000.0, "pump", 40_000.0);
        Map<String, Double> unserved = Map.of("pump", 16_000.0, "fan", 14_000.0);
        Map<Account, Double> sums =
                Map.of(Account.SOLAR, 35_000.0, Account.LOADS, 54_000.0, Account.UNSERVED, 30_000.0);
        assertThat(verdict(run("as it is", 1.2, false, 0, sums, served, unserved)))
                .isEqualTo(
                        "As it is, the van is empty after 1.2 days, with 0 comfortable nights of 13. A day asks for 6.0"
                                + " kWh, 4.0 of them for pump; its sources bring 2.5, before losses.");
    }

    @Test
    void theDesignAlone() {
        assertThat(verdict(run("as it is", 1.2, false, 0)))
                .isEqualTo("As it is, the van is empty after 1.2 days, with 0 comfortable nights of 13.");
    }

    @Test
    void aSingleOptionIsCalledByItsName() {
        assertThat(verdict(run("less heat", 6.04, false, 6)))
                .isEqualTo("With \"less heat\", the van is empty after 6.0 days, with 6 comfortable nights of 13.");
    }

    @ParameterizedTest
    @CsvSource({"0.1234, 0.12", "1.26, 1.3", "9.96, 10.0", "13.96, 14", "-0.5, -0.50"})
    void twoSignificantDigits(double value, String text) {
        assertThat(Verdict.twoDigits(value)).isEqualTo(text);
    }

    private static String verdict(RunResult... results) {
        return Verdict.of(new Comparison(
                "test",
                "Test",
                0.2,
                14,
                List.of(),
                Stream.of(results)
                        .map(r -> new Comparison.Option(
                                r, curve(), day("ordinary day"), day("worst day"), cabin(), Optional.empty()))
                        .toList()));
    }

    private static TripCurve curve() {
        return new TripCurve(Series.of(0), Series.of(1), Series.of(1));
    }

    private static CabinHistory cabin() {
        return new CabinHistory(curve(), curve(), 18, 26, List.of());
    }

    private static DayProfile day(String name) {
        Series hours = Series.of(new double[24]);
        return new DayProfile(name, LocalDate.of(2025, 7, 8), Map.of(), Map.of(), hours, hours, hours, hours);
    }

    static RunResult run(String option, double daysToEmpty, boolean holds, int comfortable) {
        return run(option, daysToEmpty, holds, comfortable, Map.of(), Map.of(), Map.of());
    }

    private static RunResult run(
            String option,
            double daysToEmpty,
            boolean holds,
            int comfortable,
            Map<Account, Double> whByAccount,
            Map<String, Double> servedWh,
            Map<String, Double> unservedWh) {
        return run(
                option, daysToEmpty, holds, comfortable, LOWEST_SOC, TREND_PER_DAY, whByAccount, servedWh, unservedWh);
    }

    private static RunResult unknown(String option) {
        return run(option, Double.NaN, false, 9, LOWEST_SOC, Double.NaN, Map.of(), Map.of(), Map.of());
    }

    static RunResult failing(double daysToEmpty, double lowestSoc, double trendPerDay) {
        return run("f", daysToEmpty, false, 9, lowestSoc, trendPerDay, Map.of(), Map.of(), Map.of());
    }

    private static RunResult run(
            String option,
            double daysToEmpty,
            boolean holds,
            int comfortable,
            double lowestSoc,
            double trendPerDay,
            Map<Account, Double> whByAccount,
            Map<String, Double> servedWh,
            Map<String, Double> unservedWh) {
        Map<Account, Double> sums = new EnumMap<>(Account.class);
        for (Account account : Account.values()) {
            sums.put(account, whByAccount.getOrDefault(account, 0.0));
        }
        return new RunResult(
                option,
                ZoneOffset.UTC,
                0,
                60,
                14 * 1440,
                0.2,
                daysToEmpty,
                holds,
                trendPerDay,
                lowestSoc,
                0,
                comfortable,
                13,
                new Energy(sums),
                Map.of(),
                Map.of(),
                servedWh,
                unservedWh,
                0,
                0,
                Double.NaN,
                0,
                Ageing.UNKNOWN,
                0,
                List.of(),
                List.of());
    }
}
