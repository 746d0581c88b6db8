package ampdays.study;

import ampdays.results.RunResult;
import ampdays.scenario.Draft;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Uncertain;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.scenario.VariantBuilder;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * All inputs of a design drawn together, twice for each sample, and the runs that {@link VarianceShares} asks for. A factor is
 * the weather with the day of the start, one input, or all inputs that are not looked at one by one.
 */
final class JointDraws {
    private static final String WEATHER = "weather and start";
    private static final int WEATHER_COORDINATES = 2;
    private static final int MOST_HALVINGS = 10;

    private final Variant option;
    private final Values values;
    private final TripWeather weather;
    private final List<Uncertain> inputs;
    private final int oneByOne;
    private final double[][] points;

    JointDraws(
            Variant option,
            Values values,
            TripWeather weather,
            List<Uncertain> inputs,
            int mostOneByOne,
            int samples,
            long seed) {
        this.option = option;
        this.values = values;
        this.weather = weather;
        this.inputs = inputs;
        this.oneByOne = Math.min(mostOneByOne, inputs.size());
        this.points = EvenPoints.of(samples, 2 * coordinates(), seed);
    }

    private int coordinates() {
        return WEATHER_COORDINATES + inputs.size();
    }

    /** The factors: the weather, inputs one by one, and if there are more, all others. */
    List<String> names() {
        List<String> names = new ArrayList<>(List.of(WEATHER));
        inputs.subList(0, oneByOne).forEach(input -> names.add(input.name()));
        if (oneByOne < inputs.size()) {
            names.add("the other " + (inputs.size() - oneByOne) + " inputs");
        }
        return names;
    }

    boolean isInput(int factor) {
        return factor > 0 && factor <= oneByOne;
    }

    /** The runs of a sample: at A, at B, and at A with each factor in turn from B. */
    List<RunResult> runs(int sample) {
        List<Function<Variant, RunPlan>> plans = List.of(weather.of(2 * sample + 1), weather.of(2 * sample + 2));
        VariantBuilder builder = new VariantBuilder();
        List<RunResult> runs = new ArrayList<>();
        for (int row = 0; row < VarianceShares.ROWS_BEFORE + names().size(); row++) {
            boolean allFromB = row == 1;
            int switched = row - VarianceShares.ROWS_BEFORE;
            boolean otherWeather = allFromB || switched == 0;
            Variant variant = variant(sample, allFromB, switched, builder);
            runs.add(Simulator.run(plans.get(otherWeather ? 1 : 0).apply(variant)));
        }
        return runs;
    }

    /** The design of a row; inputs that cannot be together come closer to what they usually are until they can. */
    private Variant variant(int sample, boolean allFromB, int switched, VariantBuilder builder) {
        double reach = 1;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            try {
                return draft(sample, allFromB, switched, reach).variant(option.name(), builder);
            } catch (ScenarioException e) {
                reach = reach / 2;
            }
        }
        throw new IllegalStateException(
                "inputs of " + option.name() + " that cannot be together near their usual values");
    }

    private Draft draft(int sample, boolean allFromB, int switched, double reach) {
        boolean otherWeather = allFromB || switched == 0;
        List<LocalDate> year = EvenPoints.chosen(weather.starts(option), place(sample, 0, otherWeather));
        LocalDate start = EvenPoints.chosen(year, place(sample, 1, otherWeather));
        Draft draft = Draft.of(values).startingOn(start.toString());
        // habits change what the numbers are, so the numbers come first
        int[] numbersFirst = IntStream.concat(
                        IntStream.range(0, inputs.size()).filter(i -> !isHabit(i)),
                        IntStream.range(0, inputs.size()).filter(this::isHabit))
                .toArray();
        for (int i : numbersFirst) {
            int factor = 1 + Math.min(i, oneByOne);
            Uncertain input = inputs.get(i);
            double drawn = input.at(place(sample, WEATHER_COORDINATES + i, allFromB || switched == factor));
            draft = input.apply(draft, input.usual() + reach * (drawn - input.usual()));
        }
        return draft;
    }

    private double place(int sample, int coordinate, boolean fromB) {
        return points[sample][coordinate + (fromB ? coordinates() : 0)];
    }

    private boolean isHabit(int input) {
        return inputs.get(input).source().equals(Uncertain.HABIT);
    }
}
