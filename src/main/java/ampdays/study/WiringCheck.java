package ampdays.study;

import ampdays.results.Finding.Severity;
import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import ampdays.results.WiringRule;
import ampdays.scenario.Variant;
import ampdays.sim.BankTerminals;
import ampdays.sim.CircuitLog;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.study.CircuitDraft.Change;
import ampdays.study.CircuitRules.Breach;
import ampdays.study.CircuitRules.Setting;
import ampdays.wiring.Circuit;
import ampdays.wiring.End;
import ampdays.wiring.End.Point;
import ampdays.wiring.Fault;
import ampdays.wiring.Harness;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Compares every circuit of a design with the currents and the air that it met on the simulated trip. */
public final class WiringCheck {
    /** Short-circuit current of a start battery, A; from memory, three times its cold-cranking amps. */
    private static final double START_BATTERY_A = 3000;

    /** Short-circuit current of panels over their best; practice. */
    private static final double PANELS_SHORT = 1.25;

    private static final double CABLE_TOLERANCE = 0.25;
    private static final double CABLE_TOLERANCE_OHM = 0.0005;

    private final RunPlan plan;
    private final Variant variant;
    private final List<Circuit> circuits = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();
    private final Harness harness;
    private final ZoneId zone;
    private final CircuitLog log;
    private final BankTerminals bank;
    private final List<WiringRow> rows = new ArrayList<>();
    private final List<WiringFinding> findings = new ArrayList<>();
    /** Cable resistances that the scenario should say. */
    private final Map<String, String> cables = new LinkedHashMap<>();
    /** Path to text, in the order of the circuits. */
    private final Map<String, String> changes = new LinkedHashMap<>();

    private WiringCheck(RunPlan plan) {
        this.plan = plan;
        this.variant = plan.variant();
        for (Circuit circuit : variant.design().circuits()) {
            boolean there =
                    variant.design().has(circuit.from()) && variant.design().has(circuit.to());
            if (there) {
                circuits.add(circuit);
            } else {
                leftOut.add(circuit.name());
            }
        }
        this.harness = new Harness(circuits);
        Simulator.WithCircuits run = Simulator.runWithCircuits(plan, circuits);
        this.zone = run.result().zone();
        this.log = run.circuits();
        this.bank = log.bank();
    }

    /**
     * What came out, and the smallest changes found that clear it; cables to simulate with come last, when nothing else is to
     * be changed about them.
     */
    public record Checked(WiringResult result, Map<String, String> changes) {}

    /**
     * Simulates a design and checks its circuits.
     *
     * @param offered whether they were offered by the program
     */
    public static Checked of(RunPlan plan, boolean offered) {
        WiringCheck check = new WiringCheck(plan);
        for (int i = 0; i < check.circuits.size(); i++) {
            check.circuit(i);
        }
        check.secondAlternator();
        if (!offered) {
            check.simulatedCables();
        }
        WiringResult result = new WiringResult(
                check.variant.name(),
                check.zone,
                offered,
                check.variant.design().voltages().bankV(),
                check.bankFaultA(check.circuits),
                check.rows,
                check.findings,
                check.questions(),
                check.leftOut);
        return new Checked(result, check.changes.isEmpty() ? check.cables : check.changes);
    }

    private void circuit(int i) {
        Circuit circuit = circuits.get(i);
        CircuitTrace trace = CircuitTrace.of(log, i);
        Setting setting = setting(circuit, trace);
        List<Breach> breaches = CircuitRules.broken(circuit, trace, setting);
        rows.add(CircuitRows.row(circuit, trace, setting));
        if (breaches.isEmpty()) {
            return;
        }
        Repair repair = Repair.of(circuit, trace, setting, breaches);
        WiringWords words = new WiringWords(circuit, setting, trace);
        for (Breach breach : breaches) {
            findings.add(finding(
                    circuit.name(),
                    breach,
                    words.measured(breach),
                    repair.remedy(breach.rule()).map(WiringWords::remedy).orElse(words.noRemedy(breach.rule()))));
        }
        repair.whole().ifPresent(whole -> whole.changes().forEach(change -> change(circuit, change)));
    }

    private void change(Circuit circuit, Change change) {
        changes.put("circuits." + circuit.name() + "." + change.key(), change.text());
    }

    private WiringFinding finding(String where, Breach breach, String measured, String remedy) {
        boolean timed = breach.firstStep() >= 0;
        return new WiringFinding(
                breach.severity(),
                where,
                breach.rule(),
                measured,
                timed ? plan.clock().epochSecond(breach.firstStep()) : 0,
                timed ? breach.steps() * plan.clock().stepSeconds() / 60.0 : Double.NaN,
                breach.worst(),
                breach.limit(),
                breach.unit(),
                remedy);
    }

    private Setting setting(Circuit circuit, CircuitTrace trace) {
        List<Circuit> upstream = harness.upstream(circuit);
        double ratingA = upstream.stream()
                .flatMap(c -> c.protection().stream())
                .mapToDouble(Protection::ratingA)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        End end = harness.batteryEnd(circuit);
        double faultA = faultA(circuit, end, trace);
        boolean backed = upstream.stream()
                .flatMap(c -> c.protection().stream())
                .anyMatch(p -> !p.kind().isBreaker()
                        && p.interruptA() >= Math.min(faultA, CircuitRules.LARGE_BANK_INTERRUPT_A));
        return new Setting(
                variant.design().voltages().at(Harness.side(circuit)),
                variant.site().elevationM(),
                end,
                faultA,
                ratingA,
                backed);
    }

    private double faultA(Circuit circuit, End end, CircuitTrace trace) {
        return switch (Harness.side(circuit)) {
            case VEHICLE -> circuit.sourceA().orElse(START_BATTERY_A);
            case PANELS -> PANELS_SHORT * trace.mostA();
            case HOUSE -> {
                List<Circuit> way = new ArrayList<>(harness.upstream(circuit));
                way.add(0, circuit);
                yield Fault.behindA(bankFaultA(way), bank.emfV(), harness.ohmToBank(end));
            }
        };
    }

    /** What the bank gives into a short: as one of these circuits says, else as estimated. */
    private double bankFaultA(List<Circuit> some) {
        OptionalDouble said = some.stream()
                .filter(c -> Harness.side(c) == Harness.Side.HOUSE)
                .flatMap(c -> c.sourceA().stream().boxed())
                .mapToDouble(Double::doubleValue)
                .max();
        return said.orElse(bank.faultA());
    }

    /** Whether the second alternator can give more than the bank may take. */
    private void secondAlternator() {
        if (log.secondMostA() > bank.chargeMostA()) {
            String path = "second-alternator.cap";
            String cap = CircuitDraft.number(Math.floor(bank.chargeMostA())) + " A";
            findings.add(finding(
                    "second alternator",
                    Breach.standing(
                            WiringRule.CHARGE_LIMIT, Severity.CAUTION, log.secondMostA(), bank.chargeMostA(), "A"),
                    WiringWords.chargeLimit(log.secondMostA(), bank.chargeMostA()),
                    path + " " + cap));
            changes.put(path, cap);
        }
    }

    /** Whether the simulation reckons with about the cables that are said here. */
    private void simulatedCables() {
        End second = End.of(Point.SECOND_ALTERNATOR);
        if (circuits.stream().anyMatch(c -> c.joins(Point.SECOND_ALTERNATOR))) {
            simulated("second-alternator", bank.secondCableOhm(), harness.ohmToBank(second));
        }
        double vehicleOhm = circuits.stream()
                .filter(c -> Harness.side(c) == Harness.Side.VEHICLE)
                .mapToDouble(c -> c.loopOhm(20))
                .sum();
        if (vehicleOhm > 0) {
            simulated("factory-alternator", bank.factoryCableOhm(), vehicleOhm);
        }
    }

    private void simulated(String section, double simulatedOhm, double ohm) {
        double offOhm = Math.abs(simulatedOhm - ohm);
        if (offOhm > CABLE_TOLERANCE * simulatedOhm && offOhm > CABLE_TOLERANCE_OHM) {
            String text = WiringWords.milliohm(ohm);
            findings.add(finding(
                    section.replace('-', ' '),
                    Breach.standing(WiringRule.SIMULATED_CABLE, Severity.NOTE, 1000 * simulatedOhm, 1000 * ohm, "mΩ"),
                    "simulated with " + WiringWords.milliohm(simulatedOhm) + ", but its circuits have " + text
                            + " there and back",
                    section + ".cable " + text));
            cables.put(section + ".cable", text);
        }
    }

    private List<String> questions() {
        List<String> questions = new ArrayList<>();
        Optional<Circuit> second =
                circuits.stream().filter(c -> c.joins(Point.SECOND_ALTERNATOR)).findFirst();
        boolean estimated = circuits.stream()
                .filter(c -> Harness.side(c) == Harness.Side.HOUSE)
                .noneMatch(c -> c.sourceA().isPresent());
        if (estimated) {
            questions.add(WiringWords.faultQuestion(bank.faultA()));
        }
        second.ifPresent(circuit -> {
            questions.add(WiringWords.MOUNT_QUESTION);
            if (circuit.opening() == Circuit.Opening.NOT_KNOWN) {
                questions.add(WiringWords.OPENING_QUESTION);
            }
        });
        boolean breaker = circuits.stream()
                .flatMap(c -> c.protection().stream())
                .anyMatch(p -> p.kind() == ProtectionKind.THERMAL_BREAKER);
        if (breaker) {
            questions.add(WiringWords.BREAKER_QUESTION);
        }
        return questions;
    }
}
