package ampdays.scenario;

import ampdays.units.Nearest;
import ampdays.units.QuantityException;
import ampdays.wiring.Circuit;
import ampdays.wiring.Circuit.Opening;
import ampdays.wiring.Conductor;
import ampdays.wiring.End;
import ampdays.wiring.End.Point;
import ampdays.wiring.Harness;
import ampdays.wiring.Joint;
import ampdays.wiring.Place;
import ampdays.wiring.Protection;
import ampdays.wiring.ProtectionKind;
import ampdays.wiring.SideVoltages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Makes the records of the circuits from their values. */
final class CircuitBuilder {
    private static final double BODY_OHM = 0.001;
    private static final double CRITICAL_DROP = 0.03;
    private static final double OTHER_DROP = 0.10;
    private static final Set<Point> CHARGERS =
            Set.of(Point.SHORE_CHARGER, Point.SOLAR_CONTROLLER, Point.SECOND_ALTERNATOR, Point.CHARGER);

    /** Of a 12 V start battery, and what the vehicle's alternator holds it at, V; practice. */
    private static final double START_BATTERY_V = 12.8;

    private static final double CHARGING_V = 14;

    private final Values values;
    private final SideVoltages voltages;
    private final ProblemList read;

    CircuitBuilder(Values values, SideVoltages voltages, ProblemList read) {
        this.values = values;
        this.voltages = voltages;
        this.read = read;
    }

    /** Voltages of the sides; a side that the design does not have gets the usual one. */
    static SideVoltages voltages(Values values) {
        double twelves = values.has("factory-alternator")
                ? Math.max(1, Math.rint(values.number("factory-alternator.set-point") / CHARGING_V))
                : 1;
        return new SideVoltages(
                BatterySection.nominalV(values), twelves * START_BATTERY_V, SolarSection.stringV(values));
    }

    List<Circuit> circuits() {
        List<Circuit> circuits = new ArrayList<>();
        for (String name : values.names("circuits")) {
            circuit(name).ifPresent(circuits::add);
        }
        Harness.loop(circuits)
                .ifPresent(closing -> read.add(
                        "circuits." + closing.name(),
                        "circuits." + closing.name() + " closes a loop: " + closing.from() + " and " + closing.to()
                                + " are joined already. Say parallel cables as one of their whole area."));
        return circuits;
    }

    private Optional<Circuit> circuit(String name) {
        String path = "circuits." + name;
        int before = read.count();
        Optional<End> from = end(path + ".from");
        Optional<End> to = end(path + ".to");
        Optional<Conductor> conductor = conductor(path + ".conductor");
        read.number(path + ".length");
        if (read.count() > before || !joinable(path, from.orElseThrow(), to.orElseThrow())) {
            return Optional.empty();
        }
        OptionalDouble worst = worstJointOhm(path);
        Optional<Protection> protection = protection(path, from.orElseThrow(), to.orElseThrow());
        if (read.count() > before) {
            return Optional.empty();
        }
        double jointOhm = read.number(path + ".joint");
        return read.build(
                path,
                () -> new Circuit(
                        name,
                        from.orElseThrow(),
                        to.orElseThrow(),
                        read.number(path + ".length"),
                        bodyOhm(path),
                        values.find(path + ".return-resistance").isPresent(),
                        conductor.orElseThrow(),
                        read.number(path + ".insulation"),
                        read.count(path + ".bundled"),
                        place(path + ".air"),
                        read.word(path + ".sheathed").equals("yes"),
                        read.count(path + ".joints"),
                        jointOhm,
                        Math.max(jointOhm, worst.orElse(jointOhm)),
                        dropLimit(path, from.orElseThrow(), to.orElseThrow()),
                        said(path + ".fault-current"),
                        sensedAtBank(path),
                        Opening.of(read.word(path + ".opened")).orElseThrow(),
                        protection));
    }

    private Optional<End> end(String path) {
        String text = read.word(path);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<End> named = End.named(text);
        if (named.isPresent()) {
            return named;
        }
        List<String> known = new ArrayList<>(End.labels());
        known.addAll(values.names("loads"));
        if (!values.names("loads").contains(text)) {
            read.add(
                    path,
                    path + " is \"" + text + "\", which is no end of a circuit. Ends: " + String.join(", ", known) + "."
                            + Nearest.of(text, known)
                                    .map(w -> " Did you mean " + w + "?")
                                    .orElse(""));
            return Optional.empty();
        }
        if (values.word("loads." + text + ".on").equals("inverter")) {
            read.add(path, path + " is \"" + text + "\", a load behind the inverter. Name the inverter instead.");
            return Optional.empty();
        }
        return Optional.of(End.ofLoad(text));
    }

    private Optional<Conductor> conductor(String path) {
        String text = read.word(path);
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Conductor.parse(text));
        } catch (QuantityException e) {
            read.add(path, path + " " + e.getMessage());
            return Optional.empty();
        }
    }

    /** Whether two ends may be joined: panels and vehicle each only up to their own converter. */
    private boolean joinable(String path, End from, End to) {
        Set<Point> ends = from.point() == to.point() ? Set.of(from.point()) : Set.of(from.point(), to.point());
        String wanted = "";
        if (from.equals(to)) {
            wanted = "Name two different ends.";
        } else if (ends.contains(Point.SOLAR_PANELS) && !ends.contains(Point.SOLAR_CONTROLLER)) {
            wanted = "Panels go to the solar controller.";
        } else if (ends.contains(Point.START_BATTERY) || ends.contains(Point.FACTORY_ALTERNATOR)) {
            boolean vehicle =
                    ends.contains(Point.CHARGER) || ends.equals(Set.of(Point.START_BATTERY, Point.FACTORY_ALTERNATOR));
            wanted = vehicle ? "" : "The vehicle's side goes to the DC-DC charger.";
        }
        if (!wanted.isEmpty()) {
            read.add(path, path + " joins " + from + " and " + to + ". " + wanted);
        }
        return wanted.isEmpty();
    }

    private OptionalDouble worstJointOhm(String path) {
        OptionalDouble measured = said(path + ".worst-joint-drop");
        OptionalDouble at = said(path + ".worst-joint-drop-at");
        if (measured.isPresent() != at.isPresent()) {
            read.add(
                    path + (at.isPresent() ? ".worst-joint-drop-at" : ".worst-joint-drop"),
                    path
                            + " says only one of worst-joint-drop and worst-joint-drop-at. Write both, like 150 mV and 150 A.");
            return OptionalDouble.empty();
        }
        OptionalDouble ohm = said(path + ".worst-joint");
        if (measured.isPresent() && ohm.isPresent()) {
            read.add(
                    path + ".worst-joint",
                    path + " says worst-joint and worst-joint-drop, which are the same thing. Keep one.");
            return OptionalDouble.empty();
        }
        return measured.isPresent() ? OptionalDouble.of(Joint.ohm(measured.getAsDouble(), at.getAsDouble())) : ohm;
    }

    private Optional<Protection> protection(String path, End from, End to) {
        Optional<ProtectionKind> kind = ProtectionKind.of(read.word(path + ".protection"));
        OptionalDouble rating = said(path + ".rating");
        if (kind.isEmpty()) {
            if (rating.isPresent()) {
                read.add(
                        path + ".protection",
                        path + " has a rating but no protection. Name it: " + String.join(", ", ProtectionKind.labels())
                                + ".");
            }
            return Optional.empty();
        }
        if (rating.isEmpty()) {
            read.add(path + ".rating", path + ".rating is missing. Write a current such as 100 A.");
            return Optional.empty();
        }
        int before = read.count();
        Optional<End> near = near(path, from, to);
        if (read.count() > before) {
            return Optional.empty();
        }
        double nominalV = voltages.at(Harness.side(from, to));
        return read.build(
                path,
                () -> new Protection(
                        kind.get(),
                        rating.getAsDouble(),
                        said(path + ".calibrated-at").orElse(kind.get().usualCalibrationC()),
                        said(path + ".interrupt").orElse(kind.get().usualInterruptA(nominalV)),
                        place(path + ".protection-air"),
                        near,
                        read.number(path + ".protection-distance")));
    }

    private Optional<End> near(String path, End from, End to) {
        String text = values.word(path + ".protection-near");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.equals(from.label()) && !text.equals(to.label())) {
            read.add(
                    path + ".protection-near",
                    path + ".protection-near is \"" + text + "\", which is neither end of it. Write " + from + " or "
                            + to + ".");
        }
        return Optional.of(text.equals(to.label()) ? to : from);
    }

    private OptionalDouble bodyOhm(String path) {
        return read.word(path + ".return").equals(CircuitSection.BODY)
                ? OptionalDouble.of(said(path + ".return-resistance").orElse(BODY_OHM))
                : OptionalDouble.empty();
    }

    private boolean sensedAtBank(String path) {
        return read.word(path + ".sensed").equals(CircuitSection.AT_BANK);
    }

    private double dropLimit(String path, End from, End to) {
        boolean load = from.point() == Point.LOAD || to.point() == Point.LOAD;
        boolean charger = CHARGERS.contains(from.point()) || CHARGERS.contains(to.point());
        return said(path + ".drop").orElse(load || (charger && sensedAtBank(path)) ? OTHER_DROP : CRITICAL_DROP);
    }

    private Place place(String path) {
        return Place.of(read.word(path)).orElseThrow();
    }

    private OptionalDouble said(String path) {
        double number = values.number(path);
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }
}
