package ampdays.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Tells the draw of each appliance from readings taken while they were switched on and off.
 *
 * <p>Model: current = base draw + the draws of what is on + drift·(position − mean position) + scatter, solved by
 * weighted least squares. What was only ever on together is one draw.
 *
 * <p>Uncertainty. A reading is taken as right within one step of the last digit and its wavering to either side, evenly
 * spread (standard uncertainty half width/√3: JCGM 100:2008, 4.3.7). That judgement is itself worth {@link
 * #DEGREES_OF_JUDGEMENT} degrees of freedom (G.4.2, equation G.3: a relative uncertainty of about a third) and is joined
 * with what the readings show, weighted by degrees of freedom: s² = (4 + χ²)/(4 + ν); or s² = χ²/ν where that is more, so
 * that readings which scatter beyond the judgement speak for themselves (R. T. Birge, Physical Review 40 (1932) 207, from
 * memory). The interval is Student's at 95 % with 4 + ν degrees. The drift has one observation more, 0 within its uncertainty, so that it widens what depends on it
 * when nothing was read twice. Left out: an error of the meter's scale, jumps of the base draw, and that appliances
 * draw more or less at another voltage. Reference: LoadAuditTest.
 */
public final class LoadAudit {
    /** What the judgement of the meter counts beside readings. */
    static final double DEGREES_OF_JUDGEMENT = 4;

    private static final double CONFIDENCE = 0.95;
    /** Chance that a list without mistakes has a reading called contradictory. */
    private static final double FALSE_ALARM = 0.01;
    /** At most this part of the readings is left out as contradictory. */
    private static final double MOST_LEFT_OUT = 0.25;
    /** Below this nothing else checks a reading. */
    private static final double LEAST_CHECKED = 1e-6;
    /** Misfits that differ by less than this part are the same: the readings do not tell which is wrong. */
    private static final double TIE = 1e-6;

    private final Readings readings;
    private final List<Reading> rows;
    private final List<List<String>> groups;
    private LeastSquares fit;

    private LoadAudit(Readings readings) {
        this.readings = readings;
        this.rows = new ArrayList<>(readings.rows());
        this.groups = groups(readings);
        this.fit = fit();
    }

    public static Audit of(Readings readings) {
        return new LoadAudit(readings).audit();
    }

    private Audit audit() {
        List<Misfit> misfits = setMisfitsAside();
        double degrees = DEGREES_OF_JUDGEMENT + degreesOfFreedom();
        double scatter = scatter(degrees);
        double reach = scatter * new TDistribution(degrees).inverseCumulativeProbability(0.5 + CONFIDENCE / 2);
        List<Draw> draws = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            draws.add(draw(group, reach));
        }
        int drift = groups.size();
        return new Audit(
                draws,
                fit.value(drift),
                reach * fit.uncertainty(drift),
                scatter,
                fit.degreesOfFreedom(),
                Separation.of(readings, rows, groups, unknownGroups()),
                misfits);
    }

    /** Appliances by the readings in which they were on, the base draw among them as what is always on. */
    private static List<List<String>> groups(Readings readings) {
        Map<List<Boolean>, List<String>> byPattern = new LinkedHashMap<>();
        Stream.concat(Stream.of(Draw.BASE), readings.appliances().stream()).forEach(name -> {
            List<Boolean> pattern =
                    readings.rows().stream().map(row -> isOn(row, name)).toList();
            byPattern.computeIfAbsent(pattern, p -> new ArrayList<>()).add(name);
        });
        return List.copyOf(byPattern.values());
    }

    static boolean isOn(Reading row, String name) {
        return name.equals(Draw.BASE) || row.on().contains(name);
    }

    private LeastSquares fit() {
        int n = rows.size();
        int drift = groups.size();
        double[][] x = new double[n + 1][drift + 1];
        double[] y = new double[n + 1];
        double[] u = new double[n + 1];
        double middle = rows.stream().mapToDouble(Reading::position).average().orElse(0);
        for (int i = 0; i < n; i++) {
            Reading row = rows.get(i);
            for (int group = 0; group < drift; group++) {
                x[i][group] = isOn(row, groups.get(group).get(0)) ? 1 : 0;
            }
            x[i][drift] = row.position() - middle;
            y[i] = row.currentA();
            u[i] = uncertaintyA(readings.resolutionA(), row.waverA());
        }
        x[n][drift] = 1;
        u[n] = readings.driftA();
        return new LeastSquares(x, y, u);
    }

    /**
     * Standard uncertainty of one reading, A: half widths of one step and of the wavering, both evenly spread, over √3.
     *
     * @param resolutionA one step of the last digit, A
     * @param waverA how far the meter wavered to either side, A
     */
    static double uncertaintyA(double resolutionA, double waverA) {
        return Math.sqrt((resolutionA * resolutionA + waverA * waverA) / 3);
    }

    /** Sum of squares of the readings alone, without the assumed drift. */
    private double chiSquare() {
        double sum = 0;
        for (int i = 0; i < rows.size(); i++) {
            double relative = relativeResidual(i);
            sum += relative * relative;
        }
        return sum;
    }

    /** What the readings alone have beyond the draws; not whole where the assumed drift helps. */
    private double degreesOfFreedom() {
        double sum = 0;
        for (int i = 0; i < rows.size(); i++) {
            sum += 1 - fit.leverage(i);
        }
        return Math.max(0, sum);
    }

    /** Scatter of the readings relative to what is expected of the meter. */
    private double scatter(double degrees) {
        double joined = (DEGREES_OF_JUDGEMENT + chiSquare()) / degrees;
        double seen = joined > 1 ? chiSquare() / degreesOfFreedom() : joined;
        return Math.sqrt(Math.max(joined, seen));
    }

    private double relativeResidual(int i) {
        return fit.residual(i)
                / uncertaintyA(readings.resolutionA(), rows.get(i).waverA());
    }

    private Draw draw(int group, double reach) {
        List<String> names = groups.get(group);
        boolean known = fit.known(group);
        double amps = known ? fit.value(group) : Double.NaN;
        double surgeA = Double.NaN;
        List<Integer> lines = new ArrayList<>();
        for (Reading row : readings.rows()) {
            if (row.switchedOn().stream().anyMatch(names::contains)) {
                lines.add(row.line());
            }
            if (known
                    && names.size() == row.switchedOn().size()
                    && row.switchedOn().containsAll(names)) {
                double startA = row.surgeA() - row.currentA() + amps;
                surgeA = Double.isNaN(surgeA) || startA > surgeA ? startA : surgeA;
            }
        }
        return new Draw(names, known, amps, known ? reach * fit.uncertainty(group) : Double.NaN, surgeA, lines);
    }

    private List<List<String>> unknownGroups() {
        List<List<String>> unknown = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            if (!fit.known(group)) {
                unknown.add(groups.get(group));
            }
        }
        return unknown;
    }

    /** Sets contradictory readings aside one by one, the worst first, as long as one of them can be named. */
    private List<Misfit> setMisfitsAside() {
        List<Misfit> misfits = new ArrayList<>();
        int most = (int) (MOST_LEFT_OUT * rows.size());
        while (true) {
            Optional<Misfit> worst = worst(misfits.size() < most);
            if (worst.isEmpty()) {
                return misfits;
            }
            misfits.add(worst.get());
            if (!worst.get().leftOut()) {
                return misfits;
            }
            rows.removeIf(row -> row.line() == worst.get().lines().get(0));
            fit = fit();
        }
    }

    /**
     * The reading that contradicts all others most, by its residual over the scatter of the others (R. D. Cook and S.
     * Weisberg, Residuals and Influence in Regression, 1982, section 2.2.1, from memory), if it is beyond Student's
     * quantile for one false alarm in a hundred lists (Bonferroni).
     */
    private Optional<Misfit> worst(boolean mayLeaveOut) {
        int n = rows.size();
        double[] sizes = new double[n];
        double degrees = DEGREES_OF_JUDGEMENT + degreesOfFreedom() - 1;
        double all = DEGREES_OF_JUDGEMENT + chiSquare();
        for (int i = 0; i < n; i++) {
            double checked = 1 - fit.leverage(i);
            if (checked > LEAST_CHECKED) {
                double square = relativeResidual(i) * relativeResidual(i) / checked;
                sizes[i] = Math.sqrt(square / (Math.max(DEGREES_OF_JUDGEMENT, all - square) / degrees));
            }
        }
        double largest = Arrays.stream(sizes).max().orElse(0);
        if (largest <= new TDistribution(degrees).inverseCumulativeProbability(1 - FALSE_ALARM / 2 / n)) {
            return Optional.empty();
        }
        List<Integer> lines = new ArrayList<>();
        double offA = 0;
        for (int i = 0; i < n; i++) {
            if (sizes[i] > (1 - TIE) * largest) {
                lines.add(rows.get(i).line());
                offA = fit.residual(i) / (1 - fit.leverage(i));
            }
        }
        return Optional.of(new Misfit(lines, offA, mayLeaveOut && lines.size() == 1));
    }
}
