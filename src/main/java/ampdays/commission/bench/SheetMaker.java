package ampdays.commission.bench;

import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Sheet;
import ampdays.commission.Step;
import ampdays.scenario.Design;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.Values;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the sheet of a van on a day. The order is the safe one: nothing runs before it was looked at, small currents come
 * before large ones, the warning path is proven before large currents flow for long, and what empties the bank comes after
 * what fills it. Steps of parts that the design does not have are left out.
 */
public final class SheetMaker {
    private static final double LONG_ROAD_MIN = 30;

    private SheetMaker() {}

    /**
     * Makes a sheet; the same inputs give the same sheet.
     *
     * @param option name of the option
     * @param values of that option
     * @throws ScenarioException when the design cannot be built, or its panels not be judged at that time
     */
    public static Sheet sheet(String title, String option, Values values, Conditions told) throws ScenarioException {
        Items items = Items.of(option, values, told);
        List<Step> steps = new ArrayList<>();
        BankSteps bank = new BankSteps(items, told);
        EngineSteps engine = new EngineSteps(items, told);
        LivingSteps living = new LivingSteps(items, told);
        steps.add(bank.look());
        steps.add(bank.rest());
        bank.inverter().ifPresent(steps::add);
        steps.addAll(bank.loads());
        engine.factory().ifPresent(steps::add);
        engine.secondCold().ifPresent(steps::add);
        engine.warningPath().ifPresent(steps::add);
        engine.hotSoak().ifPresent(steps::add);
        engine.joints().ifPresent(steps::add);
        engine.carbonMonoxide().ifPresent(steps::add);
        engine.road().ifPresent(steps::add);
        living.solar().ifPresent(steps::add);
        living.shore().ifPresent(steps::add);
        living.cooling().ifPresent(steps::add);
        living.refrigerator().ifPresent(steps::add);
        steps.add(bank.lowVoltage());
        steps.add(bank.meter());
        steps.add(bank.handOver());
        return new Sheet(title, option, told, steps, notes(items, told, steps));
    }

    private static List<String> notes(Items items, Conditions told, List<Step> steps) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Predicted is what this van as designed would read today. A sound van reads within the pass band 98 times"
                        + " in 100, parts and meters being within their tolerances: " + SampledReadings.VANS
                        + " vans drawn within them were simulated.");
        Tolerances tolerances = items.tolerances();
        notes.add("Values of this design that are guesses: " + tolerances.guesses() + "; without a mark, so counted as"
                + " practice: " + tolerances.unmarked()
                + ". Measure them and mark them measured or datasheet, and the bands grow narrower.");
        Design design = items.variant().design();
        if (design.solar().isPresent() && !told.sun().isTold()) {
            notes.add(
                    "No sun was told, so the panels are left out. Make the sheet with --sun \"800 W/m²\", read in the plane"
                            + " of the panels, or with the time alone for a clear sky: --at \"2026-07-14 13:00\".");
        }
        if (design.cooler().isPresent() && told.ambientC() < VanReadings.COOLING_FROM_C) {
            notes.add("Too cool a day to judge the air conditioner: it is left out below 20 °C.");
        }
        boolean engine = design.second().isPresent() || design.factory().isPresent();
        if (engine && items.nominal().socAfterSoak() > VanReadings.ROAD_UP_TO_SOC) {
            notes.add(
                    "By the end of the hot soak the bank is nearly full and takes little: begin with a lower state of charge"
                            + " to see what the alternators can give.");
        } else if (engine && items.nominal().roadMinutes() < LONG_ROAD_MIN) {
            notes.add(
                    "The road run is short because the bank would be full before the end of a longer one: begin with a lower"
                            + " state of charge for half an hour or more.");
        }
        List<String> open = steps.stream()
                .flatMap(step -> step.items().stream())
                .filter(item -> item.predicted() > 5 && item.band().passFrom() <= 0)
                .filter(item -> Double.isFinite(item.band().passFrom()))
                .map(Item::id)
                .toList();
        if (!open.isEmpty()) {
            notes.add("Bands that reach down to nothing, because too much of the design is guessed to tell more: "
                    + String.join(", ", open) + ".");
        }
        return notes;
    }
}
