package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.scenario.Parts;
import ampdays.scenario.Parts.Bought;
import ampdays.shop.Shop;
import ampdays.study.Comparison.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the change from the base design to each option costs, as far as somebody gave prices. Nothing is assumed. */
final class CostSheet {
    private static final String ON_REQUEST = "on request";

    private final Material material;
    private final String currency;

    CostSheet(Material material) {
        this.material = material;
        this.currency = Parts.currency(material.file().base());
    }

    /** What the change to an option costs in all; empty where a price is missing. */
    OptionalDouble total(Option option) {
        OptionalDouble whole = whole(option);
        return whole.isPresent() || material.isBase(option) ? whole : Parts.price(bought(option));
    }

    private OptionalDouble whole(Option option) {
        return material.shop().map(shop -> shop.price(option.result().option())).orElse(OptionalDouble.empty());
    }

    private List<Bought> bought(Option option) {
        return Parts.bought(material.values(material.base()), material.values(option));
    }

    String shown(Option option) {
        return shown(total(option), Say.NONE);
    }

    String shown(OptionalDouble sum, String otherwise) {
        return sum.isEmpty() ? otherwise : Say.money(sum.getAsDouble(), currency);
    }

    /** Every line of every option; empty where there is no price at all. */
    Optional<Sheet> sheet() {
        if (material.options().stream().allMatch(option -> total(option).isEmpty())) {
            return Optional.empty();
        }
        List<Row> rows = new ArrayList<>();
        for (Option option : material.options().subList(1, material.options().size())) {
            rows.addAll(rows(option));
        }
        return Optional.of(new Sheet(
                "Prices",
                List.of(
                        Column.words("Option"),
                        Column.words("What is added"),
                        Column.numbers("Amount"),
                        Column.numbers("Price of one"),
                        Column.numbers("Sum")),
                rows,
                Form.PLAIN,
                material.shop().map(Shop::terms).orElse(List.of())));
    }

    private List<Row> rows(Option option) {
        String name = option.result().option();
        if (whole(option).isPresent()) {
            return List.of(new Row(List.of(name, "whole option", "1", Say.NONE, shown(option)), true));
        }
        List<Bought> bought = bought(option);
        List<Row> rows = new ArrayList<>();
        for (Bought line : bought) {
            rows.add(Row.of(List.of(
                    name,
                    line.part().unit(material.units()),
                    Say.count(line.count()),
                    price(line, line.unitPrice()),
                    price(line, line.price()))));
        }
        if (bought.size() > 1 && Parts.price(bought).isPresent()) {
            rows.add(new Row(List.of(name, "together", "", "", shown(option)), true));
        }
        return rows;
    }

    private String price(Bought line, double sum) {
        return shown(line.isPriced() ? OptionalDouble.of(sum) : OptionalDouble.empty(), ON_REQUEST);
    }
}
