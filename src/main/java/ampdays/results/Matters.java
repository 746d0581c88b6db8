package ampdays.results;

import java.util.List;

/**
 * Which inputs of a design move its answer.
 *
 * @param answer what is looked at, in words
 * @param unit of the answer
 * @param usual the answer of the design as it is
 * @param cap where the answer ends because the trip does; infinite when it does not
 * @param inputs moved one at a time, the one that moves the answer most first
 * @param samples how often all were drawn together
 * @param shares of the answer's variance then, the largest total first
 */
public record Matters(
        String scenario,
        String title,
        String option,
        String answer,
        String unit,
        double usual,
        double cap,
        int usualNights,
        List<Input> inputs,
        int samples,
        long seed,
        List<Share> shares) {
    private static final double LEAST_SHARE = 0.01;
    private static final int MOST_TO_MEASURE = 5;

    public Matters {
        inputs = List.copyOf(inputs);
        shares = List.copyOf(shares);
    }

    /** The same with its inputs in other words. */
    public Matters withInputs(List<Input> worded) {
        return new Matters(
                scenario, title, option, answer, unit, usual, cap, usualNights, worded, samples, seed, shares);
    }

    /** Inputs that are not measured yet, by all that they do; those that do hardly anything are left out. */
    public List<Input> measureFirst() {
        return shares.stream()
                .filter(share -> share.isInput() && share.total().value() >= LEAST_SHARE)
                .flatMap(share -> inputs.stream().filter(input -> input.name().equals(share.name())))
                .filter(input ->
                        !input.source().equals("measured") && !input.source().equals("habit"))
                .limit(MOST_TO_MEASURE)
                .toList();
    }

    /**
     * One input, alone at either end of its spread.
     *
     * @param name its path, or a habit in words
     * @param source its mark, {@code no mark} or {@code habit}
     * @param low the low end, in words; likewise the others
     * @param answerAtLow the answer there
     * @param nightsAtLow comfortable nights there
     */
    public record Input(
            String name,
            String source,
            String low,
            String usual,
            String high,
            double answerAtLow,
            double answerAtHigh,
            int nightsAtLow,
            int nightsAtHigh) {
        /** The same with its ends and its usual value in other words. */
        public Input worded(String newLow, String newUsual, String newHigh) {
            return new Input(
                    name, source, newLow, newUsual, newHigh, answerAtLow, answerAtHigh, nightsAtLow, nightsAtHigh);
        }

        /** How far it moves the answer from one end to the other, its usual value among them. */
        public double swing(double usualAnswer) {
            return Math.max(usualAnswer, Math.max(answerAtLow, answerAtHigh))
                    - Math.min(usualAnswer, Math.min(answerAtLow, answerAtHigh));
        }
    }

    /**
     * What an input has of the variance.
     *
     * @param isInput whether it is one input, and not the weather or all the others together
     * @param first by itself, 0 to 1
     * @param total with all that it does together with others
     */
    public record Share(String name, boolean isInput, Bounded first, Bounded total) {}
}
