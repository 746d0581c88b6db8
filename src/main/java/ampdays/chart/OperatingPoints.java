package ampdays.chart;

import ampdays.results.Account;
import ampdays.results.AlternatorWork;
import ampdays.results.AlternatorWork.Pace;
import ampdays.study.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * Where the alternators of one option worked on the trip: at each rotor speed how long at which current, between the
 * cold and the hot curve.
 *
 * @param units one panel each
 */
public record OperatingPoints(String title, String subtitle, List<Unit> units) implements ChartModel {
    public OperatingPoints {
        units = List.copyOf(units);
    }

    /**
     * One alternator.
     *
     * @param coldLabel name of the cold curve with its winding temperature
     * @param hotLabel the same of the hot curve
     * @param rpm places of the curves, rotor revolutions per minute
     * @param capLabel name of the line of the regulator's cap; empty where it caps nothing
     * @param highestA highest point of the curves and of the bins that occurred, A
     * @param binA width of the bins of current, A
     * @param longestHours longest time in one bin, h
     * @param speeds the speeds that occurred, rising
     */
    public record Unit(
            String heading,
            String xLabel,
            String yLabel,
            String coldLabel,
            String hotLabel,
            String capLabel,
            List<Double> rpm,
            List<Double> coldA,
            List<Double> hotA,
            List<Double> capA,
            double highestA,
            double binA,
            double longestHours,
            List<Speed> speeds) {}

    /**
     * One state of the engine.
     *
     * @param words its name
     * @param note how long, and the mean current
     * @param binHours time in each bin of current, h
     */
    public record Speed(String words, String note, double rpm, List<Double> binHours) {}

    /**
     * The trip of one option.
     *
     * @param option one with alternators that gave energy
     */
    public static OperatingPoints of(Comparison comparison, Comparison.Option option) {
        List<Unit> units = option.alternators().orElseThrow().work().stream()
                .map(OperatingPoints::unit)
                .toList();
        return new OperatingPoints(
                option.result().option() + ": where the alternator" + (units.size() > 1 ? "s" : "") + " worked",
                comparison.title() + ", all time with the engine on; the wider the mark, the longer at that current",
                units);
    }

    private static Unit unit(AlternatorWork work) {
        double curveA = work.coldA().get(work.coldA().size() - 1);
        boolean caps = DoubleStream.of(work.capA().toArray()).anyMatch(a -> a < curveA);
        List<Double> capA = new ArrayList<>();
        for (int i = 0; caps && i < work.capA().size(); i++) {
            double a = work.capA().get(i);
            capA.add(a < work.coldA().get(i) ? a : Double.NaN);
        }
        int highestBin =
                work.paces().stream().mapToInt(pace -> lastBin(pace) + 1).max().orElse(0);
        return new Unit(
                work.name(),
                "rotor speed, 1/min",
                work.name().equals(Account.FACTORY_ALTERNATOR.label())
                        ? "output, A, the vehicle's own load included"
                        : "output, A",
                curve("cold", work.coldC()),
                curve("hot", work.hotC()),
                caps ? "regulator cap" : "",
                Words.list(work.rotorRpm()),
                Words.list(work.coldA()),
                Words.list(work.hotA()),
                capA,
                Math.max(curveA, highestBin * work.binA()),
                work.binA(),
                work.paces().stream()
                        .flatMapToDouble(pace -> DoubleStream.of(pace.binHours().toArray()))
                        .max()
                        .orElse(0),
                work.paces().stream().map(OperatingPoints::speed).toList());
    }

    private static int lastBin(Pace pace) {
        int last = pace.binHours().size() - 1;
        while (last > 0 && pace.binHours().get(last) == 0) {
            last--;
        }
        return last;
    }

    private static String curve(String name, double windingC) {
        return name + ", windings at " + Math.round(windingC) + " °C";
    }

    private static Speed speed(Pace pace) {
        return new Speed(
                pace.name(),
                String.format(
                        Locale.ROOT, "%.1f h, mean %.0f A", pace.binHours().sum(), pace.meanA()),
                pace.rotorRpm(),
                Words.list(pace.binHours()));
    }
}
