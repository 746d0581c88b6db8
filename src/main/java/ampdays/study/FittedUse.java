package ampdays.study;

import ampdays.log.Signal;
import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.results.Reconciliation.Cause;
import ampdays.results.Reconciliation.Fitted;
import ampdays.scenario.Value;
import ampdays.scenario.Values;
import ampdays.sim.RunPlan;
import ampdays.sim.Simulator;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Finds base load, duties and draws: by how much the promise of each load must be multiplied so that their sum is, hour by
 * hour, what the log has in use beside cooling and refrigerator. Loads that run at the same times cannot be told apart; they
 * are found together and said to be so. Left out: hours of an empty bank. Test: {@code FittedUseTest}.
 */
final class FittedUse {
    private static final int HOUR = 60;
    private static final int LEAST_MINUTES = 50;
    /** What the use of an hour is off by at least, W; and by the flows that it is the difference of (guesses). */
    private static final double LEAST_U = 2;

    private static final double FLOW_U = 0.01;
    /** What the promise of a load is thought to be off by, as a share of it (guess). */
    private static final double PROMISE_U = 1;
    /** By what share a load is raised to see what it does. */
    private static final double MORE = 0.25;

    /** Two that go up and down together more than this are told together (cosine, guess). */
    private static final double ALIKE = 0.99;

    private static final double LEAST_TIMES = 1e-3;
    private static final double MOST_TIMES = 100;

    private static final Set<Channel> CHANNELS = EnumSet.of(
            Channel.SOLAR,
            Channel.SHORE,
            Channel.FACTORY_ALTERNATOR,
            Channel.SECOND_ALTERNATOR,
            Channel.BANK_CURRENT,
            Channel.BUS_VOLTAGE,
            Channel.COOLING,
            Channel.REFRIGERATOR);

    private static final Optional<Dimension> AMPS = Optional.of(Dimension.CURRENT);

    private final Values values;
    private final LoggedTrip logged;
    private final Function<Values, RunPlan> plans;
    private final List<Integer> hours = new ArrayList<>();
    private final List<String> untold = new ArrayList<>();
    private final Map<String, String> paths = new HashMap<>();
    private double[] useW = {};

    /** What some loads were to use in each hour; no names for the refrigerator. */
    private static final class Part {
        private final List<String> names;
        private final double[] watts;

        Part(List<String> names, double... watts) {
            this.names = List.copyOf(names);
            this.watts = watts;
        }

        Part with(Part other) {
            List<String> all = new ArrayList<>(names);
            all.addAll(other.names);
            double[] sum = new double[watts.length];
            Arrays.setAll(sum, i -> watts[i] + other.watts[i]);
            return new Part(all, sum);
        }

        /** 1 when both go up and down together. */
        double cosine(Part other) {
            double product = 0;
            double square = 0;
            double otherSquare = 0;
            for (int i = 0; i < watts.length; i++) {
                product += watts[i] * other.watts[i];
                square += watts[i] * watts[i];
                otherSquare += other.watts[i] * other.watts[i];
            }
            return product / Math.sqrt(square * otherSquare);
        }

        String named() {
            return String.join(
                    " and ",
                    names.stream().map(n -> n.isEmpty() ? "refrigerator" : n).toList());
        }
    }

    /** Values that were found, and what was not, in plain words. */
    record Told(List<Fitted> fitted, List<String> untold) {}

    private FittedUse(Values values, LoggedTrip logged, Function<Values, RunPlan> plans) {
        this.values = values;
        this.logged = logged;
        this.plans = plans;
    }

    /**
     * Finds values.
     *
     * @param plans of designs
     */
    static Told of(Values values, LoggedTrip logged, Function<Values, RunPlan> plans) {
        FittedUse use = new FittedUse(values, logged, plans);
        return new Told(use.found(), List.copyOf(use.untold));
    }

    private List<Fitted> found() {
        if (values.has("cooling")
                && (!logged.log().has(Signal.COOLING_POWER)
                        || values.word("cooling.on").equals("inverter"))) {
            untold.add("base load and duties beside the cooling: log the power that the cooling takes from the bank");
            return List.of();
        }
        useW = use();
        List<Part> parts = parts();
        boolean base = parts.stream().anyMatch(part -> part.names.stream().anyMatch(this::isBase));
        if (!base) {
            untold.add("the base load: the scenario has no load that is always on");
        }
        return hours.isEmpty() || parts.isEmpty() ? List.of() : searched(parts, uncertainty());
    }

    /** Mean use of each hour that the log tells, less what cooling and refrigerator took of it. */
    private double[] use() {
        List<Double> useW = new ArrayList<>();
        for (int hour = 0; (hour + 1) * HOUR <= logged.clock().steps(); hour++) {
            double[] told = IntStream.range(hour * HOUR, (hour + 1) * HOUR)
                    .mapToDouble(this::restW)
                    .filter(w -> !Double.isNaN(w))
                    .toArray();
            if (told.length >= LEAST_MINUTES) {
                hours.add(hour);
                useW.add(Arrays.stream(told).average().orElseThrow());
            }
        }
        return useW.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double restW(int step) {
        boolean empty = logged.soc(step) <= logged.clock().reserveShare();
        return empty
                ? Double.NaN
                : logged.useW(step) - taken(Signal.COOLING_POWER, step) - taken(Signal.REFRIGERATOR_POWER, step);
    }

    private double taken(Signal signal, int step) {
        return logged.log().has(signal) ? logged.value(signal, step) : 0;
    }

    private double[] uncertainty() {
        return hours.stream()
                .mapToDouble(hour -> IntStream.range(hour * HOUR, (hour + 1) * HOUR)
                        .mapToDouble(step -> Math.abs(logged.bankW(step))
                                + Math.abs(logged.bankW(step) + logged.useW(step))
                                + taken(Signal.COOLING_POWER, step))
                        .filter(w -> !Double.isNaN(w))
                        .average()
                        .orElse(0))
                .map(flowW -> Math.hypot(LEAST_U, FLOW_U * flowW))
                .toArray();
    }

    /** By how much the use rises with each load, by a run with a quarter more of it and a bank that never runs empty. */
    private List<Part> parts() {
        Values large = values.with("battery.capacity", Math.min(10 * values.bankAh(), 50_000));
        MinuteLog all = run(large);
        List<Part> parts = new ArrayList<>();
        double[] fixed = means(step -> loadsW(all, step));
        for (String name : values.names("loads")) {
            double[] slopes = slopes(name, all, large);
            Arrays.setAll(fixed, i -> fixed[i] - slopes[i]);
            parts.add(new Part(List.of(name), slopes));
        }
        Arrays.setAll(useW, i -> useW[i] - fixed[i]);
        if (values.has("refrigerator") && !logged.log().has(Signal.REFRIGERATOR_POWER)) {
            parts.add(new Part(List.of(""), means(step -> all.get(Channel.REFRIGERATOR, step))));
        }
        parts.removeIf(part -> Arrays.stream(part.watts).allMatch(w -> Math.abs(w) < LEAST_TIMES));
        return parts;
    }

    /** The hours of use are what may differ where they are said and do not fill all the time allowed; else the draw. */
    private double[] slopes(String name, MinuteLog all, Values large) {
        for (String key : List.of(".use", ".draw")) {
            String path = "loads." + name + key;
            Optional<Value> value = values.find(path).filter(v -> v.number() > 0);
            if (value.isPresent()) {
                MinuteLog more = run(large.with(path, times(value.get(), 1 + MORE)));
                boolean amps = values.find("loads." + name + ".draw")
                        .flatMap(Value::dimension)
                        .equals(AMPS);
                double[] slopes =
                        means(step -> (loadsW(more, step) - loadsW(all, step)) / MORE * (amps ? volts(all, step) : 1));
                if (Arrays.stream(slopes).anyMatch(w -> Math.abs(w) > LEAST_TIMES)) {
                    paths.put(name, path);
                    return slopes;
                }
            }
        }
        return new double[hours.size()];
    }

    /** What a constant current takes more at the logged voltage. */
    private double volts(MinuteLog run, int step) {
        return logged.volts(step) > 0 ? logged.volts(step) / run.get(Channel.BUS_VOLTAGE, step) : 1;
    }

    private static Value times(Value value, double times) {
        double number = times * value.number();
        return new Value(
                value.dimension().orElseThrow().show(number),
                number,
                value.dimension(),
                value.mark(),
                value.note(),
                value.origin());
    }

    private MinuteLog run(Values design) {
        RunPlan plan = plans.apply(design);
        return Simulator.record(plan, 0, plan.clock().steps(), CHANNELS);
    }

    /** What the loads take from the bus with the losses of their inverter, W. */
    private static double loadsW(MinuteLog run, int step) {
        return LoggedDays.useW(run, step) - run.get(Channel.COOLING, step) - run.get(Channel.REFRIGERATOR, step);
    }

    private double[] means(IntToDoubleFunction of) {
        return hours.stream()
                .mapToDouble(hour -> IntStream.range(hour * HOUR, (hour + 1) * HOUR)
                        .filter(step -> !Double.isNaN(restW(step)))
                        .mapToDouble(of)
                        .average()
                        .orElse(0))
                .toArray();
    }

    /** Multiples of the parts; those that run at the same times go together. */
    private List<Fitted> searched(List<Part> from, double... u) {
        List<Part> parts = together(from);
        return fitted(parts, times(parts, useW, u));
    }

    private static List<Part> together(List<Part> parts) {
        List<Part> together = new ArrayList<>();
        for (Part part : parts) {
            int like = IntStream.range(0, together.size())
                    .filter(i -> together.get(i).cosine(part) > ALIKE)
                    .findFirst()
                    .orElse(-1);
            if (like < 0) {
                together.add(part);
            } else {
                together.set(like, together.get(like).with(part));
            }
        }
        return together;
    }

    /** The promise of each part counts as one observation more, a weak one, so that a small part cannot swallow a large one. */
    private static Fit.Result times(List<Part> parts, double[] left, double... u) {
        int count = parts.size();
        int hours = left.length;
        Fit.Model sums = times -> {
            double[] all = new double[hours + count];
            for (int part = 0; part < count; part++) {
                for (int i = 0; i < hours; i++) {
                    all[i] += times[part] * parts.get(part).watts[i];
                }
                all[hours + part] = times[part];
            }
            return all;
        };
        double[] observed = Arrays.copyOf(left, hours + count);
        Arrays.fill(observed, hours, hours + count, 1);
        double[] uncertain = Arrays.copyOf(u, hours + count);
        Arrays.fill(uncertain, hours, hours + count, PROMISE_U);
        return Fit.of(
                sums, observed, uncertain, filled(count, 1), filled(count, LEAST_TIMES), filled(count, MOST_TIMES));
    }

    private static double[] filled(int count, double value) {
        double[] filled = new double[count];
        Arrays.fill(filled, value);
        return filled;
    }

    private double plusMinus(Fit.Result times, int part, int count) {
        int[] each = IntStream.range(0, hours.size() + count).toArray();
        double standard = Math.max(times.standard(part), times.standard(part, each));
        return Math.hypot(Fit.NORMAL_95 * standard, FittedKnobs.METER * times.value(part));
    }

    private List<Fitted> fitted(List<Part> parts, Fit.Result times) {
        List<Fitted> fitted = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            double plusMinus = plusMinus(times, i, parts.size());
            if (!(plusMinus <= FittedKnobs.TOLD * times.value(i))) {
                untold.add(part.named() + ": too little beside the rest of the use");
            } else if (part.names.size() > 1) {
                untold.add(String.format(
                        Locale.ROOT,
                        "%s one by one, since they run at the same times: together they take %.2f ± %.2f of what was"
                                + " promised; read the current of each alone",
                        part.named(),
                        times.value(i),
                        plusMinus));
            } else if (!part.names.get(0).isEmpty()) {
                fitted.add(fitted(part.names.get(0), times.value(i), plusMinus));
            }
        }
        return fitted;
    }

    private Fitted fitted(String name, double times, double plusMinus) {
        String path = paths.get(name);
        String label = path.endsWith(".use") ? "duty of " : isBase(name) ? "base load: " : "draw of ";
        double promised = values.number(path);
        return new Fitted(
                path,
                label + name,
                Cause.USE,
                promised,
                times * promised,
                plusMinus * promised,
                values.find(path).flatMap(Value::dimension).orElseThrow());
    }

    private boolean isBase(String name) {
        return !name.isEmpty()
                && values.word("loads." + name + ".when").equals("always")
                && Double.isNaN(values.number("loads." + name + ".use"));
    }
}
