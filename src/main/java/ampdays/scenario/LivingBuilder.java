package ampdays.scenario;

import ampdays.cabin.CabinSpec;
import ampdays.cabin.Covers;
import ampdays.cabin.Faces;
import ampdays.cooling.CoolerSpec;
import ampdays.cooling.CoolingCurves;
import ampdays.cooling.DashCooling;
import ampdays.cooling.RefrigeratorSpec;
import ampdays.load.InverterSpec;
import ampdays.load.LoadSpec;
import ampdays.load.PreCooling;
import ampdays.load.ShedSpec;
import ampdays.units.Dimension;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes the records of the living area from their values. */
final class LivingBuilder {
    private final Values values;
    private final ProblemList read;

    LivingBuilder(Values values, ProblemList read) {
        this.values = values;
        this.read = read;
    }

    Optional<CabinSpec> cabin() {
        double low = values.number("cabin.comfort.low");
        double high = values.number("cabin.comfort.high");
        if (low >= high) {
            read.add(
                    "cabin.comfort",
                    "The comfort band is empty: cabin.comfort.low is " + Dimension.TEMPERATURE.show(low)
                            + " and high is " + Dimension.TEMPERATURE.show(high) + ".");
            return Optional.empty();
        }
        return read.build(
                "cabin",
                () -> new CabinSpec(
                        read.number("cabin.roof"),
                        read.number("cabin.walls"),
                        read.number("cabin.floor"),
                        read.number("cabin.glass"),
                        read.number("cabin.insulation"),
                        read.number("cabin.insulation-conductivity"),
                        read.number("cabin.bridges"),
                        read.number("cabin.floor-transmittance"),
                        read.number("cabin.glass-transmittance"),
                        read.number("cabin.absorptance"),
                        read.number("cabin.glass-solar"),
                        read.number("cabin.solar-to-air"),
                        covers(),
                        faces(),
                        read.number("cabin.volume"),
                        read.number("cabin.air-changes"),
                        read.number("cabin.air-changes-driving"),
                        read.number("cabin.leak-area"),
                        read.numberOrOff("cabin.airing"),
                        read.number("cabin.air-capacity"),
                        read.number("cabin.mass-capacity"),
                        read.number("cabin.air-to-mass"),
                        read.number("cabin.panel-heat"),
                        read.count("cabin.people"),
                        read.numberOrOff("cabin.set.asleep"),
                        read.numberOrOff("cabin.set.awake"),
                        read.numberOrOff("cabin.set.aboard"),
                        read.numberOrOff("cabin.set.away"),
                        low,
                        high));
    }

    private Covers covers() {
        return new Covers(
                Covers.Use.valueOf(constant(read.word("cabin.covers-used"))),
                read.number("cabin.covers-resistance"),
                read.number("cabin.covers-pass"));
    }

    private Faces faces() {
        return new Faces(
                read.numberOrOff("cabin.heading"),
                read.number("cabin.walls-sides"),
                read.number("cabin.glass-front"),
                read.number("cabin.glass-sides"));
    }

    Optional<CoolerSpec> cooler() {
        if (!values.has("cooling")) {
            return Optional.empty();
        }
        double cutOutV = values.number("cooling.cut-out-voltage");
        for (String key : List.of("restart-voltage", "step-down-voltage")) {
            if (values.number("cooling." + key) < cutOutV) {
                read.add(
                        "cooling." + key,
                        "cooling." + key + " lies below cooling.cut-out-voltage, " + Dimension.VOLTAGE.show(cutOutV)
                                + ". Write one above it.");
                return Optional.empty();
            }
        }
        return read.build(
                "cooling",
                () -> new CoolerSpec(
                        read.number("cooling.capacity"),
                        read.number("cooling.cop"),
                        CoolingCurves.valueOf(constant(read.word("cooling.curves"))),
                        read.word("cooling.speed").equals("variable"),
                        read.number("cooling.turn-down"),
                        read.number("cooling.part-load"),
                        read.number("cooling.cycling-loss"),
                        read.number("cooling.band"),
                        read.number("cooling.least-run"),
                        read.number("cooling.least-rest"),
                        read.number("cooling.cold-start"),
                        read.number("cooling.step-down-voltage"),
                        read.number("cooling.step-down"),
                        cutOutV,
                        read.number("cooling.restart-voltage"),
                        read.number("cooling.start-surge"),
                        onInverter("cooling")));
    }

    Optional<PreCooling> preCooling() {
        if (!values.has("cooling") || Double.isNaN(values.number("cooling.pre-cool.to"))) {
            return Optional.empty();
        }
        return read.build("cooling.pre-cool", () -> {
            PreCoolTimes times = preCoolTimes();
            return new PreCooling(
                    read.number("cooling.pre-cool.to"), times.surplusSun(), times.driving(), times.windows());
        });
    }

    private PreCoolTimes preCoolTimes() {
        try {
            return PreCoolTimes.parse(read.word("cooling.pre-cool.when"));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    Optional<DashCooling> dash() {
        if (!values.has("dash-cooling")) {
            return Optional.empty();
        }
        return read.build(
                "dash-cooling",
                () -> new DashCooling(
                        read.number("dash-cooling.to"),
                        read.number("dash-cooling.capacity"),
                        read.number("dash-cooling.cop")));
    }

    /** Whether something hangs on the inverter; an inverter that the design has not is reported. */
    private boolean onInverter(String path) {
        boolean onInverter = values.word(path + ".on").equals("inverter");
        if (onInverter && !values.has("inverter")) {
            read.add(
                    path + ".on",
                    path
                            + ".on is inverter, but the design has none. Add inverter: {preset: \"2,000 W class\"}, or write "
                            + "on: bank.");
        }
        return onInverter;
    }

    static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace(' ', '_');
    }

    Optional<RefrigeratorSpec> refrigerator() {
        if (!values.has("refrigerator")) {
            return Optional.empty();
        }
        return read.build(
                "refrigerator",
                () -> new RefrigeratorSpec(
                        read.number("refrigerator.leak"),
                        read.number("refrigerator.inside"),
                        read.number("refrigerator.band"),
                        read.number("refrigerator.heat-capacity"),
                        read.number("refrigerator.compressor"),
                        read.number("refrigerator.standing"),
                        read.number("refrigerator.carnot"),
                        read.number("refrigerator.approach"),
                        read.number("refrigerator.condenser-rise"),
                        read.number("refrigerator.daily-use"),
                        read.number("refrigerator.shopping")));
    }

    Optional<InverterSpec> inverter() {
        if (!values.has("inverter")) {
            return Optional.empty();
        }
        return read.build(
                "inverter",
                () -> new InverterSpec(
                        read.number("inverter.rated"),
                        read.number("inverter.idle"),
                        read.number("inverter.linear-loss"),
                        read.number("inverter.square-loss"),
                        read.number("inverter.surge"),
                        read.word("inverter.running").equals("always")));
    }

    List<LoadSpec> loads() {
        List<LoadSpec> loads = new ArrayList<>();
        for (String name : values.names("loads")) {
            load(name).ifPresent(loads::add);
        }
        return loads;
    }

    private Optional<LoadSpec> load(String name) {
        String path = "loads." + name;
        boolean amps = values.find(path + ".draw")
                .flatMap(Value::dimension)
                .filter(d -> d == Dimension.CURRENT)
                .isPresent();
        boolean onInverter = onInverter(path);
        if (onInverter && !values.has("inverter")) {
            return Optional.empty();
        }
        if (onInverter && amps) {
            read.add(
                    path + ".draw",
                    path + ".draw \"" + values.word(path + ".draw") + "\" is in amps, but a load on the inverter takes "
                            + "watts. Write " + Dimension.POWER.show(12.8 * values.number(path + ".draw"))
                            + " if the amps were measured at the bank.");
            return Optional.empty();
        }
        return read.build(path, () -> {
            double draw = read.number(path + ".draw");
            LoadTimes times = times(path);
            return new LoadSpec(
                    name,
                    amps ? draw : 0,
                    amps ? 0 : draw,
                    onInverter,
                    times.occasion(),
                    times.windows(),
                    values.number(path + ".use"),
                    read.number(path + ".heat"),
                    read.number(path + ".airflow"),
                    shedBelow(path));
        });
    }

    private double shedBelow(String path) {
        return values.find(path + ".shed-below").map(Value::number).orElse(shedBelowByWord(read.word(path + ".shed")));
    }

    private static double shedBelowByWord(String shed) {
        return switch (shed) {
            case "first" -> 0.30;
            case "later" -> 0.15;
            default -> 0;
        };
    }

    Optional<ShedSpec> shed() {
        return read.build(
                "battery",
                () -> new ShedSpec(
                        values.has("cooling") ? shedBelow("cooling") : 0,
                        values.has("refrigerator") ? shedBelow("refrigerator") : 0,
                        read.number("battery.shed-band")));
    }

    private LoadTimes times(String path) {
        try {
            return LoadTimes.parse(read.word(path + ".when"));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
