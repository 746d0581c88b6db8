package ampdays.io;

import ampdays.results.Account;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.DoubleStream;

/** Everything that was measured of a run, as the cells of one row. */
final class OptionColumns {
    private final SortedSet<String> uses;

    /** @param uses names of loads and coolers that have columns */
    OptionColumns(SortedSet<String> uses) {
        this.uses = uses;
    }

    List<String> headings() {
        List<String> headings = new ArrayList<>(List.of(
                "days to empty (days)",
                "holds",
                "trend (% per day)",
                "trip (days)",
                "reserve (%)",
                "lowest state of charge (%)",
                "lowest state of charge at",
                "comfortable nights",
                "nights"));
        for (Account account : Account.values()) {
            headings.add(ResultFiles.heading(account.label(), "Wh"));
        }
        headings.add("fuel for charging (l)");
        headings.add("engine run only to charge (h)");
        headings.add("hottest alternator case (°C)");
        headings.add("cycles");
        headings.add("capacity lost on the trip, to rank (%)");
        headings.add("capacity lost in a year, to rank (%)");
        headings.add("of which by use (%)");
        headings.add("resistance grown in a year, to rank (%)");
        headings.add("closing error of the ledger (Wh)");
        for (Limit limit : Limit.values()) {
            headings.add(ResultFiles.heading("limited by " + limit.label(), "h"));
        }
        for (Limit limit : Limit.values()) {
            headings.add(ResultFiles.heading("curtailed by " + limit.label(), "Wh"));
        }
        for (String use : uses) {
            headings.add(ResultFiles.heading("served to " + use, "Wh"));
            headings.add(ResultFiles.heading("unserved to " + use, "Wh"));
        }
        return headings;
    }

    List<String> cells(RunResult run) {
        List<String> row = new ArrayList<>(List.of(
                Numbers.full(run.daysToEmpty()),
                run.holds() ? "yes" : "no",
                Numbers.percent(run.trendPerDay()),
                Numbers.full(run.tripDays()),
                Numbers.percent(run.reserveShare()),
                Numbers.percent(run.lowestSoc()),
                Numbers.localStamp(run.lowestSocEpochSecond(), run.zone()),
                Integer.toString(run.comfortableNights()),
                Integer.toString(run.nights())));
        numbers(run).mapToObj(Numbers::full).forEach(row::add);
        return row;
    }

    /** What stands behind the nights. */
    private DoubleStream numbers(RunResult run) {
        DoubleStream.Builder numbers = DoubleStream.builder();
        for (Account account : Account.values()) {
            numbers.add(run.energy().wh(account));
        }
        numbers.add(run.fuelLitres())
                .add(run.engineChargingHours())
                .add(run.alternatorPeakCaseC())
                .add(run.cycles())
                .add(100 * run.ageing().tripLoss())
                .add(100 * run.ageing().yearLoss())
                .add(100 * run.ageing().yearLossByUse())
                .add(100 * run.ageing().yearResistanceGrowth())
                .add(run.ledgerResidualWh());
        for (Limit limit : Limit.values()) {
            numbers.add(run.limitHours().getOrDefault(limit, 0.0));
        }
        for (Limit limit : Limit.values()) {
            numbers.add(run.curtailedWhByCause().getOrDefault(limit, 0.0));
        }
        for (String use : uses) {
            numbers.add(run.servedWhByUse().getOrDefault(use, 0.0));
            numbers.add(run.unservedWhByUse().getOrDefault(use, 0.0));
        }
        return numbers.build();
    }
}
