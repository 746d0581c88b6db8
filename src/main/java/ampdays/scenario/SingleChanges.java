package ampdays.scenario;

import ampdays.scenario.TripChanges.Changed;
import ampdays.trip.Trip;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * The single changes that a designer thinks of first, kind by kind, each from its smallest step up. The steps are ours
 * (practice); what a design cannot take, such as more panels than fit on its roof, is left out.
 */
public final class SingleChanges {
    private static final double ROUNDING = 1e-9;
    private static final int MOST_BLOCKS = 16;
    private static final double BLOCK_AH = 100;
    private static final double PANEL_W = 100;
    private static final double MOST_EXTRA_W = 1000;
    private static final double CHARGER_STEP_A = 20;
    private static final double MOST_CHARGER_A = 120;
    private static final double FOAM_M = 0.025;
    private static final double MOST_FOAM_M = 0.1;
    private static final int DRIVE_MINUTES = 15;
    private static final int MOST_DRIVE_MINUTES = 180;
    private static final int MOST_WARMER_K = 4;
    private static final double SHORE_CHARGER_A = 50;
    private static final List<Integer> NIGHTS = List.of(14, 10, 7, 5, 4, 3, 2, 1);
    private static final List<String> SECOND_CLASSES = List.of("small frame", "medium frame", "large frame");

    private final Values values;
    private final Trip trip;

    private SingleChanges(Values values, Trip trip) {
        this.values = values;
        this.trip = trip;
    }

    /** All changes of a design: a list for each kind that it can take, with the steps in rising order. */
    public static List<List<SingleChange>> of(Values values, Trip trip) {
        SingleChanges changes = new SingleChanges(values, trip);
        return List.of(
                        changes.higherSetPoint(),
                        changes.covers(),
                        changes.insulation(),
                        changes.biggerBank(),
                        changes.moreSolar(),
                        changes.biggerCharger(),
                        changes.secondAlternator(),
                        changes.longerDrives(),
                        changes.hookUpNights())
                .stream()
                .filter(steps -> !steps.isEmpty())
                .toList();
    }

    /** Warmer, but with the comfort band of the design as it is: nights that get too warm do not count. */
    private List<SingleChange> higherSetPoint() {
        List<String> set = List.of("asleep", "awake", "aboard", "away").stream()
                .map(people -> "cabin.set." + people)
                .filter(path -> !Double.isNaN(values.number(path)))
                .toList();
        List<SingleChange> steps = new ArrayList<>();
        for (int k = 1; values.has("cooling") && !set.isEmpty() && k <= MOST_WARMER_K; k++) {
            Values warmer = values.with("cabin.comfort.high", values.number("cabin.comfort.high"));
            for (String path : set) {
                warmer = warmer.with(path, Math.min(45, values.number(path) + k));
            }
            steps.add(new SingleChange(
                    "set temperatures " + k + " K higher", 0, false, currency(), "", warmer, Optional.empty()));
        }
        return steps;
    }

    private List<SingleChange> covers() {
        return values.word("cabin.covers").equals("insulated")
                        || values.isSaid("cabin.covers-resistance")
                        || values.isSaid("cabin.covers-pass")
                ? List.of()
                : List.of(priced("insulated window covers", values.with("cabin.covers", "insulated")));
    }

    private List<SingleChange> insulation() {
        String path = "cabin.insulation";
        double hasM = values.number(path);
        return steps(
                step -> priced(
                        Dimension.THICKNESS.show(step * FOAM_M) + " more foam in roof and walls",
                        values.with(path, hasM + step * FOAM_M)),
                Math.min(MOST_FOAM_M, highest(path) - hasM) / FOAM_M);
    }

    private List<SingleChange> biggerBank() {
        String path = "battery.capacity";
        double hasAh = BatterySection.capacityAh(values);
        double blockAh = BLOCK_AH / BatterySection.twelveVolts(values);
        return steps(
                step -> priced(
                        Dimension.CHARGE.show(step * blockAh) + " more bank",
                        values.with(path, hasAh + step * blockAh)),
                Math.min(MOST_BLOCKS, (highest(path) - hasAh) / blockAh));
    }

    private List<SingleChange> moreSolar() {
        boolean has = values.has("solar");
        Values panels = (has ? values : values.with("solar.preset", "framed panels")).without("solar.controller");
        double hasW = has ? values.number("solar.power") : 0;
        double roomW = 1000 * panels.number("solar.panel-efficiency") * values.number("cabin.roof") - hasW;
        double mostW = Math.min(MOST_EXTRA_W, Math.min(roomW, highest("solar.power") - hasW));
        return steps(
                step -> priced(
                        Dimension.POWER.show(step * PANEL_W) + (has ? " more solar" : " of solar"),
                        panels.with("solar.power", hasW + step * PANEL_W)),
                mostW / PANEL_W);
    }

    private List<SingleChange> biggerCharger() {
        String path = "factory-alternator.charger";
        double hasA = values.has("factory-alternator") ? values.number(path) : MOST_CHARGER_A;
        return steps(
                step -> priced(
                        "a DC-DC charger of " + Dimension.CURRENT.show(hasA + step * CHARGER_STEP_A),
                        values.with(path, hasA + step * CHARGER_STEP_A)),
                (MOST_CHARGER_A - hasA) / CHARGER_STEP_A);
    }

    /** A generic class in place of what is there, where that is smaller. */
    private List<SingleChange> secondAlternator() {
        String section = "second-alternator";
        double hasA = values.has(section) ? values.number(section + ".rated") : 0;
        List<SingleChange> steps = new ArrayList<>();
        for (String name : SECOND_CLASSES) {
            Values fitted = values.without(section).with(section + ".preset", name);
            double ratedA = fitted.number(section + ".rated");
            if (ratedA > hasA) {
                steps.add(priced("a second alternator, " + name + " of " + Dimension.CURRENT.show(ratedA), fitted));
            }
        }
        return steps;
    }

    private List<SingleChange> longerDrives() {
        List<SingleChange> steps = new ArrayList<>();
        boolean charges = values.has("factory-alternator") || values.has("second-alternator");
        for (int minutes = DRIVE_MINUTES; charges && minutes <= MOST_DRIVE_MINUTES; minutes += DRIVE_MINUTES) {
            Optional<Changed> longer = TripChanges.longerDrives(trip, minutes);
            if (longer.isEmpty()) {
                break;
            }
            double hours = minutes / 60.0 * longer.get().days();
            steps.add(new SingleChange(
                    "driving " + minutes + " min longer on each day with a drive",
                    hours * values.number(PriceSection.DRIVING),
                    true,
                    currency(),
                    source(PriceSection.DRIVING),
                    values,
                    Optional.of(longer.get().trip())));
        }
        return steps;
    }

    private List<SingleChange> hookUpNights() {
        boolean has = values.has("shore-charger");
        Values fitted = has ? values : values.with("shore-charger.preset", "50 A class");
        double chargerPrice = has ? 0 : SHORE_CHARGER_A * values.number(PricedPart.CHARGER.pricePath());
        List<SingleChange> steps = new ArrayList<>();
        for (int nights : NIGHTS) {
            TripChanges.hookUpEvery(trip, nights)
                    .ifPresent(changed -> steps.add(new SingleChange(
                            "hook-up every " + ordinal(nights) + (has ? "" : ", with a charger of 50 A"),
                            chargerPrice + changed.days() * values.number(PriceSection.HOOK_UP),
                            true,
                            currency(),
                            source(PriceSection.HOOK_UP),
                            fitted,
                            Optional.of(changed.trip()))));
        }
        return steps;
    }

    private static String ordinal(int nights) {
        return switch (nights) {
            case 1 -> "night";
            case 2 -> "2nd night";
            case 3 -> "3rd night";
            default -> String.format(Locale.ROOT, "%dth night", nights);
        };
    }

    /** Whole steps from the first up to as many as there is room for. */
    private static List<SingleChange> steps(IntFunction<SingleChange> change, double room) {
        return IntStream.rangeClosed(1, (int) (room + ROUNDING))
                .mapToObj(change)
                .toList();
    }

    /** The highest value that a scenario may have at a path, in base units. */
    private static double highest(String path) {
        return ((Kind.Measured) Registry.parameter(path).orElseThrow().kind()).high();
    }

    private SingleChange priced(String words, Values changed) {
        List<Parts.Bought> bought = Parts.bought(values, changed);
        return new SingleChange(
                words,
                bought.stream().mapToDouble(Parts.Bought::price).sum(),
                false,
                currency(),
                source(bought.get(0).part().pricePath()),
                changed,
                Optional.empty());
    }

    private String source(String pricePath) {
        return values.find(pricePath).flatMap(Value::mark).map(Mark::label).orElse("your price");
    }

    private String currency() {
        return values.word(PriceSection.CURRENCY);
    }
}
