package ampdays.results;

import ampdays.results.Account.Kind;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** The ledger of a run or a day: one sum in Wh per account. */
public record Energy(Map<Account, Double> whByAccount) {
    public Energy {
        if (!whByAccount.keySet().containsAll(Arrays.asList(Account.values()))) {
            throw new IllegalArgumentException("one sum per account");
        }
        whByAccount = Collections.unmodifiableMap(new EnumMap<>(whByAccount));
    }

    public double wh(Account account) {
        return whByAccount.get(account);
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

    /** The same for one of several equal parts, such as the mean day of a trip. */
    public Energy divided(double parts) {
        Map<Account, Double> shares = new EnumMap<>(Account.class);
        whByAccount.forEach((account, wh) -> shares.put(account, wh / parts));
        return new Energy(shares);
    }

    /** What the two sides of the ledger differ by; zero but for rounding. */
    public double residualWh() {
        return sourcesWh() - servedWh() - lossesWh() - wh(Account.STORED);
    }

    private double sum(Kind kind) {
        double sum = 0;
        for (Map.Entry<Account, Double> entry : whByAccount.entrySet()) {
            if (entry.getKey().kind() == kind) {
                sum += entry.getValue();
            }
        }
        return sum;
    }
}
