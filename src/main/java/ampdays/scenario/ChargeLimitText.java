package ampdays.scenario;

import ampdays.battery.ChargeSteps;
import ampdays.units.Dimension;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Charge limits by temperature, from a text such as {@code 0 °C 20 A, 10 °C 100 A, 45 °C 0 A}. */
final class ChargeLimitText {
    static final String ADVICE = "Write steps like: 0 °C 20 A, 10 °C 100 A, 45 °C 0 A.";

    private static final Pattern STEP = Pattern.compile("([+\\-\u2212]?[\\d.]+\\s*[^\\d\\s]+)\\s+([\\d.]+\\s*\\S+)");

    private ChargeLimitText() {}

    /**
     * Reads the steps; the exception's message is a predicate after the parameter's path.
     *
     * @param capacityAh what a rate in C is taken of
     */
    static ChargeSteps parse(String text, double capacityAh) throws QuantityException {
        List<ChargeSteps.Step> steps = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            Matcher step = STEP.matcher(part.strip());
            if (!step.matches()) {
                throw new QuantityException(
                        "\"" + part.strip() + "\" is not a temperature and a charge limit. " + ADVICE);
            }
            double fromC = Quantity.parse(step.group(1), Dimension.TEMPERATURE).value();
            Quantity limit = Quantity.parse(step.group(2), Dimension.CURRENT, Dimension.CHARGE_RATE);
            double scale = limit.dimension() == Dimension.CHARGE_RATE ? capacityAh : 1;
            if (!steps.isEmpty() && fromC <= steps.get(steps.size() - 1).fromC()) {
                throw new QuantityException(
                        "\"" + part.strip() + "\" is not warmer than the step before it. " + ADVICE);
            }
            steps.add(new ChargeSteps.Step(fromC, limit.value() * scale));
        }
        return new ChargeSteps(steps);
    }
}
