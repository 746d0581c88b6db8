package ampdays.chart;

import ampdays.results.Account;
import ampdays.results.Account.Kind;
import ampdays.results.Energy;
import ampdays.study.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The ledger of one option as a stair: up by each source to what was produced, down by each loss to what was used, down
 * by each use to nothing.
 *
 * @param outside what stands outside this sum, in words; may be empty
 * @param steps from the top
 */
public record EnergyBalance(String title, String subtitle, String xLabel, String outside, List<Step> steps)
        implements ChartModel {
    private static final double LEAST_SHOWN_WH = 0.5;

    public EnergyBalance {
        steps = List.copyOf(steps);
    }

    /** What a step stands for. */
    public enum Part {
        SOURCE,
        LOSS,
        USE,
        /** What the bank gave, or kept. */
        BANK,
        /** What has come together so far. */
        SUM
    }

    /**
     * One step of the stair.
     *
     * @param fromWh where it begins, Wh from nothing
     * @param toWh where it ends, lower for what goes away; a sum begins at nothing
     * @param words how much it is, in Wh and as a share of all that was produced
     */
    public record Step(String label, Part part, double fromWh, double toWh, String words) {}

    public static EnergyBalance of(Comparison comparison, Comparison.Option option) {
        return of(
                option,
                option.result().energy(),
                comparison.title() + ": sum over " + Words.days(option.result().tripDays()));
    }

    /** The same for a day in the mean. */
    public static EnergyBalance ofMeanDay(Comparison comparison, Comparison.Option option) {
        double days = option.result().tripDays();
        return of(
                option,
                option.result().energy().divided(days),
                comparison.title() + ": a day in the mean of " + Words.days(days));
    }

    private static EnergyBalance of(Comparison.Option option, Energy energy, String subtitle) {
        return new EnergyBalance(
                option.result().option() + ": from produced to used",
                subtitle,
                "energy, kWh",
                outside(energy),
                new Stair(energy).steps);
    }

    private static String outside(Energy energy) {
        List<String> parts = new ArrayList<>();
        if (energy.unservedWh() > LEAST_SHOWN_WH) {
            parts.add("asked for and not served, " + wh(energy.unservedWh()));
        }
        if (energy.curtailedWh() > LEAST_SHOWN_WH) {
            parts.add("sun that nothing could take, " + wh(energy.curtailedWh()));
        }
        return parts.isEmpty() ? "" : "Outside this sum: " + String.join("; ", parts) + ".";
    }

    private static String wh(double wh) {
        return String.format(Locale.ROOT, "%,.0f Wh", wh);
    }

    /** Puts one step after the other. */
    private static final class Stair {
        private final List<Step> steps = new ArrayList<>();
        private final double producedWh;
        private double atWh;

        Stair(Energy energy) {
            double storedWh = energy.wh(Account.STORED);
            producedWh = energy.sourcesWh() + Math.max(0, -storedWh);
            all(energy, Kind.SOURCE, Part.SOURCE, 1);
            if (storedWh < 0) {
                step("taken from the bank", Part.BANK, -storedWh);
            }
            sum(storedWh < 0 ? "produced and taken" : "produced");
            all(energy, Kind.LOSS, Part.LOSS, -1);
            if (storedWh > 0) {
                step("left in the bank", Part.BANK, -storedWh);
            }
            sum("used");
            all(energy, Kind.USE, Part.USE, -1);
        }

        private void all(Energy energy, Kind kind, Part part, int sign) {
            for (Account account : Account.values()) {
                if (account.kind() == kind) {
                    step(account.label(), part, sign * energy.wh(account));
                }
            }
        }

        /** What is nothing gets no step. */
        private void step(String label, Part part, double byWh) {
            if (byWh != 0) {
                steps.add(new Step(label, part, atWh, atWh + byWh, words(Math.abs(byWh))));
                atWh += byWh;
            }
        }

        private void sum(String label) {
            steps.add(new Step(label, Part.SUM, 0, atWh, words(atWh)));
        }

        private String words(double wh) {
            double percent = producedWh > 0 ? 100 * wh / producedWh : 0;
            return wh(wh) + String.format(Locale.ROOT, ", %.1f %%", percent);
        }
    }
}
