package ampdays.scenario;

import ampdays.units.Nearest;
import ampdays.units.QuantityException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads which values a study gives a knob: a range with its step ({@code 200..800 Ah step 100 Ah}), a list
 * ({@code 200, 400, 800 Ah}), or for {@link Knob#OPTION} names of options, or {@code all}. Every value becomes a text
 * that a scenario could say. Test: {@code KnobTextTest}.
 */
public final class KnobText {
    /** No knob has more values. */
    static final int MOST_VALUES = 1_000_000;

    private static final String ALL_OPTIONS = "all";
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s*\\.\\.\\s*(.+?)(?:\\s+step\\s+(.+))?");
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)(\\s*)(.*)");

    private final String path;
    private final Parameter parameter;

    private KnobText(String path, Parameter parameter) {
        this.path = path;
        this.parameter = parameter;
    }

    /**
     * Reads PATH=SPEC.
     *
     * @throws IllegalArgumentException with a sentence for the user
     */
    public static Knob read(String assignment, ScenarioFile file) {
        int equals = assignment.indexOf('=');
        if (equals < 1) {
            throw new IllegalArgumentException("\"" + assignment + "\" has no \"=\" between path and values. "
                    + "Write it like: battery.capacity=200..800 Ah step 100 Ah.");
        }
        String path = assignment.substring(0, equals).strip();
        String spec = assignment.substring(equals + 1).strip();
        if (spec.isEmpty()) {
            throw new IllegalArgumentException(path + " has no values. Write a range with its step, or a list.");
        }
        if (path.equals(Knob.OPTION)) {
            return new Knob(path, "", options(spec, file));
        }
        KnobText text = of(path);
        boolean number = text.isNumber();
        Matcher range = RANGE.matcher(spec);
        List<String> values = number && range.matches()
                ? text.range(range.group(1), range.group(2), Optional.ofNullable(range.group(3)))
                : text.list(spec, number);
        return new Knob(path, number ? commonUnit(values) : "", distinct(path, values));
    }

    /**
     * Reads PATH=LO..HI or PATH=LO..HI step STEP; without a step one is taken that divides the range into some hundred.
     *
     * @throws IllegalArgumentException with a sentence for the user
     */
    public static Knob readRange(String assignment, ScenarioFile file) {
        int equals = assignment.indexOf('=');
        String path = equals < 1 ? "" : assignment.substring(0, equals).strip();
        Matcher range = RANGE.matcher(assignment.substring(equals + 1).strip());
        if (path.isEmpty() || path.equals(Knob.OPTION)) {
            return onlyRanges(path, read(assignment, file));
        }
        KnobText text = of(path);
        if (!range.matches()) {
            return onlyRanges(path, read(assignment, file));
        }
        if (!text.isNumber()) {
            throw new IllegalArgumentException(path + " is no number, so there is nothing between two of its values.");
        }
        String step = range.group(3) == null ? text.aHundredth(range.group(1), range.group(2)) : range.group(3);
        List<String> values = text.range(range.group(1), range.group(2), Optional.of(step));
        if (values.size() < 2) {
            throw new IllegalArgumentException(path + " has only the value " + values.get(0) + " in the range "
                    + range.group(1) + ".." + range.group(2) + ". Write a wider range or a smaller step.");
        }
        return new Knob(path, commonUnit(values), values);
    }

    private static Knob onlyRanges(String path, Knob listed) {
        throw new IllegalArgumentException(path + " has no range to search: " + String.join(", ", listed.values())
                + ". Write its ends and a step, like battery.capacity=200..800 Ah step 10 Ah.");
    }

    private static KnobText of(String path) {
        return new KnobText(
                path,
                Registry.parameter(path)
                        .orElseThrow(() -> new IllegalArgumentException(
                                path.equals("options")
                                        ? "options is not known. Did you mean option?"
                                        : unknown(path))));
    }

    private boolean isNumber() {
        return parameter.kind() instanceof Kind.Measured
                || parameter.kind() instanceof Kind.Money
                || parameter.kind() instanceof Kind.Count;
    }

    /** The next of 1, 2 or 5 times a power of ten above a hundredth of a range; for counts 1 at least. */
    private String aHundredth(String low, String high) {
        Part to = part(checked(high));
        Part from = part(checked(withUnit(low, to.space() + to.unit())));
        double hundredth = to.number().subtract(from.number()).abs().doubleValue() / 100;
        BigDecimal step = BigDecimal.ONE;
        if (hundredth > 0) {
            step = BigDecimal.ONE.scaleByPowerOfTen((int) Math.floor(Math.log10(hundredth)));
            for (int digit : new int[] {2, 5, 10}) {
                BigDecimal next = BigDecimal.ONE
                        .scaleByPowerOfTen((int) Math.floor(Math.log10(hundredth)))
                        .multiply(BigDecimal.valueOf(digit));
                step = step.doubleValue() < hundredth * (1 - 1e-9) ? next : step;
            }
        }
        return to.write(parameter.kind() instanceof Kind.Count ? step.max(BigDecimal.ONE) : step);
    }

    private static String unknown(String path) {
        return Registry.isGroup(path)
                ? path + " is a section. Name one of its values, like "
                        + Registry.children(path).stream()
                                .filter(key -> !key.equals("*") && !key.equals("preset"))
                                .limit(3)
                                .map(key -> path + "." + key)
                                .collect(Collectors.joining(", "))
                        + "."
                : Registry.unknownWholePath(path);
    }

    private static List<String> options(String spec, ScenarioFile file) {
        List<String> known =
                file.scenario().variants().stream().map(Variant::name).toList();
        if (spec.equals(ALL_OPTIONS)) {
            return known;
        }
        List<String> named = split(spec);
        for (String name : named) {
            if (!known.contains(name)) {
                throw new IllegalArgumentException("There is no option \"" + name + "\". Options: "
                        + String.join(", ", known) + "; or all."
                        + Nearest.of(name, known)
                                .map(near -> " Did you mean " + near + "?")
                                .orElse(""));
            }
        }
        return distinct(Knob.OPTION, named);
    }

    private static List<String> distinct(String path, List<String> values) {
        Set<String> once = new LinkedHashSet<>();
        for (String value : values) {
            if (!once.add(value)) {
                throw new IllegalArgumentException(path + " has the value \"" + value + "\" twice. Keep one.");
            }
        }
        return values;
    }

    /** Values stand apart by commas, or by semicolons where a value has a comma itself. */
    private static List<String> split(String spec) {
        return Arrays.stream(spec.split(spec.contains(";") ? ";" : ",", -1))
                .map(String::strip)
                .toList();
    }

    private List<String> list(String spec, boolean number) {
        List<String> parts = split(spec);
        Matcher last = NUMBER_AND_UNIT.matcher(parts.get(parts.size() - 1));
        String unit = number && last.matches() ? last.group(2) + last.group(3) : "";
        List<String> values = new ArrayList<>();
        for (String part : parts) {
            if (part.isEmpty()) {
                throw new IllegalArgumentException(path + " has an empty value in its list \"" + spec + "\".");
            }
            values.add(checked(withUnit(part, unit)));
        }
        return values;
    }

    private List<String> range(String low, String high, Optional<String> step) {
        Part to = part(checked(high));
        Part from = part(checked(withUnit(low, to.space() + to.unit())));
        if (step.isEmpty()) {
            throw new IllegalArgumentException(path + " has a range without a step. Write " + low + ".." + high
                    + " step and how far apart its values are, like " + to.write(tenth(from, to)) + ".");
        }
        Part by = part(withUnit(step.get().strip(), to.space() + to.unit()));
        if (!from.unit().equals(to.unit()) || !by.unit().equals(to.unit())) {
            throw new IllegalArgumentException(path + " has a range in different units: " + low + ".." + high + " step "
                    + step.get() + ". Write all three in " + (to.unit().isEmpty() ? "plain numbers" : to.unit()) + ".");
        }
        if (by.number().signum() <= 0) {
            throw new IllegalArgumentException(
                    path + " has the step " + step.get() + ". A step must be more than nothing.");
        }
        if (from.number().compareTo(to.number()) > 0) {
            throw new IllegalArgumentException(path + " has an empty range: " + low + " is above " + high + ". Write "
                    + to.write(to.number()) + ".." + to.write(from.number()) + " step " + step.get() + ".");
        }
        BigDecimal count = to.number().subtract(from.number()).divideToIntegralValue(by.number());
        if (count.compareTo(BigDecimal.valueOf(MOST_VALUES)) >= 0) {
            throw new IllegalArgumentException(
                    path + " would have " + count.add(BigDecimal.ONE).toPlainString() + " values; at most "
                            + MOST_VALUES + " are possible. Write a larger step.");
        }
        List<String> values = new ArrayList<>();
        for (BigDecimal n = from.number(); n.compareTo(to.number()) <= 0; n = n.add(by.number())) {
            values.add(checked(to.write(n)));
        }
        return values;
    }

    private static BigDecimal tenth(Part from, Part to) {
        return to.number().subtract(from.number()).abs().movePointLeft(1).stripTrailingZeros();
    }

    /** A number as it was written. */
    private record Part(BigDecimal number, String space, String unit) {
        String write(BigDecimal other) {
            return other.toPlainString() + space + unit;
        }
    }

    private Part part(String text) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(path + " \"" + text + "\" is not a number. "
                    + parameter.kind().advice());
        }
        return new Part(new BigDecimal(matcher.group(1)), matcher.group(2), matcher.group(3));
    }

    private static String withUnit(String text, String unit) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text);
        return matcher.matches() && matcher.group(3).isEmpty() ? matcher.group(1) + unit : text;
    }

    /** The text without a mark, if the parameter takes it. */
    private String checked(String text) {
        try {
            return parameter.read(text, new Origin("change", 0, 0)).text();
        } catch (QuantityException e) {
            throw new IllegalArgumentException(path + " " + e.getMessage(), e);
        }
    }

    private static String commonUnit(List<String> values) {
        Set<String> units = values.stream()
                .map(NUMBER_AND_UNIT::matcher)
                .map(matcher -> matcher.matches() ? matcher.group(3) : "")
                .collect(Collectors.toSet());
        return units.size() == 1 ? units.iterator().next() : "";
    }
}
