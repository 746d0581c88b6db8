package ampdays.report;

import ampdays.chart.EnergyBalance;
import ampdays.chart.EnergyDays;
import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.results.Account;
import ampdays.results.Account.Kind;
import ampdays.results.RunResult;
import ampdays.study.Comparison.Option;
import ampdays.units.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where the energy of a day comes from and where it goes, with every loss by its name. */
final class EnergyPart {
    private EnergyPart() {}

    static Part of(Material material) {
        Stream<Picture> balances = shown(material)
                .map(option -> new Picture(
                        "balance-" + material.options().indexOf(option),
                        EnergyBalance.ofMeanDay(material.comparison(), option),
                        Wording.capital(option.result().option())
                                + ", a day in the mean: up to what was produced, down by each loss to what was used."));
        Option best = material.best();
        Picture days = new Picture(
                "energy-days",
                EnergyDays.of(material.comparison(), best),
                Wording.capital(best.result().option()) + ": each day of the trip, sources up, uses and losses down.");
        return Part.of(
                "energy",
                "Energy of a day",
                Stream.of(balances, Stream.of(days), Stream.of(sheet(material))).flatMap(s -> s));
    }

    /** The base design and the one recommended. */
    static Stream<Option> shown(Material material) {
        return Stream.of(material.base(), material.best()).distinct();
    }

    private static Sheet sheet(Material material) {
        List<Column> heads = new ArrayList<>(List.of(Column.words("kWh a day")));
        material.results().forEach(r -> heads.add(Column.numbers(r.option())));
        List<Row> rows = new ArrayList<>();
        for (Account account : Account.values()) {
            if (account != Account.THROUGHPUT && anything(material, account)) {
                rows.add(row(material, account));
            }
        }
        return new Sheet(
                "Energy by account",
                heads,
                rows,
                Form.PLAIN,
                List.of(
                        "Sources are what comes in, uses what arrives; sources less uses and losses is the change of store."
                                + " “unserved” was asked for and not delivered, “curtailed” is sun that nothing could take;"
                                + " both stand outside the sum."));
    }

    private static boolean anything(Material material, Account account) {
        return material.results().stream()
                .anyMatch(r -> !Say.kwhADay(r, r.energy().wh(account)).equals(Say.NONE));
    }

    private static Row row(Material material, Account account) {
        List<String> cells = new ArrayList<>();
        cells.add((account.kind() == Kind.LOSS ? "lost: " : "") + account.label());
        for (RunResult result : material.results()) {
            cells.add(Say.kwhADay(result, result.energy().wh(account)));
        }
        return Row.of(cells);
    }
}
