package ampdays.heat;

/**
 * Two heat nodes that exchange heat with each other and with one environment, advanced by the exact solution for
 * inputs that are constant over the step.
 *
 * <pre>
 * C1 dT1/dt = k1 (Te - T1) + g (T2 - T1) + Q1
 * C2 dT2/dt = k2 (Te - T2) + g (T1 - T2) + Q2
 * </pre>
 *
 * The solution is T = Ts + exp(A t) (T0 - Ts): Ts solves the balance at rest, A = -[(k1+g)/C1, -g/C1; -g/C2,
 * (k2+g)/C2], and exp(A t) follows from A's two real eigenvalues (Sylvester's formula). Heat flows passed in hold the
 * environment's part k Te already. Leaves out: any change of the inputs or conductances within the step.
 *
 * <p>Reference: HeatNodesTest against a table of matrix exponentials.
 */
public final class TwoNodeStep {
    final double s11;
    final double s12;
    final double s22;
    private final double slowRate;
    private final double fastRate;
    private final double a11;
    private final double a12;
    private final double a21;
    private final double a22;
    private final double stepS;
    final double p11;
    final double p12;
    final double p21;
    final double p22;
    private final double first1KPerW;

    /**
     * @param heat1JK heat capacity of the first node, J/K, above 0
     * @param heat2JK heat capacity of the second node, J/K, above 0
     * @param k1WK conductance first node to environment, W/K, from 0
     * @param k2WK conductance second node to environment, W/K, from 0; k1 + k2 above 0
     * @param gWK conductance between the nodes, W/K, above 0
     * @param stepS length of the step, s, above 0
     */
    public TwoNodeStep(double heat1JK, double heat2JK, double k1WK, double k2WK, double gWK, double stepS) {
        double determinant = k1WK * k2WK + gWK * (k1WK + k2WK);
        if (!(heat1JK > 0 && heat2JK > 0 && determinant > 0 && stepS > 0)) {
            throw new IllegalArgumentException("heat nodes need capacities, a way out and a step above zero");
        }
        s11 = (k2WK + gWK) / determinant;
        s12 = gWK / determinant;
        s22 = (k1WK + gWK) / determinant;
        a11 = -(k1WK + gWK) / heat1JK;
        a12 = gWK / heat1JK;
        a21 = gWK / heat2JK;
        a22 = -(k2WK + gWK) / heat2JK;
        double mean = (a11 + a22) / 2;
        double root = Math.sqrt((a11 - a22) * (a11 - a22) / 4 + a12 * a21);
        slowRate = mean + root;
        fastRate = mean - root;
        this.stepS = stepS;
        double slow = Math.exp(slowRate * stepS);
        double fast = Math.exp(fastRate * stepS);
        double span = slowRate - fastRate;
        p11 = (slow * (a11 - fastRate) - fast * (a11 - slowRate)) / span;
        p12 = (slow - fast) / span * a12;
        p21 = (slow - fast) / span * a21;
        p22 = (slow * (a22 - fastRate) - fast * (a22 - slowRate)) / span;
        first1KPerW = s11 - (p11 * s11 + p12 * s12);
    }

    public double stepS() {
        return stepS;
    }

    /** Temperature of the first node at rest, °C, for heat flows (W) into both nodes, k Te included. */
    public double rest1C(double q1W, double q2W) {
        return s11 * q1W + s12 * q2W;
    }

    /** Temperature of the second node at rest, °C. */
    public double rest2C(double q1W, double q2W) {
        return s12 * q1W + s22 * q2W;
    }

    /** First node's distance from rest after a whole step, K, from both distances before. */
    public double after1K(double from1K, double from2K) {
        return p11 * from1K + p12 * from2K;
    }

    /** Second node's distance from rest after a whole step, K. */
    public double after2K(double from1K, double from2K) {
        return p21 * from1K + p22 * from2K;
    }

    /** How much warmer the first node is at the end of a whole step for each watt more into it, K/W. */
    public double first1KPerW() {
        return first1KPerW;
    }

    /** First node's distance from rest after {@code timeS}, K. */
    public double after1K(double from1K, double from2K, double timeS) {
        double slow = Math.exp(slowRate * timeS);
        double fast = Math.exp(fastRate * timeS);
        double span = slowRate - fastRate;
        return ((slow * (a11 - fastRate) - fast * (a11 - slowRate)) * from1K + (slow - fast) * a12 * from2K) / span;
    }

    /** Second node's distance from rest after {@code timeS}, K. */
    public double after2K(double from1K, double from2K, double timeS) {
        double slow = Math.exp(slowRate * timeS);
        double fast = Math.exp(fastRate * timeS);
        double span = slowRate - fastRate;
        return ((slow - fast) * a21 * from1K + (slow * (a22 - fastRate) - fast * (a22 - slowRate)) * from2K) / span;
    }
}
