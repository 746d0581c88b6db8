package ampdays.io;

import ampdays.results.Account;
import ampdays.results.Limit;
import ampdays.results.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

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

    /** Numbers, words without commas, and a stamp: none needs quotation marks. */
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
        for (Account account : Account.values()) {
            row.add(Numbers.full(run.energy().wh(account)));
        }
        row.addAll(List.of(
                Numbers.full(run.fuelLitres()),
                Numbers.full(run.engineChargingHours()),
                Numbers.full(run.alternatorPeakCaseC()),
                Numbers.full(run.cycles()),
                Numbers.percent(run.ageing().tripLoss()),
                Numbers.percent(run.ageing().yearLoss()),
                Numbers.percent(run.ageing().yearLossByUse()),
                Numbers.percent(run.ageing().yearResistanceGrowth()),
                Numbers.full(run.ledgerResidualWh())));
        for (Limit limit : Limit.values()) {
            row.add(Numbers.full(run.limitHours().getOrDefault(limit, 0.0)));
        }
        for (Limit limit : Limit.values()) {
            row.add(Numbers.full(run.curtailedWhByCause().getOrDefault(limit, 0.0)));
        }
        for (String use : uses) {
            row.add(Numbers.full(run.servedWhByUse().getOrDefault(use, 0.0)));
            row.add(Numbers.full(run.unservedWhByUse().getOrDefault(use, 0.0)));
        }
        return row;
    }
}
