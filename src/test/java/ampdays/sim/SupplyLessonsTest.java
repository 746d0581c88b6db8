package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.alternator.AlternatorPhysics;
import ampdays.alternator.AlternatorSpec;
import ampdays.battery.Battery;
import ampdays.results.Account;
import ampdays.results.Finding;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The kernel in numbered lessons, continued from {@link BankLessonsTest}. This part: what comes in. Source where none is
 * named: closed forms and identities, worked in the comment.
 */
class SupplyLessonsTest {
    /**
     * 13. Who gives first when all together could give more than is needed: solar, then shore, then the second alternator,
     * then the factory alternator. The bank is full, so that what is given is what is asked.
     */
    @ParameterizedTest
    @CsvSource({"60, 60, 0, 0, 0", "250, 100, 150, 0, 0", "400, 100, 200, 100, 0", "700, 100, 200, 250, 150"})
    void lesson13Order(double askedW, double solarW, double shoreW, double secondW, double factoryW) {
        Battery full = Battery.of(new Van().lossless().variant().design().bank(), 25, 60);
        full.open();
        Minute m = new Minute();
        m.askedW = askedW;
        m.solarPossibleW = 100;
        m.solarCapA = 50;
        m.shorePossibleW = 200;
        m.shoreCapA = 50;
        m.secondPossibleA = 250 / full.emfV();
        m.secondSetPointV = 14.2;
        m.secondCableOhm = 0.002;
        m.factoryPossibleW = 300;
        m.factoryCapA = 50;
        Bus.solve(m, full);
        assertThat(m.solarW).isCloseTo(solarW, within(1e-9));
        assertThat(m.shoreW).isCloseTo(shoreW, within(1e-9));
        assertThat(m.secondA * m.busV).isCloseTo(secondW, within(1e-9));
        assertThat(m.factoryW).isCloseTo(factoryW, within(1e-9));
        assertThat(m.bankA).isZero();
    }

    private static Van hungryBank() {
        return new Van()
                .lossless()
                .with("battery.capacity", "4000 Ah")
                .with("battery.start", "50 %")
                .with("trip.days", "1");
    }

    private static Van secondAlternator(String timetable) {
        return hungryBank().with("second-alternator.preset", "large frame").with("trip.timetable.all days", timetable);
    }

    /**
     * 14. A set point behind a cable: with 14.2 V, 20 mΩ of cable and a bank of 13.16 V (half full, 25 °C) behind 5 mΩ,
     * Ohm's law leaves 1.04 V/25 mΩ = 41.6 A of the more than 100 A on offer. Tolerance: 1 mV per cell of the table.
     */
    @Test
    void lesson14CableLimits() {
        List<Double> currentsA = new ArrayList<>();
        List<Limit> limits = new ArrayList<>();
        secondAlternator("00:00 idle, away")
                .with("battery.resistance", "5 mΩ")
                .with("second-alternator.cable", "20 mΩ")
                .run(Van.dark(25), (m, state) -> {
                    currentsA.add(m.secondA);
                    limits.add(m.ruling);
                    assertThat(m.busV + 0.020 * m.secondA).isLessThanOrEqualTo(14.2 + 1e-9);
                });
        assertThat(currentsA.get(1)).isCloseTo(41.6, within(0.004 / 0.025));
        assertThat(limits.get(1)).isEqualTo(Limit.CABLE);
    }

    /**
     * What holds a source back is judged at the voltage that results, not at one on the way to it: 5 kW of sun would lift
     * the bus past a set point of 13.5 V, but its controller passes 10 A only, and then nothing holds back the 20 A of the
     * second alternator: 13.16 V + 30 A · 1.5 mΩ + 20 A · 2 mΩ = 13.25 V.
     */
    @Test
    void lesson14TheCableIsJudgedAtTheVoltageThatResults() {
        Battery half = Battery.of(
                new Van().with("battery.start", "50 %").variant().design().bank(), 25, 60);
        half.open();
        Minute m = new Minute();
        m.solarPossibleW = 5000;
        m.solarCapA = 10;
        m.secondPossibleA = 20;
        m.secondSetPointV = 13.5;
        m.secondCableOhm = 0.002;
        Bus.solve(m, half);
        assertThat(m.bankA).isCloseTo(30, within(1e-9));
        assertThat(m.secondRegulated).isFalse();
    }

    /**
     * 15. After every start nothing for 30 s, then a straight rise over 15 s: the first minute's mean is (60 - 30 - 7.5)/60
     * = 0.375 of what the second minute gives. Tolerance: the machine warms by some kelvin within a minute, at 0.154 %/K.
     */
    @Test
    void lesson15RampAfterEveryStart() {
        List<Double> availableA = new ArrayList<>();
        RunResult run = secondAlternator(
                        "00:00 idle, away\n00:10 park open, away\n00:20 idle, away\n00:30 park open, away")
                .run(Van.dark(25), (m, state) -> availableA.add(m.secondPossibleA));
        assertThat(availableA.get(0) / availableA.get(1)).isCloseTo(0.375, within(0.01));
        assertThat(availableA.get(20) / availableA.get(21)).isCloseTo(0.375, within(0.01));
        assertThat(availableA.get(10)).isZero();
        assertThat(run.limitHours().get(Limit.START_RAMP)).isCloseTo(2 / 60.0, within(1e-12));
    }

    /** The ramp is over when it is over: one minute of a day at idle, also where its seconds are no round number. */
    @ParameterizedTest
    @ValueSource(strings = {"15 s", "15.3 s", "7.77 s"})
    void lesson15TheRampEnds(String ramp) {
        RunResult run = secondAlternator("00:00 idle, away")
                .with("second-alternator.ramp", ramp)
                .run(Van.dark(25));
        assertThat(run.limitHours().get(Limit.START_RAMP)).isCloseTo(1 / 60.0, within(1e-12));
    }

    /**
     * 16. A belt carries a torque: 2 kW from 3,500 1/min, so 2 · 2,100/3,500 = 1.2 kW at idle (750 1/min at a ratio of 2.8).
     * What reaches the terminals is below that by the losses, which no alternator of this class keeps below a tenth.
     */
    @Test
    void lesson16BeltLimits() {
        List<Double> outputW = new ArrayList<>();
        RunResult run = secondAlternator("00:00 idle, away\n00:10 park open, away")
                .with("second-alternator.belt", "2 kW")
                .run(Van.dark(25), (m, state) -> outputW.add(m.secondSourceW));
        assertThat(outputW.get(5)).isBetween(0.5 * 1200, 0.9 * 1200);
        assertThat(run.limitHours().get(Limit.BELT)).isCloseTo(9 / 60.0, within(1e-12));
    }

    /** 17. Hours of town traffic on a hot day: the case warms into the regulator's cut-back (105 to 120 °C) and stays in it. */
    @Test
    void lesson17HeatLimits() {
        RunResult run = secondAlternator("00:00 drive town, away\n06:00 park open, away")
                .run(Van.dark(45));
        assertThat(run.limitHours().get(Limit.ALTERNATOR_HEAT)).isGreaterThan(3);
        assertThat(run.alternatorPeakCaseC()).isBetween(105.0, 120.0);
        assertThat(run.findings().stream().map(Finding::kind)).contains("alternator held back by its own heat");
    }

    /**
     * 18. After a day on the highway the alternator is at the algebraic steady state: what each node takes in it gives off
     * (tolerance 1 W of some 1,000: its time constants are minutes). Electrical output and heat make up the shaft power;
     * fuel is 0.220 l per kWh of what of it the current costs (diesel, (EU) 2017/785, annex).
     */
    @Test
    void lesson18AlternatorSteadyState() {
        Van van = secondAlternator("00:00 drive highway, away")
                .with("battery.capacity", "100000 Ah")
                .with("battery.start", "10 %")
                .with("second-alternator.cap", "150 A");
        AlternatorSpec spec = van.variant().design().second().orElseThrow();
        double rotorRpm = 2200 * spec.pulleyRatio();
        double airC = 25 + 20;
        double cooling = AlternatorPhysics.coolingShare(rotorRpm, 1);
        double ohm = AlternatorPhysics.copperOhm(spec.ratedA(), spec.halfLoadEfficiency());
        double turningW = AlternatorPhysics.turningLossW(rotorRpm, spec.ratedA());
        double[] last = new double[4];
        double[] currentLossWh = {0};
        RunResult run = van.run(Van.dark(25), (m, state) -> {
            double lossW = AlternatorPhysics.electricalLossW(m.secondA, ohm, state.second.windingC(), spec.ratedA());
            currentLossWh[0] += lossW / 60;
            last[0] = lossW;
            last[1] = state.second.windingC();
            last[2] = state.second.caseC();
            last[3] = m.secondSourceW;
        });
        double acrossW = spec.windingToCaseWK() * (last[1] - last[2]);
        double fromWindingW = spec.windingToAirWK() * cooling * (last[1] - airC);
        double fromCaseW = spec.caseToAirWK() * cooling * (last[2] - airC);
        assertThat(fromWindingW + acrossW).isCloseTo(last[0], within(1.0));
        assertThat(fromCaseW - acrossW).isCloseTo(turningW, within(1.0));
        assertThat(last[3] + fromWindingW + fromCaseW)
                .isCloseTo(AlternatorPhysics.shaftW(last[3], last[0], turningW), within(2.0));
        double shaftKWh = (run.energy().wh(Account.SECOND_ALTERNATOR) + currentLossWh[0]) / 1000;
        assertThat(run.fuelLitres()).isCloseTo(0.220 * shaftKWh, within(1e-3 * run.fuelLitres()));
    }

    /** 19. Six hours on a hook-up of 300 W through a charger of 90 %: 1,800 Wh from the post, 1,620 Wh at the bus. */
    @Test
    void lesson19HookUp() {
        RunResult run = hungryBank()
                .with(
                        "trip.timetable.all days",
                        "00:00 park open, away\n12:00 park open hook-up, away\n18:00 park open, away")
                .with("shore-charger.preset", "50 A class")
                .with("shore-charger.efficiency", "90 %")
                .with("shore-charger.hook-up", "300 W")
                .run(Van.dark(25));
        assertThat(run.energy().wh(Account.SHORE)).isCloseTo(1800, within(1e-6));
        assertThat(run.energy().wh(Account.SHORE_CHARGER)).isCloseTo(180, within(1e-6));
    }

    private static double solarWh(String beam, String diffuse) {
        return hungryBank()
                .with("solar.power", "400 W")
                .with("trip.timetable.all days", "00:00 park shade, away")
                .with("shade.shade.beam", beam)
                .with("shade.shade.diffuse", diffuse)
                .run(Van.weather(hour -> 25, hour -> hour >= 9 && hour < 15 ? 800 : 0))
                .energy()
                .wh(Account.SOLAR);
    }

    /** 20. Shade: none of the light is no power; half of it is half the power and a little more, as cells stay cooler. */
    @Test
    void lesson20ShadedSun() {
        double openWh = solarWh("100 %", "100 %");
        assertThat(openWh).isPositive();
        assertThat(solarWh("0 %", "0 %")).isZero();
        assertThat(solarWh("50 %", "50 %") / openWh).isBetween(0.5, 0.55);
    }

    /** 21. A controller of 10 A holds the panels to 10 A times the bus voltage; the rest is curtailed by its rating. */
    @Test
    void lesson21ControllerLimits() {
        RunResult run = hungryBank()
                .with("solar.power", "400 W")
                .with("solar.controller", "10 A")
                .run(
                        Van.weather(hour -> 25, hour -> hour >= 9 && hour < 15 ? 800 : 0),
                        (m, state) -> assertThat(m.solarW / m.busV).isLessThanOrEqualTo(10 + 1e-9));
        assertThat(run.curtailedWhByCause()).containsOnlyKeys(Limit.SOLAR_CONTROLLER);
    }
}
