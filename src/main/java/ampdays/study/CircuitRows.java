package ampdays.study;

import ampdays.results.WiringRow;
import ampdays.study.CircuitRules.Setting;
import ampdays.wiring.CableRun;
import ampdays.wiring.Circuit;
import ampdays.wiring.Protection;
import java.util.Optional;

/** The line of a circuit in the table to print. */
final class CircuitRows {
    private CircuitRows() {}

    static WiringRow row(Circuit circuit, CircuitTrace trace, Setting setting) {
        double dropV = 0;
        double conductorC = Double.NEGATIVE_INFINITY;
        double jointC = Double.NEGATIVE_INFINITY;
        double protectionC = Double.NaN;
        double leastHoldA = Double.NaN;
        Optional<Protection> protection = circuit.protection();
        for (int i = 0; i < trace.size(); i++) {
            double currentA = trace.currentA(i);
            double airC = trace.airC(circuit.place(), i);
            dropV = Math.max(dropV, circuit.dropV(airC, currentA));
            conductorC = Math.max(conductorC, circuit.conductorC(airC, currentA));
            jointC = Math.max(jointC, circuit.worstJointC(airC, currentA));
            if (protection.isPresent() && currentA > 0) {
                double ownC = circuit.protectionC(trace.airC(protection.get().place(), i), currentA);
                double holdA = protection.get().holdA(ownC, setting.elevationM());
                protectionC = protectionC >= ownC ? protectionC : ownC;
                leastHoldA = leastHoldA <= holdA ? leastHoldA : holdA;
            }
        }
        double hottestC = trace.hottestC(circuit.place());
        return new WiringRow(
                circuit.name(),
                circuit.from().label(),
                circuit.to().label(),
                circuit.conductor().label(),
                circuit.conductor().inOtherMeasure(),
                circuit.lengthM(),
                circuit.bodyOhm().isPresent(),
                trace.mostA(),
                trace.continuousA(),
                circuit.allowedA(hottestC),
                dropV,
                CableRun.dropShare(dropV, setting.nominalV()),
                circuit.dropLimitShare(),
                circuit.place().label(),
                hottestC,
                conductorC,
                jointC,
                protection.map(p -> p.kind().label()).orElse("none"),
                protection.map(Protection::ratingA).orElse(Double.NaN),
                leastHoldA,
                protectionC,
                setting.faultA(),
                protection.map(Protection::interruptA).orElse(Double.NaN));
    }
}
