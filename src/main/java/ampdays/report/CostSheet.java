package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.shop.Item;
import ampdays.shop.Shop;
import ampdays.study.Comparison.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the change from the base design to each option costs, as far as the shop gave prices. Nothing is assumed. */
final class CostSheet {
    private static final double FOAM_STEP_M = 0.025;
    private static final double LEAST = 1e-9;

    private final Material material;

    CostSheet(Material material) {
        this.material = material;
    }

    /** What an option has more of than the base design; an item without a price leaves the option without a sum. */
    record Line(Item item, double count, OptionalDouble unitPrice) {
        OptionalDouble price() {
            return unitPrice.isEmpty() ? unitPrice : OptionalDouble.of(count * unitPrice.getAsDouble());
        }
    }

    /** What the change to an option costs in all; empty where a price is missing. */
    OptionalDouble total(Option option) {
        Optional<Shop> shop = material.shop();
        if (shop.isEmpty() || material.isBase(option)) {
            return OptionalDouble.empty();
        }
        OptionalDouble whole = shop.get().price(option.result().option());
        List<Line> lines = lines(option);
        if (whole.isPresent()
                || lines.isEmpty()
                || lines.stream().anyMatch(line -> line.unitPrice().isEmpty())) {
            return whole;
        }
        return OptionalDouble.of(
                lines.stream().mapToDouble(line -> line.price().getAsDouble()).sum());
    }

    String shown(Option option) {
        OptionalDouble total = total(option);
        return total.isEmpty()
                ? Say.NONE
                : Say.money(total.getAsDouble(), material.shop().orElseThrow().currency());
    }

    List<Line> lines(Option option) {
        Values was = material.values(material.base());
        Values is = material.values(option);
        List<Line> lines = new ArrayList<>();
        more(lines, Item.BATTERY, bankKwh(option) - bankKwh(material.base()));
        more(lines, Item.SOLAR, (number(is, "solar.power") - number(was, "solar.power")) / 100);
        more(
                lines,
                Item.CHARGER,
                number(is, "factory-alternator.charger")
                        - number(was, "factory-alternator.charger")
                        + number(is, "shore-charger.rated")
                        - number(was, "shore-charger.rated"));
        double secondA = number(is, "second-alternator.rated");
        // a larger one is bought whole
        more(lines, Item.SECOND_ALTERNATOR, secondA > number(was, "second-alternator.rated") ? secondA : 0);
        more(lines, Item.INSULATION, (number(is, "cabin.insulation") - number(was, "cabin.insulation")) / FOAM_STEP_M);
        String covers = is.word("cabin.covers");
        more(lines, Item.COVERS, covers.equals(was.word("cabin.covers")) || covers.equals("none") ? 0 : 1);
        more(lines, Item.COOLING, is.has("cooling") && !was.has("cooling") ? 1 : 0);
        more(lines, Item.INVERTER, (number(is, "inverter.rated") - number(was, "inverter.rated")) / 1000);
        return lines;
    }

    private void more(List<Line> lines, Item item, double count) {
        if (count > LEAST) {
            lines.add(new Line(item, count, material.shop().orElseThrow().price(item)));
        }
    }

    private double bankKwh(Option option) {
        Variant variant = material.variant(option);
        return variant.bankWh() / 1000;
    }

    /** What the design does not have counts nothing. */
    private static double number(Values values, String path) {
        double number = values.number(path);
        return Double.isNaN(number) ? 0 : number;
    }

    /** Every line of every option; empty where the shop gave no prices. */
    Optional<Sheet> sheet() {
        Optional<Shop> shop = material.shop();
        if (shop.isEmpty() || material.options().stream().allMatch(o -> total(o).isEmpty())) {
            return Optional.empty();
        }
        List<Row> rows = new ArrayList<>();
        for (Option option : material.options().subList(1, material.options().size())) {
            rows.addAll(rows(option, shop.get()));
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
                shop.get().terms()));
    }

    private List<Row> rows(Option option, Shop shop) {
        String name = option.result().option();
        if (shop.price(name).isPresent()) {
            return List.of(new Row(List.of(name, "whole option", "1", Say.NONE, shown(option)), true));
        }
        List<Line> lines = lines(option);
        List<Row> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(Row.of(List.of(
                    name,
                    line.item().unit(),
                    Say.number(line.count() == Math.rint(line.count()) ? "%.0f" : "%.2f", line.count()),
                    shownPrice(line.unitPrice(), shop),
                    shownPrice(line.price(), shop))));
        }
        if (lines.size() > 1 && total(option).isPresent()) {
            rows.add(new Row(List.of(name, "together", "", "", shown(option)), true));
        }
        return rows;
    }

    private static String shownPrice(OptionalDouble price, Shop shop) {
        return price.isEmpty() ? "on request" : Say.money(price.getAsDouble(), shop.currency());
    }
}
