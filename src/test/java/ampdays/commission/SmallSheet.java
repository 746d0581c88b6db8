package ampdays.commission;

import ampdays.units.Dimension;
import java.util.List;
import java.util.Optional;

/** An invented sheet of a few lines, for tests of judging, writing and reading. */
public final class SmallSheet {
    private SmallSheet() {}

    public static Sheet sheet() {
        return new Sheet(
                "Test <van>, \"small\" & plain",
                "as it is",
                new Conditions(34, 60, 0.6, Sunlight.inPlane(800)),
                List.of(
                        new Step(
                                "Look",
                                "Engine off.",
                                "",
                                List.of(question("look.cables", true), question("look.codes", false))),
                        new Step(
                                "At rest",
                                "Everything off.",
                                "",
                                List.of(item(
                                        "rest.voltage",
                                        Symptom.RESTING_VOLTAGE,
                                        Dimension.VOLTAGE,
                                        "V",
                                        2,
                                        13.22,
                                        new Band(13.11, 13.36, 12.99, 13.49),
                                        ""))),
                        new Step(
                                "Hot",
                                "Fast idle for 30 min.",
                                "Outdoors.",
                                List.of(
                                        item(
                                                "hot.current",
                                                Symptom.ALTERNATOR_HOT,
                                                Dimension.CURRENT,
                                                "A",
                                                0,
                                                100,
                                                new Band(80, 120, Double.NEGATIVE_INFINITY, 150),
                                                ""),
                                        item(
                                                "hot.cable",
                                                Symptom.CABLE_DROP,
                                                Dimension.VOLTAGE,
                                                "mV",
                                                0,
                                                200,
                                                Band.atMost(260, 340),
                                                "hot.current"),
                                        item(
                                                "joint.worst",
                                                Symptom.JOINT_DROP,
                                                Dimension.VOLTAGE,
                                                "mV",
                                                0,
                                                Double.NaN,
                                                Band.atMost(50, 100),
                                                "hot.current"),
                                        item(
                                                "hot.case",
                                                Symptom.CASE_HEAT,
                                                Dimension.TEMPERATURE,
                                                "°C",
                                                0,
                                                90,
                                                Band.atMost(108, 120),
                                                ""))),
                        new Step(
                                "Carbon monoxide",
                                "Idle for 15 min.",
                                "",
                                List.of(new Item(
                                        "co.pillow",
                                        Symptom.CARBON_MONOXIDE,
                                        "Highest reading at the pillow",
                                        "pillow",
                                        Optional.empty(),
                                        "ppm",
                                        0,
                                        0,
                                        Band.atMost(3, 3),
                                        "")))),
                List.of("Invented."));
    }

    private static Item question(String id, boolean noStops) {
        return new Item(id, Symptom.CHECK, "All well?", "by eye", Optional.empty(), "", 0, 1, Band.yes(noStops), "");
    }

    private static Item item(
            String id,
            Symptom symptom,
            Dimension dimension,
            String unit,
            int decimals,
            double predicted,
            Band band,
            String scalesWith) {
        return new Item(
                id,
                symptom,
                "Reading of " + id,
                "somewhere",
                Optional.of(dimension),
                unit,
                decimals,
                predicted,
                band,
                scalesWith);
    }
}
