package ampdays.sim;

/**
 * Counts nights: unbroken stretches asleep that begin and end within the trip. A night is comfortable when at least 95 %
 * of its steps lie in the comfort band.
 */
final class Nights {
    private static final double COMFORTABLE_SHARE = 0.95;

    private final double lowC;
    private final double highC;
    private int steps;
    private int inBand;
    private boolean beganInTrip;
    private int nights;
    private int comfortable;

    Nights(double lowC, double highC) {
        this.lowC = lowC;
        this.highC = highC;
    }

    void step(int step, boolean asleep, double cabinC) {
        if (asleep) {
            if (steps == 0) {
                beganInTrip = step > 0;
            }
            steps++;
            inBand += cabinC >= lowC && cabinC <= highC ? 1 : 0;
        } else if (steps > 0) {
            if (beganInTrip) {
                nights++;
                comfortable += inBand >= COMFORTABLE_SHARE * steps ? 1 : 0;
            }
            steps = 0;
            inBand = 0;
        }
    }

    int nights() {
        return nights;
    }

    int comfortable() {
        return comfortable;
    }
}
