package ampdays.scenario;

import ampdays.alternator.AlternatorSpec;
import ampdays.alternator.ChargerSpec;
import ampdays.alternator.EngineSpec;
import ampdays.alternator.FactorySpec;
import ampdays.alternator.FormulaCurve;
import ampdays.alternator.Fuel;
import ampdays.alternator.OutputCurve;
import ampdays.alternator.OutputPoint;
import ampdays.alternator.PointCurve;
import ampdays.alternator.SystemVoltage;
import ampdays.units.Dimension;
import ampdays.units.QuantityException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes the records of the engine and of the alternators from their values. */
final class AlternatorBuilder {
    private static final String FACTORY = "factory-alternator";
    private static final String SECOND = "second-alternator";

    private final Values values;
    private final ProblemList read;

    AlternatorBuilder(Values values, ProblemList read) {
        this.values = values;
        this.read = read;
    }

    Optional<EngineSpec> engine() {
        boolean sound = above("engine.fast-idle", "engine.idle", Dimension.ROTATION, "speed");
        sound &= above("engine.cool-time", "engine.soak-time", Dimension.DURATION, "time");
        if (!sound) {
            return Optional.empty();
        }
        return read.build(
                "engine",
                () -> new EngineSpec(
                        Fuel.valueOf(read.word("engine.fuel")
                                .toUpperCase(Locale.ROOT)
                                .replace(' ', '_')),
                        read.number("engine.idle"),
                        read.number("engine.fast-idle"),
                        read.number("engine.town"),
                        read.number("engine.highway"),
                        read.number("engine.idle-fuel"),
                        read.number("engine.fast-idle-fuel"),
                        read.number("engine.idle-rise"),
                        read.number("engine.fast-idle-rise"),
                        read.number("engine.town-rise"),
                        read.number("engine.highway-rise"),
                        read.number("engine.soak-rise"),
                        read.number("engine.rise-time") / 60,
                        read.number("engine.soak-time") / 60,
                        read.number("engine.cool-time") / 60));
    }

    Optional<FactorySpec> factory() {
        if (!values.has(FACTORY)) {
            return Optional.empty();
        }
        Optional<AlternatorSpec> alternator = alternator(FACTORY);
        Optional<ChargerSpec> charger = charger();
        if (alternator.isEmpty() || charger.isEmpty()) {
            return Optional.empty();
        }
        return read.build(
                FACTORY,
                () -> new FactorySpec(
                        alternator.get(),
                        voltage(),
                        read.number(FACTORY + ".vehicle-idle"),
                        read.number(FACTORY + ".vehicle-driving"),
                        charger.get()));
    }

    private SystemVoltage voltage() {
        return new SystemVoltage(
                read.word(FACTORY + ".behaviour").equals("smart"),
                read.number(FACTORY + ".set-point"),
                read.number(FACTORY + ".smart-idle"),
                read.number(FACTORY + ".smart-town"),
                read.number(FACTORY + ".smart-highway"),
                read.number(FACTORY + ".content-after"));
    }

    private Optional<ChargerSpec> charger() {
        String name = FACTORY + ".charger";
        double ratedA = read.number(name);
        if (!above(name + "-derate-to", name + "-derate-from", Dimension.TEMPERATURE, "temperature")) {
            return Optional.empty();
        }
        return read.build(
                FACTORY,
                () -> new ChargerSpec(
                        ratedA,
                        read.number(name + "-efficiency"),
                        read.number(name + "-least-input"),
                        read.word(name + "-place").equals("engine bay"),
                        read.number(name + "-heat-capacity"),
                        read.number(name + "-to-air"),
                        read.number(name + "-derate-from"),
                        read.number(name + "-derate-to")));
    }

    Optional<AlternatorSpec> second() {
        return values.has(SECOND) ? alternator(SECOND) : Optional.empty();
    }

    private Optional<AlternatorSpec> alternator(String name) {
        boolean sound = above(name + ".cut-back-to", name + ".cut-back-from", Dimension.TEMPERATURE, "temperature");
        Optional<OutputCurve> curve = curve(name);
        if (!sound || curve.isEmpty()) {
            return Optional.empty();
        }
        return read.build(
                name,
                () -> new AlternatorSpec(
                        read.number(name + ".rated"),
                        curve.get(),
                        read.number(name + ".pulley"),
                        read.number(name + ".set-point"),
                        read.number(name + ".cap"),
                        points(name + ".cap-points"),
                        read.number(name + ".start-delay"),
                        read.number(name + ".ramp"),
                        read.number(name + ".cut-back-from"),
                        read.number(name + ".cut-back-to"),
                        read.number(name + ".belt"),
                        read.number(name + ".belt-speed"),
                        read.number(name + ".efficiency"),
                        read.number(name + ".winding-capacity"),
                        read.number(name + ".case-capacity"),
                        read.number(name + ".winding-to-case"),
                        read.number(name + ".winding-to-air"),
                        read.number(name + ".case-to-air"),
                        read.number(name + ".cable")));
    }

    private Optional<OutputCurve> curve(String name) {
        List<OutputPoint> cold = points(name + ".curve-points");
        List<OutputPoint> hot = points(name + ".hot-points");
        double ratedA = read.number(name + ".rated");
        double cutInRpm = read.number(name + ".cut-in");
        if (cold.isEmpty() && !hot.isEmpty()) {
            read.add(
                    name + ".hot-points",
                    name + ".hot-points has no cold curve beside it. Write " + name + ".curve-points as well.");
            return Optional.empty();
        }
        if (cold.isEmpty()) {
            return read.build(name, () -> new FormulaCurve(ratedA, cutInRpm, read.number(name + ".curve")));
        }
        return read.build(
                name + ".curve-points", () -> new PointCurve(cold, hot, cutInRpm, read.number(name + ".hot-winding")));
    }

    private List<OutputPoint> points(String path) {
        String text = values.word(path);
        try {
            return text.isEmpty() ? List.of() : CurvePoints.parse(text);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(path + " " + e.getMessage(), e);
        }
    }

    /** Whether a value lies above another; a problem if not. */
    private boolean above(String path, String below, Dimension dimension, String what) {
        double least = values.number(below);
        if (values.number(path) <= least) {
            read.add(
                    path,
                    path + " is not above " + below + ", " + dimension.show(least) + ". Write a higher " + what + ".");
            return false;
        }
        return true;
    }
}
