package ampdays.battery;

import java.util.List;

/**
 * Limit of the charge current by cell temperature, in steps: each holds from its temperature up to the next one's. Below
 * the first nothing is taken.
 *
 * @param steps by rising temperature
 */
public record ChargeSteps(List<Step> steps) {
    /**
     * Published steps for lithium iron phosphate as shares of the limit at 25 to 50 °C; charging below 0 and above 60 °C
     * is the protection's matter.
     *
     * <p>Source: operation manual of a 48 V lithium iron phosphate battery, table 4.3 "charge current" (0.1, 0.2, 0.5,
     * 0.1 C), taken as steps relative to its 0.5 C. Reference: BankPhysicsTest.
     */
    public static final ChargeSteps PUBLISHED =
            new ChargeSteps(List.of(new Step(-273.15, 0.2), new Step(10, 0.4), new Step(25, 1), new Step(50, 0.2)));

    /** The same limit at every temperature, as a share of it. */
    public static final ChargeSteps ANY_TEMPERATURE = new ChargeSteps(List.of(new Step(-273.15, 1)));

    /**
     * One step.
     *
     * @param fromC temperature from which it holds, °C
     * @param limit current, A, or share of a limit
     */
    public record Step(double fromC, double limit) {}

    public ChargeSteps {
        steps = List.copyOf(steps);
        for (int i = 0; i < steps.size(); i++) {
            if (!(steps.get(i).limit() >= 0)) {
                throw new IllegalArgumentException("a charge limit must not be negative");
            }
            if (i > 0 && !(steps.get(i).fromC() > steps.get(i - 1).fromC())) {
                throw new IllegalArgumentException("charge limits must be in the order of rising temperature");
            }
        }
    }

    /** These steps with every limit multiplied. */
    public ChargeSteps times(double factor) {
        return new ChargeSteps(steps.stream()
                .map(step -> new Step(step.fromC(), step.limit() * factor))
                .toList());
    }

    /** The step that holds at a temperature; -1 below the first. */
    int at(double temperatureC) {
        int i = steps.size() - 1;
        while (i >= 0 && temperatureC < steps.get(i).fromC()) {
            i--;
        }
        return i;
    }

    /** Limit of a step; 0 below the first. */
    double limit(int step) {
        return step < 0 ? 0 : steps.get(step).limit();
    }

    /** Temperature from which a step holds, without end below the first and above the last, °C. */
    double fromC(int step) {
        return step < 0
                ? Double.NEGATIVE_INFINITY
                : step == steps.size()
                        ? Double.POSITIVE_INFINITY
                        : steps.get(step).fromC();
    }
}
