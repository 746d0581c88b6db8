package ampdays.study;

import ampdays.results.Matters;
import ampdays.results.RunResult;
import ampdays.scenario.Draft;
import ampdays.scenario.Inputs;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Uncertain;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.sim.Simulator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds which inputs move the answer of a design: first each alone, from one end of its spread to the other; then those that
 * move it most, the weather, and all others as one, drawn together. Test: {@code MattersCommandTest}.
 */
public final class WhatMatters {
    /** Inputs whose shares are worked out one by one. */
    private static final int ONE_BY_ONE = 8;

    private final ScenarioFile file;
    private final Variant option;
    private final Values values;
    private final TripWeather weather;
    private final Planner planner;
    private final int workers;
    private final Runnable done;

    /** @param done called after each piece of work: one for each input, then one for each sample */
    public WhatMatters(
            ScenarioFile file, Variant option, TripWeather weather, Planner planner, int workers, Runnable done) {
        this.file = file;
        this.option = option;
        this.values = file.values(option.name()).orElseThrow();
        this.weather = weather;
        this.planner = planner;
        this.workers = workers;
        this.done = done;
    }

    /** What the answer is: days to empty where the design as it is becomes empty, else its lowest charge. */
    private record Answer(boolean isDays) {
        double of(RunResult run) {
            return !isDays
                    ? 100 * run.lowestSoc()
                    : Double.isNaN(run.daysToEmpty()) ? run.tripDays() : run.daysToEmpty();
        }
    }

    /** An input with its answers. */
    private record Moved(Uncertain input, Matters.Input answers) {}

    public Matters run(int samples, long seed) throws IOException {
        RunResult usual = Simulator.run(planner.under(Sky.AS_IT_IS).apply(option));
        Answer answer = new Answer(!Double.isNaN(usual.daysToEmpty()));
        List<Uncertain> inputs = Inputs.of(values);
        Benches benches = new Benches(planner);
        List<Moved> moved = new ArrayList<>(Workers.make(
                inputs.size(),
                workers,
                i -> new Moved(inputs.get(i), benches.work(bench -> alone(inputs.get(i), answer, bench))),
                done));
        moved.sort(Comparator.comparingDouble((Moved m) -> m.answers().swing(answer.of(usual)))
                .reversed());
        return new Matters(
                file.scenario().name(),
                file.scenario().title(),
                option.name(),
                answer.isDays() ? "days to empty" : "lowest charge",
                answer.isDays() ? "days" : "%",
                answer.of(usual),
                answer.isDays() ? usual.tripDays() : Double.POSITIVE_INFINITY,
                usual.comfortableNights(),
                moved.stream().map(Moved::answers).toList(),
                samples,
                seed,
                shares(moved.stream().map(Moved::input).toList(), answer, samples, seed));
    }

    private Matters.Input alone(Uncertain input, Answer answer, Benches.Bench bench) {
        RunResult low = run(input, input.low(), bench);
        RunResult high = run(input, input.high(), bench);
        return new Matters.Input(
                input.name(),
                input.source(),
                input.dimension().show(input.low()),
                input.dimension().show(input.usual()),
                input.dimension().show(input.high()),
                answer.of(low),
                answer.of(high),
                low.comfortableNights(),
                high.comfortableNights());
    }

    private RunResult run(Uncertain input, double value, Benches.Bench bench) {
        try {
            Draft draft = input.apply(Draft.of(values), value);
            return Simulator.run(bench.plans().apply(draft.variant(option.name(), bench.designs())));
        } catch (ScenarioException e) {
            throw new IllegalStateException("a design that could be before: " + e.getMessage(), e);
        }
    }

    private List<Matters.Share> shares(List<Uncertain> inputs, Answer answer, int samples, long seed)
            throws IOException {
        JointDraws draws = new JointDraws(option, values, weather, inputs, ONE_BY_ONE, samples, seed);
        List<double[]> answers = Workers.make(
                samples,
                workers,
                sample -> draws.runs(sample).stream().mapToDouble(answer::of).toArray(),
                done);
        List<VarianceShares.Share> shares = VarianceShares.of(answers.toArray(double[][]::new), seed);
        List<String> names = draws.names();
        return IntStream.range(0, names.size())
                .mapToObj(i -> new Matters.Share(
                        names.get(i),
                        draws.isInput(i),
                        shares.get(i).first(),
                        shares.get(i).total()))
                .sorted(Comparator.comparingDouble(
                                (Matters.Share share) -> share.total().value())
                        .reversed())
                .toList();
    }
}
