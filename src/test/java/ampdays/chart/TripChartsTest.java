package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import ampdays.chart.EnergyBalance.Part;
import ampdays.chart.EnergyBalance.Step;
import ampdays.results.Account;
import ampdays.results.DayTotals;
import ampdays.results.Energy;
import ampdays.results.RunResult;
import ampdays.study.Comparison;
import ampdays.study.Comparison.Option;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the charts of energy, cabin and alternators say, held against the results that they were made of. */
class TripChartsTest {
    private static final Comparison COMPARISON = InventedComparison.of(4);
    private static final Option BASE = COMPARISON.options().get(0);
    private static final Option SECOND = COMPARISON.options().get(3);

    /** A small ledger that closes: 1,000 + 500 = 1,100 + 90 + 210, all Wh. */
    private static Energy ledger(double storedWh) {
        Map<Account, Double> wh = new EnumMap<>(Account.class);
        for (Account account : Account.values()) {
            wh.put(account, 0.0);
        }
        wh.put(Account.SOLAR, 1000.0);
        wh.put(Account.FACTORY_ALTERNATOR, 500.0);
        wh.put(Account.SOLAR_CONTROLLER, 60.0);
        wh.put(Account.BANK_RESISTANCE, 30.0);
        wh.put(Account.STORED, storedWh);
        wh.put(Account.COOLING, 1310.0 - storedWh);
        wh.put(Account.REFRIGERATOR, 100.0);
        wh.put(Account.UNSERVED, 2345.6);
        return new Energy(wh);
    }

    private static Option with(Energy energy, List<DayTotals> days) {
        RunResult r = BASE.result();
        return new Option(
                new RunResult(
                        r.option(),
                        r.zone(),
                        r.startEpochSecond(),
                        r.stepSeconds(),
                        days.size() * 1440,
                        r.reserveShare(),
                        r.daysToEmpty(),
                        r.holds(),
                        r.trendPerDay(),
                        r.lowestSoc(),
                        r.lowestSocEpochSecond(),
                        r.comfortableNights(),
                        r.nights(),
                        energy,
                        r.limitHours(),
                        r.curtailedWhByCause(),
                        r.servedWhByUse(),
                        r.unservedWhByUse(),
                        r.fuelLitres(),
                        r.engineChargingHours(),
                        r.alternatorPeakCaseC(),
                        r.cycles(),
                        r.ageing(),
                        r.ledgerResidualWh(),
                        days,
                        r.findings()),
                BASE.curve(),
                BASE.ordinaryDay(),
                BASE.worstDay(),
                BASE.cabin(),
                BASE.alternators());
    }

    @Test
    void theStairGoesFromProducedToUsedAndEndsAtNothing() {
        EnergyBalance chart =
                EnergyBalance.of(COMPARISON, with(ledger(210), BASE.result().days()));
        assertThat(chart.steps())
                .containsExactly(
                        new Step("solar", Part.SOURCE, 0, 1000, "1,000 Wh, 66.7 %"),
                        new Step("factory alternator", Part.SOURCE, 1000, 1500, "500 Wh, 33.3 %"),
                        new Step("produced", Part.SUM, 0, 1500, "1,500 Wh, 100.0 %"),
                        new Step("solar controller", Part.LOSS, 1500, 1440, "60 Wh, 4.0 %"),
                        new Step("bank resistance", Part.LOSS, 1440, 1410, "30 Wh, 2.0 %"),
                        new Step("left in the bank", Part.BANK, 1410, 1200, "210 Wh, 14.0 %"),
                        new Step("used", Part.SUM, 0, 1200, "1,200 Wh, 80.0 %"),
                        new Step("cooling", Part.USE, 1200, 100, "1,100 Wh, 73.3 %"),
                        new Step("refrigerator", Part.USE, 100, 0, "100 Wh, 6.7 %"));
        assertThat(chart.xLabel()).isEqualTo("energy, kWh");
        assertThat(chart.outside()).isEqualTo("Outside this sum: asked for and not served, 2,346 Wh.");
    }

    @Test
    void whatTheBankGaveCountsWithTheSources() {
        EnergyBalance chart =
                EnergyBalance.of(COMPARISON, with(ledger(-300), BASE.result().days()));
        assertThat(chart.steps())
                .contains(
                        new Step("taken from the bank", Part.BANK, 1500, 1800, "300 Wh, 16.7 %"),
                        new Step("produced and taken", Part.SUM, 0, 1800, "1,800 Wh, 100.0 %"));
        assertThat(chart.steps().get(chart.steps().size() - 1).toWh()).isZero();
    }

    @Test
    void daysAddUpToTheTrip() {
        EnergyDays chart = EnergyDays.of(COMPARISON, SECOND);
        assertThat(chart.yLabel()).isEqualTo("kWh a day: sources up, uses down");
        assertThat(chart.sources()).containsExactly("solar", "factory alternator", "second alternator");
        assertThat(chart.uses()).startsWith("loads", "cooling", "refrigerator");
        assertThat(chart.bars()).hasSize(14);
        for (int i = 0; i < chart.sources().size(); i++) {
            int source = i;
            String name = chart.sources().get(i);
            Account account = Account.valueOf(name.toUpperCase(Locale.ROOT).replace(' ', '_'));
            double kwh = chart.bars().stream()
                    .mapToDouble(bar -> bar.sourceKwh().get(source))
                    .sum();
            assertThat(1000 * kwh).as(name).isCloseTo(SECOND.result().energy().wh(account), within(1e-6));
        }
        assertThat(EnergyDays.of(COMPARISON, BASE).uses()).endsWith("unserved");
    }

    /** 100 days in bars of 7: 15 bars, the last of two days; each is the mean of its days. */
    @Test
    void aLongTripHasMeansOfSeveralDays() {
        List<DayTotals> days = IntStream.range(0, 100)
                .mapToObj(day -> {
                    Map<Account, Double> wh = new EnumMap<>(ledger(0).whByAccount());
                    wh.put(Account.SOLAR, 1000.0 * day);
                    return new DayTotals(
                            LocalDate.of(2024, 1, 1).plusDays(day),
                            "days",
                            day * 1440,
                            1440,
                            new Energy(wh),
                            0.5,
                            0.5,
                            30,
                            20);
                })
                .toList();
        EnergyDays chart = EnergyDays.of(COMPARISON, with(ledger(0), days));
        assertThat(chart.yLabel()).isEqualTo("kWh a day, mean of 7 days: sources up, uses down");
        assertThat(chart.bars()).hasSize(15);
        assertThat(chart.bars().get(0).sourceKwh().get(0)).isCloseTo(3, within(1e-12));
        assertThat(chart.bars().get(14).fromDay()).isEqualTo(98);
        assertThat(chart.bars().get(14).toDay()).isEqualTo(100);
        assertThat(chart.bars().get(14).sourceKwh().get(0)).isCloseTo(98.5, within(1e-12));
        assertThat(chart.highestSourceKwh()).isCloseTo(98.5 + 0.5, within(1e-12));
    }

    @Test
    void theCabinTellsBandAndHoursOutOfIt() {
        CabinChart chart = CabinChart.of(COMPARISON, BASE);
        assertThat(chart.temperatureLabel()).isEqualTo("temperature, °C");
        assertThat(chart.comfortLabel()).isEqualTo("comfort band asleep, 18 to 27 °C");
        assertThat(chart.sleeps()).hasSize(15);
        double warm = chart.sleeps().stream()
                .mapToDouble(CabinChart.Sleep::tooWarmHours)
                .sum();
        double asleep =
                chart.sleeps().stream().mapToDouble(CabinChart.Sleep::hours).sum();
        assertThat(asleep).isCloseTo(13 * 8.5 + 6.5 + 2, within(1e-9));
        assertThat(chart.outOfBandTotal())
                .isEqualTo(String.format(Locale.ROOT, "too warm %.1f h, too cold 0.8 h, of 119.0 h asleep", warm));
        assertThat(chart.day()).hasSameSizeAs(chart.cabinC()).hasSameSizeAs(chart.outsideC());
        assertThat(chart.coolestC()).isLessThanOrEqualTo(chart.comfortLowC());
    }

    @Test
    void halfDegreesOfTheBandAreKept() {
        assertThat(Words.tenth(27.5)).isEqualTo("27.5");
        assertThat(Words.tenth(15)).isEqualTo("15");
    }

    @Test
    void aDriveTellsTemperaturesCurrentsAndWhatRuled() {
        DriveChart chart = DriveChart.of(COMPARISON, SECOND);
        assertThat(chart.title()).isEqualTo("second alternator: the alternators on the day on which they give most");
        assertThat(chart.subtitle()).endsWith("Friday 12 July 2024");
        assertThat(chart.temperatureLabel()).contains("°C");
        assertThat(chart.currentLabel()).contains("A");
        assertThat(chart.temperatures())
                .containsExactly(
                        "second alternator winding",
                        "second alternator case",
                        "factory alternator winding",
                        "factory alternator case");
        assertThat(chart.currents())
                .containsExactly("second alternator", "factory alternator", "DC-DC charger, into the bank");
        assertThat(chart.limits())
                .containsExactly(
                        new DriveChart.Rule("alternator heat", "50 min"),
                        new DriveChart.Rule("regulator cap", "36 min"),
                        new DriveChart.Rule("start delay and ramp", "4 min"));
        assertThat(chart.columns()).hasSize(2);
        assertThat(chart.columns().get(0).ruled().get(2)).containsExactly(new DriveChart.Span(6.5, 6.5 + 1 / 30.0));
        assertThat(DriveChart.of(COMPARISON, BASE).title())
                .isEqualTo("as it is: the alternator on the day on which it gives most");
    }

    @Test
    void operatingPointsTellCurvesSpeedsAndTime() {
        OperatingPoints chart = OperatingPoints.of(COMPARISON, SECOND);
        assertThat(chart.units())
                .extracting(OperatingPoints.Unit::heading)
                .containsExactly("second alternator", "factory alternator");
        OperatingPoints.Unit unit = chart.units().get(0);
        assertThat(unit.coldLabel()).isEqualTo("cold, windings at 25 °C");
        assertThat(unit.hotLabel()).isEqualTo("hot, windings at 130 °C");
        assertThat(unit.capLabel()).isEqualTo("regulator cap");
        assertThat(chart.units().get(1).capLabel()).isEmpty();
        assertThat(unit.xLabel()).isEqualTo("rotor speed, 1/min");
        assertThat(unit.yLabel()).isEqualTo("output, A");
        assertThat(chart.units().get(1).yLabel()).isEqualTo("output, A, the vehicle's own load included");
        assertThat(unit.speeds())
                .extracting(OperatingPoints.Speed::words, OperatingPoints.Speed::note)
                .contains(tuple("town", "4.0 h, mean 54 A"));
    }
}
