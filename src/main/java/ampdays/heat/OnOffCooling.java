package ampdays.heat;

/**
 * A thermostat that switches a fixed flow of cooling on the first of two heat nodes, with least run and rest times and a
 * time after each start in which nothing cools yet. It switches at the instant the exact curve crosses its threshold,
 * not at the end of the step. One run, one thread.
 *
 * <p>Leaves out: a curve that crosses a threshold and returns within the same step. Reference: HeatNodesTest.
 */
public final class OnOffCooling {
    private static final int BISECTIONS = 40;

    private final double leastRunS;
    private final double leastRestS;
    private final double coldStartS;
    private boolean on;
    private double sinceSwitchS;
    private double node1C;
    private double node2C;
    private double runS;
    private double coolS;
    private int starts;

    public OnOffCooling(double leastRunS, double leastRestS, double coldStartS) {
        this.leastRunS = leastRunS;
        this.leastRestS = leastRestS;
        this.coldStartS = coldStartS;
        this.sinceSwitchS = leastRestS;
    }

    /** Goes on from where another was. */
    public void goOnFrom(OnOffCooling before) {
        on = before.on;
        sinceSwitchS = before.sinceSwitchS;
    }

    /** Seconds of the last step in which it ran. */
    public double runS() {
        return runS;
    }

    /** Seconds of the last step in which it cooled. */
    public double coolS() {
        return coolS;
    }

    /** How often it started in the last step. */
    public int starts() {
        return starts;
    }

    /** First node at the end of the last step, °C. */
    public double node1C() {
        return node1C;
    }

    /** Second node at the end of the last step, °C. */
    public double node2C() {
        return node2C;
    }

    /**
     * A time without supply or wish to run: it stops at once, and its rest goes on.
     *
     * @param timeS how long, s
     */
    public void rest(double timeS) {
        if (on) {
            on = false;
            sinceSwitchS = 0;
        }
        sinceSwitchS += timeS;
    }

    /**
     * Advances one step of {@code nodes}.
     *
     * @param from1C first node at its start, °C
     * @param from2C second node, °C
     * @param q1W heat into the first node without cooling, k Te included, W
     * @param q2W heat into the second node, W
     * @param coolingW cooling of the first node while it cools, W, from 0
     * @param lowC it stops below this, °C
     * @param highC it starts above this, °C
     */
    public void step(
            TwoNodeStep nodes,
            double from1C,
            double from2C,
            double q1W,
            double q2W,
            double coolingW,
            double lowC,
            double highC) {
        node1C = from1C;
        node2C = from2C;
        runS = 0;
        coolS = 0;
        starts = 0;
        double leftS = nodes.stepS();
        while (leftS > 0) {
            boolean cools = on && sinceSwitchS >= coldStartS;
            double q1 = cools ? q1W - coolingW : q1W;
            double rest1C = nodes.rest1C(q1, q2W);
            double rest2C = nodes.rest2C(q1, q2W);
            double d1K = node1C - rest1C;
            double d2K = node2C - rest2C;
            double holdS = on ? (leastRunS > coldStartS ? leastRunS : coldStartS) : leastRestS;
            double nextS = on && sinceSwitchS < coldStartS ? coldStartS : holdS;
            double timeS = leftS;
            boolean mayToggle = sinceSwitchS >= holdS;
            if (!mayToggle) {
                double waitS = nextS - sinceSwitchS;
                timeS = waitS < leftS ? waitS : leftS;
            } else if (beyond(node1C, lowC, highC)) {
                toggle();
                continue;
            }
            double end1C = rest1C + (timeS == nodes.stepS() ? nodes.after1K(d1K, d2K) : nodes.after1K(d1K, d2K, timeS));
            boolean toggles = mayToggle && beyond(end1C, lowC, highC);
            if (toggles) {
                timeS = crossingS(nodes, d1K, d2K, (on ? lowC : highC) - rest1C, timeS);
            }
            boolean whole = timeS == nodes.stepS();
            node1C = rest1C + (whole ? nodes.after1K(d1K, d2K) : nodes.after1K(d1K, d2K, timeS));
            node2C = rest2C + (whole ? nodes.after2K(d1K, d2K) : nodes.after2K(d1K, d2K, timeS));
            leftS -= timeS;
            sinceSwitchS += timeS;
            runS += on ? timeS : 0;
            coolS += cools ? timeS : 0;
            if (toggles) {
                toggle();
            }
        }
    }

    private void toggle() {
        on = !on;
        starts += on ? 1 : 0;
        sinceSwitchS = 0;
    }

    private boolean beyond(double temperatureC, double lowC, double highC) {
        return on ? temperatureC < lowC : temperatureC > highC;
    }

    /** The instant at which the first node's distance from rest passes {@code targetK}, s, by bisection. */
    private static double crossingS(TwoNodeStep nodes, double d1K, double d2K, double targetK, double endS) {
        double lowS = 0;
        double highS = endS;
        boolean startsAbove = d1K > targetK;
        for (int i = 0; i < BISECTIONS; i++) {
            double middleS = (lowS + highS) / 2;
            if (nodes.after1K(d1K, d2K, middleS) > targetK == startsAbove) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return highS;
    }
}
