package ampdays.results;

import ampdays.results.Account.Kind;

/** The ledger of a run or a day: one sum in Wh per account. */
public record Energy(Series whByAccount) {
    public Energy {
        if (whByAccount.size() != Account.values().length) {
            throw new IllegalArgumentException("one sum per account");
        }
    }

    public double wh(Account account) {
        return whByAccount.get(account.ordinal());
    }

    public double sourcesWh() {
        return sum(Kind.SOURCE);
    }

    public double servedWh() {
        return sum(Kind.USE);
    }

    public double lossesWh() {
        return sum(Kind.LOSS);
    }

    public double unservedWh() {
        return wh(Account.UNSERVED);
    }

    public double curtailedWh() {
        return wh(Account.CURTAILED);
    }

    /** What the two sides of the ledger differ by; zero but for rounding. */
    public double residualWh() {
        return sourcesWh() - servedWh() - lossesWh() - wh(Account.STORED);
    }

    private double sum(Kind kind) {
        double sum = 0;
        for (Account account : Account.values()) {
            if (account.kind() == kind) {
                sum += wh(account);
            }
        }
        return sum;
    }
}
