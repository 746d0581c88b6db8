package ampdays.commission.bench;

import ampdays.commission.Band;
import ampdays.commission.Conditions;
import ampdays.commission.Item;
import ampdays.commission.Step;
import ampdays.commission.Sunlight;
import ampdays.commission.Symptom;
import ampdays.commission.bench.SampledReadings.Pass;
import ampdays.commission.bench.SampledReadings.Stop;
import ampdays.scenario.Design;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Steps of sun, hook-up and what makes the van a place to live in. Limits without a source are common practice. */
final class LivingSteps {
    private static final double LEAST_SPLIT_K = 10;
    private static final double MOST_SPLIT_K = 14;
    private static final double INSIDE_OFF_C = 3;

    private final Items items;
    private final Conditions told;
    private final Design design;

    LivingSteps(Items items, Conditions told) {
        this.items = items;
        this.told = told;
        this.design = items.variant().design();
    }

    Optional<Step> solar() {
        List<Item> list = BankSteps.present(List.of(
                items.predicted(
                        "solar.power",
                        Symptom.SOLAR,
                        "Power into the bank",
                        "controller's output, or its display",
                        Pass.BETWEEN,
                        Stop.NEVER),
                items.predicted(
                        "solar.current",
                        Symptom.SOLAR,
                        "Current into the bank",
                        "controller's output cable, clamp",
                        Pass.BETWEEN,
                        Stop.NEVER)));
        return list.isEmpty()
                ? Optional.empty()
                : Optional.of(new Step(
                        "Panels",
                        "Engine off, no shadow on any cell, " + light()
                                + ". A large load on, so that the bank takes all of it.",
                        "On the roof: fall, and live strings that no switch turns off in daylight.",
                        list));
    }

    private String light() {
        Sunlight sun = told.sun();
        if (sun.kind() == Sunlight.Kind.IN_PLANE) {
            return "light of " + Dimension.IRRADIANCE.show(sun.wm2())
                    + " in the plane of the panels at the same moment";
        }
        PanelSun counted = items.sun();
        String inPlane = String.format(Locale.ROOT, "%.0f W/m² in the plane of the panels", counted.planeWm2());
        String height = String.format(
                Locale.ROOT,
                "sun %.0f° high at %s",
                counted.heightDeg(),
                sun.spelledTime().orElseThrow());
        return sun.kind() == Sunlight.Kind.HORIZONTAL
                ? "light of " + Dimension.IRRADIANCE.show(sun.wm2()) + " on a level meter at the same moment, " + height
                        + ": counted as " + inPlane
                : height + " and no cloud near it: about " + inPlane
                        + " (guess; read the light and make the sheet with it, and the band grows narrower)";
    }

    Optional<Step> shore() {
        List<Item> list = BankSteps.present(List.of(items.predicted(
                "shore.current",
                Symptom.SHORE,
                "Charging current",
                "charger's output cable, clamp",
                Pass.BETWEEN,
                Stop.NEVER)));
        return list.isEmpty()
                ? Optional.empty()
                : Optional.of(new Step(
                        "Hook-up",
                        "Panels covered, loads off. Test the residual-current device first.",
                        "Mains voltage: by a person allowed to.",
                        list));
    }

    Optional<Step> cooling() {
        List<Item> list = new ArrayList<>(BankSteps.present(List.of(items.predicted(
                "cooling.current",
                Symptom.COOLER_INPUT,
                "Current at the bank after 5 min, base draw in it",
                "bank minus",
                Pass.BETWEEN,
                Stop.ABOVE))));
        if (list.isEmpty()) {
            return Optional.empty();
        }
        boolean onInverter = design.cooler().orElseThrow().onInverter();
        list.add(new BankSteps(items, told).drop("cooling", onInverter ? "inverter's input" : "air conditioner"));
        list.add(Items.limited(
                "cooling.split",
                Symptom.AIR_SPLIT,
                "Inlet air less outlet air after 15 min",
                "at the unit's grilles, two thermometers",
                "K",
                Double.NaN,
                Band.within(LEAST_SPLIT_K, MOST_SPLIT_K),
                ""));
        items.predicted(
                        "cooling.cabin",
                        Symptom.PULL_DOWN,
                        "Cabin after an hour",
                        "middle of the cabin, chest height, out of the draught",
                        Pass.UP_TO,
                        Stop.NEVER)
                .ifPresent(list::add);
        return Optional.of(new Step(
                "Air conditioner's pull-down",
                "In the shade, aired until the cabin is as warm as outside, "
                        + Conditions.inBothUnits(told.ambientC())
                        + "; then everything shut, nobody inside, lowest setting, full fan, for an hour.",
                "",
                list));
    }

    Optional<Step> refrigerator() {
        return design.refrigerator().map(spec -> {
            List<Item> list = new ArrayList<>(BankSteps.present(List.of(items.predicted(
                    "refrigerator.energy",
                    Symptom.REFRIGERATOR,
                    "Energy over 24 h",
                    "its own cable, energy meter",
                    Pass.BETWEEN,
                    Stop.NEVER))));
            list.add(Items.limited(
                    "refrigerator.inside",
                    Symptom.REFRIGERATOR,
                    "Inside at the end",
                    "in a glass of water in the middle",
                    "°C",
                    spec.insideC(),
                    Band.within(spec.insideC() - INSIDE_OFF_C, spec.insideC() + INSIDE_OFF_C),
                    ""));
            return new Step(
                    "Refrigerator's day",
                    "Used as on a trip for 24 h, cabin at about " + Conditions.inBothUnits(told.ambientC())
                            + " on the mean; write that mean down.",
                    "",
                    list);
        });
    }
}
