package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.Energy;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The step of one minute is small enough. Source: convergence (an identity): halving the step moves the energies of a trip
 * by less than 0.1 % (fixed-speed cooling 0.2 %), and those of any day by less than 0.2 % of that day's demand (fixed
 * speed 1 %: a cycle may fall on either side of midnight). An error that grows in proportion to the step then allows 10 s
 * against 60 s five thirds of that and 300 s against 60 s eight times as much.
 *
 * <p>The banks are large enough that no load is cut: the minute of a cut-out is a matter of chance.
 */
class TimeStepTest {
    private static final WeatherSeries HOT = FullVan.weather();
    private static final List<Account> ENERGIES = List.of(
            Account.SOLAR,
            Account.SHORE,
            Account.FACTORY_ALTERNATOR,
            Account.SECOND_ALTERNATOR,
            Account.LOADS,
            Account.COOLING,
            Account.REFRIGERATOR);

    private static RunResult run(String without, boolean fixedSpeed, int stepSeconds) {
        Van van = (fixedSpeed ? FullVan.fixedSpeed() : FullVan.variableSpeed())
                .with(without, "none")
                .with("battery.capacity", "4000 Ah");
        RunResult run = Simulator.run(van.plan(HOT, stepSeconds));
        assertThat(run.energy().unservedWh()).isZero();
        return run;
    }

    private static void agree(RunResult one, RunResult other, double tripTolerance, double dayTolerance) {
        for (Account account : ENERGIES) {
            double wh = other.energy().wh(account);
            assertThat(one.energy().wh(account)).as(account.label()).isCloseTo(wh, within(tripTolerance * wh));
        }
        for (int day = 0; day < other.days().size(); day++) {
            Energy expected = other.days().get(day).energy();
            Energy actual = one.days().get(day).energy();
            for (Account account : ENERGIES) {
                assertThat(actual.wh(account))
                        .as("%s on day %d", account.label(), day + 1)
                        .isCloseTo(expected.wh(account), within(dayTolerance * expected.servedWh()));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "factory-alternator, false, 0.001, 0.002",
        "second-alternator, false, 0.001, 0.002",
        "factory-alternator, true, 0.002, 0.01",
        "second-alternator, true, 0.002, 0.01"
    })
    void smallerAndLargerStepsAgree(String without, boolean fixedSpeed, double tripTolerance, double dayTolerance) {
        RunResult minute = run(without, fixedSpeed, 60);
        agree(minute, run(without, fixedSpeed, 30), tripTolerance, dayTolerance);
        agree(minute, run(without, fixedSpeed, 10), tripTolerance * 5 / 3, dayTolerance * 5 / 3);
        agree(run(without, fixedSpeed, 300), minute, tripTolerance * 8, dayTolerance * 8);
    }
}
