package ampdays.scenario;

import static ampdays.units.Dimension.SHARE;
import static ampdays.units.Dimension.TEMPERATURE_DIFFERENCE;

import ampdays.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * Habits of people and tolerances of parts that differ from trip to trip, with the spreads of the section chances. Test:
 * {@code HabitsTest}.
 */
public final class Habits {
    private static final String FACTORY = "factory-alternator";
    private static final String SECOND = "second-alternator";

    private Habits() {}

    /** All of them, in the same order for every design; what a design does not have, or is sure of, has no spread. */
    public static List<Uncertain> of(Values values) {
        boolean drives = values.has(FACTORY) || values.has(SECOND) || values.has("dash-cooling");
        boolean loads = !values.names("loads").isEmpty();
        return List.of(
                around("drives", SHARE, drives, values, ChancesSection.DRIVES, Habits::drives),
                around("set point", TEMPERATURE_DIFFERENCE, true, values, ChancesSection.SET_POINT, Habits::setPoint),
                around("light through shade", SHARE, true, values, ChancesSection.SHADE, Habits::shade),
                around("loads", SHARE, loads, values, ChancesSection.LOADS, Habits::loads),
                alternator("factory alternator", FACTORY, values),
                alternator("second alternator", SECOND, values),
                new Uncertain(
                        "bank wear",
                        SHARE,
                        0,
                        0,
                        values.number(ChancesSection.BANK_WEAR),
                        source(values, ChancesSection.BANK_WEAR),
                        Habits::wear));
    }

    private static Uncertain around(
            String name, Dimension dimension, boolean has, Values values, String path, Uncertain.Change change) {
        double spread = has ? values.number(path) : 0;
        return new Uncertain(name, dimension, -spread, 0, spread, source(values, path), change);
    }

    private static Uncertain alternator(String name, String section, Values values) {
        boolean rated =
                values.has(section) && values.word(section + ".curve-points").isEmpty();
        return around(
                name,
                SHARE,
                rated,
                values,
                ChancesSection.ALTERNATOR,
                (draft, by) -> draft.with(scaled(draft.values(), section + ".rated", 1 + by)));
    }

    private static String source(Values values, String path) {
        return values.find(path).flatMap(Value::mark).map(Mark::label).orElse("your figure");
    }

    private static Draft drives(Draft draft, double by) {
        return new Draft(draft.values(), draft.drivesShare() * (1 + by));
    }

    private static Draft setPoint(Draft draft, double byK) {
        Values changed = draft.values();
        for (String people : List.of("asleep", "awake", "aboard", "away")) {
            String path = "cabin.set." + people;
            if (!Double.isNaN(changed.number(path))) {
                changed = changed.with(path, within(path, changed.number(path) + byK));
            }
        }
        return draft.with(changed);
    }

    private static Draft shade(Draft draft, double by) {
        Values changed = draft.values();
        for (String shade : List.of(TimetableLine.PART_SHADE, TimetableLine.SHADE)) {
            for (String light : List.of("beam", "diffuse")) {
                String path = "shade." + shade + "." + light;
                changed = changed.with(path, within(path, changed.number(path) + by));
            }
        }
        return draft.with(changed);
    }

    private static Draft loads(Draft draft, double by) {
        Values changed = draft.values();
        for (String load : changed.names("loads")) {
            changed = scaled(changed, "loads." + load + ".draw", 1 + by);
        }
        return draft.with(changed);
    }

    private static Draft wear(Draft draft, double gone) {
        return draft.with(scaled(draft.values(), "battery.health", 1 - gone));
    }

    /** The values with a number times a factor, as far as the parameter's range goes, in whatever it was said in. */
    private static Values scaled(Values values, String path, double factor) {
        Optional<Value> found = values.find(path);
        if (found.isEmpty()) {
            return values;
        }
        double number = found.get().number() * factor;
        Dimension dimension = found.get().dimension().orElseThrow();
        Kind.Measured kind = measured(path);
        double kept = dimension == kind.dimensions().get(0) ? kind.within(number) : number;
        return values.with(path, found.get().changed(kept));
    }

    private static double within(String path, double number) {
        return measured(path).within(number);
    }

    private static Kind.Measured measured(String path) {
        return (Kind.Measured) Registry.parameter(path).orElseThrow().kind();
    }
}
