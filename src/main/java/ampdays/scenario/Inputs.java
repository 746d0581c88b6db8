package ampdays.scenario;

import ampdays.units.Dimension;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Every number of a design with the spread that its mark stands for, and the habits that no number of it says. Test: {@code
 * InputsTest}.
 */
public final class Inputs {
    /** Habits beside the numbers; the others are spreads of numbers that stand here one by one. */
    private static final Set<String> HABITS = Set.of("drives", "set point", "light through shade", "bank wear");

    private static final int MOST_HALVINGS = 6;

    private Inputs() {}

    /** All that have a spread, habits first. */
    public static List<Uncertain> of(Values values) {
        VariantBuilder builder = new VariantBuilder();
        Stream<Uncertain> habits = Habits.of(values).stream()
                .filter(habit -> HABITS.contains(habit.name()))
                .map(habit -> sourceNamed(habit));
        Stream<Uncertain> numbers = values.listing().stream()
                .filter(listed ->
                        isInput(listed.path()) && listed.value().dimension().isPresent())
                .map(listed -> input(values, listed.path(), listed.value()));
        return Stream.concat(habits, numbers)
                .filter(Uncertain::isSpread)
                .map(input -> possible(builder, values, input))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Uncertain sourceNamed(Uncertain habit) {
        return new Uncertain(
                habit.name(),
                habit.dimension(),
                habit.low(),
                habit.usual(),
                habit.high(),
                Uncertain.HABIT,
                habit.change());
    }

    /** Whether a path is one of the van itself, and no wish or measure of what is good. */
    private static boolean isInput(String path) {
        Parameter parameter = Registry.parameter(path).orElseThrow();
        return parameter.kind() instanceof Kind.Measured measured
                && Registry.isVan(path)
                && !path.startsWith("cabin.set.")
                && !path.startsWith("cabin.comfort.")
                && measured.dimensions().get(0) != Dimension.HEADING;
    }

    private static Uncertain input(Values values, String path, Value value) {
        double usual = value.number();
        Kind.Measured kind =
                (Kind.Measured) Registry.parameter(path).orElseThrow().kind();
        Dimension dimension = value.dimension().orElseThrow();
        double reach = reach(usual, dimension, value.mark());
        double low = usual - reach;
        double high = usual + reach;
        Optional<Presets.Preset> preset = values.presetBehind(path);
        if (preset.isPresent() && !preset.get().range(path).isEmpty()) {
            low = read(path, preset.get().low(path));
            high = read(path, preset.get().high(path));
        }
        boolean usualUnit = dimension == kind.dimensions().get(0);
        return new Uncertain(
                path,
                dimension,
                usualUnit ? kind.within(low) : low,
                usual,
                usualUnit ? kind.within(high) : high,
                value.mark().map(Mark::label).orElse("no mark"),
                (draft, to) -> draft.with(draft.values().with(path, value.changed(to))));
    }

    private static double read(String path, String text) {
        try {
            return Registry.parameter(path)
                    .orElseThrow()
                    .read(text, Origin.DEFAULT)
                    .number();
        } catch (QuantityException e) {
            throw new IllegalStateException(path + " " + e.getMessage(), e);
        }
    }

    /**
     * How far a number may lie from what is said, to either side; all of it guesses. Temperatures by kelvins, shares by the
     * smaller of what they are and what they leave, voltages a tenth of other numbers.
     */
    private static double reach(double usual, Dimension dimension, Optional<Mark> mark) {
        double share = share(mark);
        return switch (dimension) {
            case TEMPERATURE -> kelvins(mark);
            case SHARE -> share * (usual > 1 ? usual : Math.min(usual, 1 - usual));
            case VOLTAGE -> share / 10 * usual;
            default -> share * Math.abs(usual);
        };
    }

    private static double share(Optional<Mark> mark) {
        return switch (mark.orElse(Mark.PRACTICE)) {
            case MEASURED -> 0.03;
            case DATASHEET, STANDARD -> 0.1;
            case PRACTICE -> 0.2;
            case GUESS -> 0.35;
        };
    }

    private static double kelvins(Optional<Mark> mark) {
        return switch (mark.orElse(Mark.PRACTICE)) {
            case MEASURED -> 0.5;
            case DATASHEET, STANDARD -> 1;
            case PRACTICE -> 3;
            case GUESS -> 5;
        };
    }

    /** The input with its spread halved until the design can be at both ends; empty when it never can. */
    private static Optional<Uncertain> possible(VariantBuilder builder, Values values, Uncertain input) {
        List<Double> ends = new ArrayList<>();
        for (double end : List.of(input.low(), input.high())) {
            double reach = end - input.usual();
            for (int i = 0; i < MOST_HALVINGS && !canBe(builder, values, input, input.usual() + reach); i++) {
                reach /= 2;
            }
            ends.add(canBe(builder, values, input, input.usual() + reach) ? input.usual() + reach : input.usual());
        }
        Uncertain possible = new Uncertain(
                input.name(),
                input.dimension(),
                ends.get(0),
                input.usual(),
                ends.get(1),
                input.source(),
                input.change());
        return possible.isSpread() ? Optional.of(possible) : Optional.empty();
    }

    private static boolean canBe(VariantBuilder builder, Values values, Uncertain input, double value) {
        try {
            input.apply(Draft.of(values), value).variant("", builder);
            return true;
        } catch (ScenarioException e) {
            return false;
        }
    }
}
