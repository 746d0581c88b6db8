package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.report.Block.Text;
import ampdays.results.RunResult;
import ampdays.study.UpgradePath.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** In which order the changes are worth buying. */
final class StageSheet {
    private final List<Stage> stages;
    private final CostSheet costs;
    private final Say say;
    private final boolean isPriced;
    private final boolean hasFree;

    private StageSheet(Material material, Say say) {
        this.stages = material.studies().stages();
        this.costs = new CostSheet(material);
        this.say = say;
        this.isPriced = stages.stream().anyMatch(stage -> stage.price().isPresent());
        this.hasFree = stages.stream().anyMatch(stage -> isFree(stage.price()));
    }

    static Block of(Material material, Say say) {
        RunResult base = material.base().result();
        if (!material.studies().stages().isEmpty()) {
            return new StageSheet(material, say).sheet(base);
        }
        return new Text(
                base.holds() && base.comfortableNights() == base.nights()
                        ? "There is no order of buying: the van holds as it is, and every night is comfortable."
                        : "There is no order of buying: no change that the options make adds a day or a comfortable night.");
    }

    private Sheet sheet(RunResult base) {
        List<Column> heads = new ArrayList<>(List.of(
                Column.words("Stage"),
                Column.numbers("Then the bank lasts"),
                Column.numbers("Then comfortable nights"),
                Column.numbers("Weight more")));
        if (isPriced) {
            heads.add(Column.numbers("Price"));
            heads.add(Column.numbers("In all"));
        }
        List<Row> rows = new ArrayList<>();
        rows.add(row(base.option(), base, Say.NONE, OptionalDouble.empty(), OptionalDouble.empty()));
        OptionalDouble inAll = OptionalDouble.of(0);
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            inAll = inAll.isPresent() && stage.price().isPresent()
                    ? OptionalDouble.of(inAll.getAsDouble() + stage.price().getAsDouble())
                    : OptionalDouble.empty();
            String name = (i + 1) + ". " + (i == 0 ? "" : "and ") + stage.name();
            rows.add(row(name, stage.result(), kilograms(stage.addedKg()), stage.price(), inAll));
        }
        return new Sheet("In which order to buy", heads, rows, Form.CARDS, List.of(note()));
    }

    private Row row(String name, RunResult run, String weight, OptionalDouble price, OptionalDouble inAll) {
        List<String> cells = new ArrayList<>(List.of(name, Say.lasts(run), Say.nights(run), weight));
        if (isPriced) {
            cells.add(shown(price));
            cells.add(shown(inAll));
        }
        return Row.of(cells);
    }

    private String shown(OptionalDouble price) {
        return isFree(price) ? "nothing" : costs.shown(price, Say.NONE);
    }

    private static boolean isFree(OptionalDouble price) {
        return price.isPresent() && price.getAsDouble() == 0;
    }

    private String kilograms(double kg) {
        return Math.abs(kg) < MassSheet.LEAST_KG ? Say.NONE : (kg < 0 ? "\u2212" : "") + say.mass(Math.abs(kg));
    }

    private String note() {
        String by = isPriced
                ? "what adds most days and comfortable nights for its price, or where a price is missing, what adds most."
                : "what adds most days and comfortable nights.";
        return "Each stage is simulated on top of those before it. "
                + (hasFree ? "Set points and habits cost nothing and come first; then comes " : "Next comes ") + by
                + " It ends when the bank holds and every night is comfortable, or when nothing adds any more.";
    }
}
