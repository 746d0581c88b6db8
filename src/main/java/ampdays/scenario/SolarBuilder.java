package ampdays.scenario;

import ampdays.pv.Dirt;
import ampdays.pv.Mounting;
import ampdays.pv.PanelSpec;
import ampdays.pv.PartShade;
import ampdays.pv.SolarController;
import ampdays.pv.SolarSpec;
import java.util.Optional;

/** Makes the record of the panels and their controller from their values. */
final class SolarBuilder {
    private final Values values;
    private final ProblemList read;

    SolarBuilder(Values values, ProblemList read) {
        this.values = values;
        this.read = read;
    }

    Optional<SolarSpec> solar() {
        if (!values.has("solar")) {
            return Optional.empty();
        }
        int panels = read.count("solar.panels");
        int strings = read.count("solar.strings");
        if (strings > 0 && panels % strings != 0) {
            read.add(
                    "solar.strings",
                    "solar.strings is " + strings + ", but solar.panels is " + panels
                            + ", and every string has the same number of them. Write a divisor of it, or more panels.");
            return Optional.empty();
        }
        return read.build(
                "solar",
                () -> new SolarSpec(
                        read.number("solar.power"),
                        panel(),
                        dirt(),
                        read.number("solar.mismatch"),
                        read.number("solar.wiring"),
                        partShade(),
                        controller()));
    }

    private PanelSpec panel() {
        return new PanelSpec(
                Mounting.ofGap(read.number("solar.gap")),
                read.number("solar.temperature-coefficient"),
                read.number("solar.low-light"),
                read.number("solar.panel-efficiency"),
                read.number("solar.tilt"),
                read.number("solar.azimuth"));
    }

    private Dirt dirt() {
        return new Dirt(
                read.number("solar.dirt"),
                read.number("solar.dirt-a-day"),
                read.number("solar.dirt-most"),
                read.count("solar.dirt-damp-days"));
    }

    private PartShade partShade() {
        return new PartShade(
                read.number("solar.furniture"),
                read.count("solar.panels"),
                read.count("solar.groups"),
                read.count("solar.strings"),
                read.count("solar.patches"));
    }

    private SolarController controller() {
        return new SolarController(
                SolarSection.isPulseWidth(values),
                read.number("solar.tracking"),
                read.number("solar.conversion"),
                read.number("solar.controller"),
                read.number("solar.string-voltage"));
    }
}
