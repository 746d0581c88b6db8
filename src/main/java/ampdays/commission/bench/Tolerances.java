package ampdays.commission.bench;

import ampdays.scenario.Kind;
import ampdays.scenario.Mark;
import ampdays.scenario.Parameter;
import ampdays.scenario.Problem;
import ampdays.scenario.Registry;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The tolerance class of every value that describes the van, and vans drawn within them.
 *
 * <p>A value of class t lies evenly between its own nominal and t to either side: a rectangular distribution, the one for a
 * value of which only bounds are known (JCGM 100:2008, 4.3.7). What t means by dimension stands with the section {@code
 * tolerances}. Values are drawn one by one; leaves out that parts of one batch are off together. Reference: TolerancesTest.
 */
final class Tolerances {
    private static final Set<String> SECTIONS = Set.of(
            "battery",
            "solar",
            "factory-alternator",
            "second-alternator",
            "engine",
            "shore-charger",
            "inverter",
            "loads",
            "cabin",
            "cooling",
            "refrigerator");

    /** What somebody sets and reads back, or what no reading depends on. */
    private static final Pattern SETTINGS = Pattern.compile(
            "battery\\.(start|reserve|reconnect|shed-band)|cabin\\.(set|comfort)\\..*|.*\\.(shed-below|use|airing)");

    private static final Pattern AMPS = Pattern.compile("([0-9.]+)\\s*A\\b");
    private static final double KELVINS = 30;
    private static final double VOLTAGE_PART = 1.0 / 15;
    private static final double ROTATION_PART = 1.0 / 3;

    private final Values nominal;
    private final List<Line> lines = new ArrayList<>();
    private int unmarked;
    private int guesses;

    /** One value with how far it may be off, in its base unit, or as a share for a curve. */
    private record Line(Parameter parameter, String path, Value value, double halfWidth) {}

    Tolerances(Values nominal) {
        this.nominal = nominal;
        for (Values.Listed listed : nominal.listing()) {
            Parameter parameter = Registry.parameter(listed.path()).orElseThrow();
            if (SECTIONS.contains(parameter.section())
                    && !SETTINGS.matcher(listed.path()).matches()) {
                add(parameter, listed.path(), listed.value());
            }
        }
    }

    private void add(Parameter parameter, String path, Value value) {
        double halfWidth = parameter.kind() instanceof Kind.SpeedPoints
                ? classOf(value)
                : parameter.kind() instanceof Kind.Measured && Double.isFinite(value.number()) ? halfWidth(value) : 0;
        if (halfWidth > 0) {
            lines.add(new Line(parameter, path, value, halfWidth));
            unmarked += value.mark().isEmpty() ? 1 : 0;
            guesses += value.mark().filter(m -> m == Mark.GUESS).isPresent() ? 1 : 0;
        }
    }

    /** Share of the class of a value's mark. */
    private double classOf(Value value) {
        Mark mark = value.mark().orElse(Mark.PRACTICE);
        return nominal.number("tolerances." + mark.label());
    }

    private double halfWidth(Value value) {
        double share = classOf(value);
        double size = Math.abs(value.number());
        return switch (value.dimension().orElse(Dimension.NUMBER)) {
            case TEMPERATURE -> share * KELVINS;
            case VOLTAGE -> share * VOLTAGE_PART * size;
            case ROTATION -> share * ROTATION_PART * size;
            case SHARE -> share * Math.max(0, Math.min(size, 1 - size));
            case LATITUDE, LONGITUDE, HEADING, ANGLE -> 0;
            default -> share * size;
        };
    }

    /**
     * Draws a van. One that cannot be, because values contradict each other, is drawn again.
     *
     * @param name of the variant
     * @throws ScenarioException when hardly any can be
     */
    Variant draw(String name, double socShare, Day.Draw draw) throws ScenarioException {
        for (int attempt = 0; attempt < 200; attempt++) {
            try {
                return VariantBuilder.build(name, with(socShare, draw));
            } catch (ScenarioException e) {
                // drawn again: a van that cannot be built is not within its classes
            }
        }
        throw new ScenarioException(List.of(new Problem(
                "tolerances",
                "hardly any van within its tolerances can be built. Make the section tolerances narrower.")));
    }

    /** The van as designed. */
    Variant nominal(String name, double socShare) throws ScenarioException {
        return VariantBuilder.build(name, nominal.with("battery.start", socShare));
    }

    private Values with(double socShare, Day.Draw draw) {
        Map<String, Value> drawn = new LinkedHashMap<>();
        for (Line line : lines) {
            double offset = draw.next() * line.halfWidth;
            drawn.put(
                    line.path,
                    line.parameter.kind() instanceof Kind.Measured measured
                            ? moved(line.value, measured, offset)
                            : scaled(line.value, 1 + offset));
        }
        return nominal.with("battery.start", socShare).withNumbers(drawn);
    }

    private static Value moved(Value value, Kind.Measured kind, double offset) {
        double number = value.number() + offset;
        boolean usual =
                value.dimension().filter(kind.dimensions().get(0)::equals).isPresent();
        double held = usual ? Math.max(kind.low(), Math.min(kind.high(), number)) : number;
        return new Value(value.text(), held, value.dimension(), value.mark(), value.note(), value.origin());
    }

    /** A curve with all of its currents times a factor. */
    private static Value scaled(Value curve, double factor) {
        String text = AMPS.matcher(curve.text())
                .replaceAll(point -> String.format(Locale.ROOT, "%.3f A", amps(point.group(1)) * factor));
        return new Value(text, curve.number(), curve.dimension(), curve.mark(), curve.note(), curve.origin());
    }

    private static double amps(String number) {
        return Double.parseDouble(number);
    }

    /** Values without a mark. */
    int unmarked() {
        return unmarked;
    }

    /** Values that are guesses. */
    int guesses() {
        return guesses;
    }
}
