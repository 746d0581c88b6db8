package ampdays.report;

import ampdays.results.RunResult;
import ampdays.study.UpgradePath.Stage;
import ampdays.units.Wording;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What several changes together do, where they hold and the recommended option does not, or costs more. */
final class CheaperWay {
    private final Material material;
    private final CostSheet costs;
    private final List<Stage> stages;

    private CheaperWay(Material material) {
        this.material = material;
        this.costs = new CostSheet(material);
        this.stages = material.studies().stages();
    }

    /** A sentence, such as "“more solar” and “less heat” together hold too, for 3,310 USD instead of 5,130 USD". */
    static Optional<String> of(Material material) {
        CheaperWay way = new CheaperWay(material);
        return way.isComplete() && way.isWorthSaying() ? Optional.of(way.sentence()) : Optional.empty();
    }

    private boolean isComplete() {
        if (stages.isEmpty()) {
            return false;
        }
        RunResult last = stages.get(stages.size() - 1).result();
        return last.holds() && last.comfortableNights() == last.nights();
    }

    private boolean isWorthSaying() {
        OptionalDouble recommended = recommendedPrice();
        return !material.best().result().holds()
                || (price().isPresent()
                        && recommended.isPresent()
                        && price().getAsDouble() < recommended.getAsDouble());
    }

    private OptionalDouble recommendedPrice() {
        return costs.total(material.best());
    }

    private OptionalDouble price() {
        return stages.stream().allMatch(stage -> stage.price().isPresent())
                ? OptionalDouble.of(stages.stream()
                        .mapToDouble(stage -> stage.price().getAsDouble())
                        .sum())
                : OptionalDouble.empty();
    }

    private String sentence() {
        RunResult best = material.best().result();
        String names = Wording.listed(
                stages.stream().map(stage -> Say.quoted(stage.name())).toList());
        String price = price().isEmpty() ? "" : ", for " + costs.shown(price(), Say.NONE);
        return names + (stages.size() > 1 ? " together hold" : " alone holds")
                + (best.holds() ? " too" + price + " instead of " + costs.shown(recommendedPrice(), Say.NONE) : price)
                + (best.nights() == 0 ? "" : ", with every night comfortable")
                + "; tried on this trip only.";
    }
}
