package ampdays.report;

import ampdays.chart.CabinChart;
import ampdays.chart.SocChart;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Text;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Makes the proposal from what was simulated. */
public final class ProposalMaker {
    private final Material material;
    private final Say say;

    private ProposalMaker(Material material) {
        this.material = material;
        this.say = new Say(material.units());
    }

    /**
     * Makes a proposal.
     *
     * @param brief the page for the client and the cautions alone
     */
    public static Proposal of(Material material, boolean brief) {
        ProposalMaker maker = new ProposalMaker(material);
        return new Proposal(
                material.comparison().title(),
                material.reference(),
                material.date().map(Say::day).orElse(""),
                material.program(),
                material.shop(),
                FrontPage.of(material, brief),
                brief ? List.of() : maker.technical(),
                Cautions.of(material, maker.say));
    }

    private List<Part> technical() {
        List<Part> parts = new ArrayList<>();
        parts.add(charge());
        material.studies().chances().map(ChancesPart::of).ifPresent(parts::add);
        parts.add(BreakEvenPart.of(material));
        parts.add(EnergyPart.of(material));
        AlternatorPart.of(material, say).ifPresent(parts::add);
        material.studies()
                .matters()
                .map(matters -> MattersPart.of(matters, material.units()))
                .ifPresent(parts::add);
        if (!material.studies().wiring().isEmpty()) {
            parts.add(WiringPart.of(material.studies().wiring(), say));
        }
        parts.add(parts());
        parts.add(Assumptions.of(material));
        parts.add(ModelSources.of(material));
        parts.add(Provenance.of(material));
        return parts;
    }

    private Part charge() {
        Stream<Picture> cabins = EnergyPart.shown(material)
                .map(option -> new Picture(
                        "cabin-" + material.options().indexOf(option),
                        Units.of(CabinChart.of(material.comparison(), option), material.units()),
                        Wording.capital(option.result().option())
                                + ": air outside and in the cabin, the band that counts as comfortable, and below, the hours of"
                                + " each night out of it."));
        return Part.of(
                "trip",
                "The trip",
                Stream.concat(
                        Stream.of(
                                new Picture(
                                        "charge",
                                        SocChart.of(material.comparison()),
                                        "Charge of the bank of every option; shaded: dark. A ring marks the first time at the reserve.")),
                        cabins));
    }

    private Part parts() {
        return Part.of(
                "parts",
                "Weights and prices",
                Stream.of(
                        MassSheet.sheet(material, say),
                        new CostSheet(material)
                                .sheet()
                                .<Block>map(sheet -> sheet)
                                .orElseGet(ProposalMaker::noPrices),
                        StageSheet.of(material, say)));
    }

    private static Text noPrices() {
        return new Text("No prices are given.");
    }
}
