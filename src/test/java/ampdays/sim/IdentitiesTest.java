package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.results.Account;
import ampdays.results.RunResult;
import ampdays.weather.WeatherSeries;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold whatever the equations, beside {@link KernelPropertiesTest}. Source: identities. */
class IdentitiesTest {
    /** Kirchhoff: in every minute what sources give is what uses and bank take, as currents and as powers. */
    @ParameterizedTest
    @ValueSource(strings = {"variable-speed roof unit", "fixed-speed roof unit"})
    void currentsMeetOnTheBus(String cooling) {
        double[] worstA = new double[1];
        FullVan.with(cooling).run(FullVan.weather(), (m, state) -> {
            double sourcesA = (m.solarW + m.shoreW + m.factoryW) / m.busV + m.secondA;
            double usesA = m.servedShare * (m.askedA + m.askedW / m.busV);
            worstA[0] = Math.max(worstA[0], Math.abs(sourcesA - usesA - m.bankA));
        });
        assertThat(worstA[0]).isLessThan(1e-9);
    }

    @Test
    void noSunNoSolar() {
        RunResult run = new Van().with("solar.power", "400 W").run(Van.dark(20));
        assertThat(run.energy().wh(Account.SOLAR)).isZero();
        assertThat(run.energy().curtailedWh()).isZero();
    }

    /** Hotter air never means more sun from the panels: their cells follow it. */
    @Test
    void hotterAirMeansLessSun() {
        double[] wh = IntStream.of(45, 35, 25, 15, 5)
                .mapToDouble(airC -> new Van()
                        .with("solar.power", "200 W")
                        .with("battery.start", "30 %")
                        .with("battery.capacity", "2000 Ah")
                        .run(Van.weather(h -> airC, h -> h >= 8 && h < 16 ? 800 : 0))
                        .energy()
                        .wh(Account.SOLAR))
                .toArray();
        assertThat(wh).isSorted();
        assertThat(wh[4]).isGreaterThan(wh[0]);
    }

    /** A night shorter at both ends never empties a bank sooner that a load by night drains. */
    @ParameterizedTest
    @ValueSource(strings = {"60 Ah", "100 Ah", "160 Ah", "250 Ah"})
    void shorterNightsLastLonger(String capacity) {
        double before = 0;
        for (String night : new String[] {"19:00-08:00", "20:00-07:00", "22:00-05:00", "23:00-04:00"}) {
            RunResult run = new Van()
                    .with("battery.capacity", capacity)
                    .load("lamp", "6 A", night)
                    .run(Van.dark(25));
            double days = Double.isNaN(run.daysToEmpty()) ? Double.POSITIVE_INFINITY : run.daysToEmpty();
            assertThat(days).isGreaterThanOrEqualTo(before);
            before = days;
        }
    }

    /** Who drives all day has enough from either: the smaller source then ties with the larger. */
    @Test
    void whoNeverStopsNeedsNoLargerSource() {
        RunResult factory = drivingAllDay()
                .with("factory-alternator.preset", "factory 180 A class")
                .with("factory-alternator.charger", "30 A")
                .run(Van.dark(30));
        RunResult second =
                drivingAllDay().with("second-alternator.preset", "large frame").run(Van.dark(30));
        for (RunResult run : new RunResult[] {factory, second}) {
            assertThat(run.holds()).isTrue();
            assertThat(run.energy().unservedWh()).isZero();
        }
        assertThat(second.lowestSoc()).isCloseTo(factory.lowestSoc(), within(0.01));
        double servedWh = factory.energy().wh(Account.LOADS);
        assertThat(second.energy().wh(Account.LOADS)).isCloseTo(servedWh, within(1e-9 * servedWh));
    }

    private static Van drivingAllDay() {
        return new Van()
                .with("trip.timetable.all days", "00:00 drive highway, away")
                .load("lamp", "100 W", "always");
    }

    /**
     * The same place so many time zones further east, with clock and weather moved along, has the same days. The sun itself moves
     * on within those hours, by 0.02° of declination an hour in March, 0.1 % of the light of a day; an air conditioner at part load doubles that.
     */
    @ParameterizedTest
    @ValueSource(ints = {-7, 3, 5, 9})
    void clockAndPlaceMoveTogether(int hoursEast) {
        WeatherSeries here = Van.eastward(IdentitiesTest::airC, IdentitiesTest::ghiWm2, 0);
        WeatherSeries there = Van.eastward(IdentitiesTest::airC, IdentitiesTest::ghiWm2, hoursEast);
        RunResult one = travelling("UTC", 0).run(here);
        String zone = "Etc/GMT" + (hoursEast < 0 ? "+" : "-") + Math.abs(hoursEast);
        RunResult other = travelling(zone, 15 * hoursEast).run(there);
        for (Account account : new Account[] {Account.SOLAR, Account.LOADS, Account.COOLING}) {
            double wh = one.energy().wh(account);
            assertThat(other.energy().wh(account)).as(account.label()).isCloseTo(wh, within(0.002 * wh));
        }
    }

    private static double airC(int hour) {
        return 28 + 6 * Math.sin((hour - 9) * Math.PI / 12);
    }

    private static double ghiWm2(int hour) {
        return hour >= 7 && hour < 17 ? 800 : 0;
    }

    private static Van travelling(String zone, int longitudeDeg) {
        return new Van()
                .with("place.zone", zone)
                .with("place.longitude", longitudeDeg + "°")
                .with("place.latitude", "20°")
                .with("trip.timetable.all days", "00:00 park open, asleep\n08:00 park open, awake")
                .with("cabin.set.asleep", "24 °C")
                .with("cabin.set.awake", "25 °C")
                .with("cooling.preset", "variable-speed roof unit")
                .with("solar.power", "400 W")
                .with("battery.capacity", "4000 Ah")
                .load("lamp", "20 W", "awake");
    }
}
