package ampdays.scenario;

import static ampdays.scenario.Mark.GUESS;
import static ampdays.scenario.Mark.PRACTICE;

import ampdays.scenario.Section.Presence;
import ampdays.units.Dimension;
import ampdays.wiring.Circuit.Opening;
import ampdays.wiring.End;
import ampdays.wiring.Place;
import ampdays.wiring.ProtectionKind;
import java.util.List;
import java.util.stream.Stream;

/** Runs of cable and what protects them; they are checked by themselves and move no other result. */
final class CircuitSection {
    static final String NONE = "none";
    static final String BODY = "body";
    static final String AT_BANK = "at the bank";

    private CircuitSection() {}

    static Section section() {
        SectionBuilder section = SectionBuilder.named(
                        "circuits",
                        Presence.COMPONENT,
                        "Runs of cable with what protects them, each under the name you give it, for `ampdays wiring`. Left out, a"
                                + " set is offered that suits the components; the circuits move no other result.")
                .add("from", new Kind.Text(), new Fallback.Required(), PRACTICE, "One end: " + ends())
                .add("to", new Kind.Text(), new Fallback.Required(), PRACTICE, "The other end, from the same list.")
                .required("length", Dimension.LENGTH, 0.05, 100, "One way.")
                .choice(
                        "return",
                        List.of("cable", BODY),
                        PRACTICE,
                        "The way back: by a second cable of the same size, or through engine strap and body.")
                .add(
                        "return-resistance",
                        SectionBuilder.measured(Dimension.RESISTANCE, 0, 1),
                        new Fallback.Absent(),
                        GUESS,
                        "Of the way back through strap and body, measured; 1 mΩ (guess) if not said.")
                .add(
                        "conductor",
                        new Kind.ConductorSize(),
                        new Fallback.Required(),
                        PRACTICE,
                        "Copper: a gauge such as 2/0 AWG, or an area such as 70 mm².")
                .fixed(
                        "insulation",
                        Dimension.TEMPERATURE,
                        60,
                        250,
                        "105 °C",
                        GUESS,
                        "Temperature rating of the insulation; vehicle battery cable is 80, 105 or 125 °C.")
                .add(
                        "bundled",
                        new Kind.Count(1, 60),
                        new Fallback.Fixed("2"),
                        PRACTICE,
                        "Current-carrying conductors that lie together.")
                .choice(
                        "air",
                        Place.labels(),
                        PRACTICE,
                        "Whose air surrounds the warmest part of the run; roof is as warm as the panels.")
                .choice(
                        "sheathed",
                        List.of("no", "yes"),
                        PRACTICE,
                        "Whether it lies in a sheath, conduit or enclosure.")
                .add(
                        "drop",
                        SectionBuilder.measured(Dimension.SHARE, 0.002, 0.5),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Largest voltage drop there and back; if not said 3 %, and 10 % for single loads and for a charging"
                                + " source that is sensed at the bank.")
                .add(
                        "fault-current",
                        SectionBuilder.measured(Dimension.CURRENT, 10, 1e6),
                        new Fallback.Absent(),
                        PRACTICE,
                        "What the battery behind it drives into a short, as its maker says; if not said, estimated.")
                .choice(
                        "sensed",
                        List.of("at the source", AT_BANK),
                        PRACTICE,
                        "Where the regulator or charger that feeds this run senses the voltage: before or behind the drop.")
                .choice(
                        "opened",
                        Opening.labels(),
                        PRACTICE,
                        "A second alternator's run: whether a switch, contactor or the bank's own protection may open it while"
                                + " it charges.");
        return protection(joints(section)).besideTheVan().build();
    }

    private static String ends() {
        return String.join(", ", End.labels()) + ", or the name of a load.";
    }

    private static SectionBuilder joints(SectionBuilder section) {
        return section.add(
                        "joints",
                        new Kind.Count(1, 60),
                        new Fallback.Fixed("4"),
                        PRACTICE,
                        "Lugs and studs that the current passes there and back.")
                .fixed(
                        "joint",
                        Dimension.RESISTANCE,
                        0,
                        0.1,
                        "0.05 mΩ",
                        PRACTICE,
                        "Of each; a good crimped lug 0.02 to 0.05, a loose or corroded one 0.5 to 2 mΩ.")
                .add(
                        "worst-joint",
                        SectionBuilder.measured(Dimension.RESISTANCE, 0, 1),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Of the worst one, if it is worse than the others.")
                .add(
                        "worst-joint-drop",
                        SectionBuilder.measured(Dimension.VOLTAGE, 0, 10),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Or the voltage measured across it under load.")
                .add(
                        "worst-joint-drop-at",
                        SectionBuilder.measured(Dimension.CURRENT, 0.1, 5000),
                        new Fallback.Absent(),
                        PRACTICE,
                        "The current at which that was measured.");
    }

    private static SectionBuilder protection(SectionBuilder section) {
        List<String> kinds =
                Stream.concat(Stream.of(NONE), ProtectionKind.labels().stream()).toList();
        return section.choice("protection", kinds, PRACTICE, "Fuse or breaker.")
                .add(
                        "rating",
                        SectionBuilder.measured(Dimension.CURRENT, 0.5, 2000),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Its rating; it must be said with any protection.")
                .add(
                        "calibrated-at",
                        SectionBuilder.measured(Dimension.TEMPERATURE, 0, 100),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Air that the rating is told for; 40 °C for a thermal breaker, else 25 °C.")
                .add(
                        "interrupt",
                        SectionBuilder.measured(Dimension.CURRENT, 10, 1e6),
                        new Fallback.Absent(),
                        PRACTICE,
                        "Largest current it can interrupt; if not said, the usual one of its family (guess).")
                .choice("protection-air", Place.labels(), PRACTICE, "Whose air surrounds it.")
                .add(
                        "protection-near",
                        new Kind.Text(),
                        new Fallback.Absent(),
                        PRACTICE,
                        "The end at which it sits; if not said, the one at the battery.")
                .fixed(
                        "protection-distance",
                        Dimension.LENGTH,
                        0,
                        20,
                        "150 mm",
                        GUESS,
                        "Length of cable between that end and it.");
    }
}
