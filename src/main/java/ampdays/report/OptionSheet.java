package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.results.Finding;
import ampdays.results.Finding.Severity;
import ampdays.results.RunResult;
import ampdays.study.Comparison.Option;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** All options side by side. A column that has nothing to say of any of them is left out. */
final class OptionSheet {
    private final Material material;
    private final Say say;
    private final CostSheet costs;
    private final List<Column> heads = new ArrayList<>();
    private final List<List<String>> columns = new ArrayList<>();

    private OptionSheet(Material material, Say say) {
        this.material = material;
        this.say = say;
        this.costs = new CostSheet(material);
    }

    static Sheet of(Material material, Say say) {
        return new OptionSheet(material, say).sheet();
    }

    private Sheet sheet() {
        column("Option", false, option -> option.result().option());
        column("Bank lasts", true, option -> Say.lasts(option.result()));
        column("Comfortable nights", true, option -> Say.nights(option.result()));
        column("Never empty, other trips", true, this::neverEmpty);
        column("Nights P10/50/90", true, this::manyNights);
        column(
                "Engine only to charge",
                true,
                option -> Say.hours(option.result().engineChargingHours()));
        column("Fuel for charging", true, option -> say.fuel(option.result().fuelLitres()));
        column("Weight of its parts", true, option -> say.mass(MassSheet.sumKg(material.values(option))));
        if (material.options().stream().anyMatch(option -> costs.total(option).isPresent())) {
            column("Price of the change", true, costs::shown);
        }
        column("What gives out first", false, option -> givesOut(option.result()));
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < material.options().size(); i++) {
            int row = i;
            rows.add(new Row(
                    columns.stream().map(cells -> cells.get(row)).toList(),
                    material.isBest(material.options().get(i))));
        }
        return new Sheet("The options side by side", heads, rows, Form.CARDS, notes());
    }

    private void column(String head, boolean numbers, Function<Option, String> cell) {
        List<String> cells = material.options().stream().map(cell).toList();
        if (cells.stream().anyMatch(text -> !text.equals(Say.NONE))) {
            heads.add(new Column(head, numbers));
            columns.add(cells);
        }
    }

    private String neverEmpty(Option option) {
        return OtherTrips.of(material)
                .map(trips -> trips.neverEmpty(option.result().option()))
                .orElse(Say.NONE);
    }

    private String manyNights(Option option) {
        return material.studies().chances().stream()
                .flatMap(chances -> chances.options().stream())
                .filter(one -> one.name().equals(option.result().option()))
                .map(one -> ChancesPart.nights(one.nights()))
                .findFirst()
                .orElse(Say.NONE);
    }

    private List<String> notes() {
        StringBuilder note = new StringBuilder("“Bank lasts”: until the charge first falls to "
                + Say.percent(material.comparison().reserveShare())
                + "; “holds”: it never does, and does not trend down either.");
        material.studies()
                .chances()
                .ifPresent(chances -> note.append(" Other trips: ")
                        .append(chances.trips())
                        .append(
                                " that differ in what nobody knows beforehand. “Nights P10/50/90”: on one of ten, half, nine of")
                        .append(" ten of them they are no more."));
        material.shop()
                .ifPresent(shop -> shop.terms().forEach(term -> note.append(' ').append(term)));
        return List.of(note.toString());
    }

    /** The first thing that went wrong with the bank, by its day, or how near it came. */
    private static String givesOut(RunResult run) {
        if (!Double.isNaN(run.daysToEmpty())) {
            long seconds = Math.round(run.daysToEmpty() * 86_400);
            return "bank at reserve, " + Say.day(run, run.startEpochSecond() + seconds);
        }
        return run.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE && !isHeat(finding))
                .min(Comparator.comparingLong(Finding::firstEpochSecond))
                .map(finding -> finding.kind() + ", " + Say.day(run, finding.firstEpochSecond()))
                .orElse("nothing; down to " + Say.percent(run.lowestSoc()));
    }

    /** Heat in a cabin with the cooling off is no failure of a part; it has its own caution. */
    private static boolean isHeat(Finding finding) {
        return finding.kind().startsWith("cabin above");
    }
}
