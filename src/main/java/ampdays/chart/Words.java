package ampdays.chart;

import ampdays.results.Fate;
import ampdays.results.RunResult;
import ampdays.results.Series;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.IntStream;

/** Numbers and outcomes in plain words. */
final class Words {
    private Words() {}

    /** Two significant digits: 3.4, 12, 0.46. */
    static String twoDigits(double value) {
        return new BigDecimal(value).round(new MathContext(2)).toPlainString();
    }

    /** As short as it can be said to a tenth: 14, 1.5. */
    static String days(double days) {
        String number = tenth(days);
        return number + (number.equals("1") ? " day" : " days");
    }

    /** To a tenth, without a point where it can be. */
    static String tenth(double value) {
        double tenth = Math.round(value * 10) / 10.0;
        return tenth == Math.rint(tenth) ? Long.toString((long) tenth) : Double.toString(tenth);
    }

    /** How an option ended. */
    static String outcome(RunResult run) {
        if (!Double.isNaN(run.daysToEmpty())) {
            return twoDigits(run.daysToEmpty()) + " days";
        }
        if (run.holds()) {
            return "holds " + days(run.tripDays());
        }
        String notEmpty = "not empty in " + days(run.tripDays());
        return run.fate() == Fate.FALLS
                ? notEmpty + ", falling " + twoDigits(-100 * run.trendPerDay()) + " % a day"
                : notEmpty;
    }

    /** The same in a few words, for the end of a line. */
    static String shortOutcome(RunResult run) {
        if (!Double.isNaN(run.daysToEmpty())) {
            return "empty after " + twoDigits(run.daysToEmpty()) + " days";
        }
        if (run.holds()) {
            return "holds";
        }
        return run.fate() == Fate.FALLS ? "falling " + twoDigits(-100 * run.trendPerDay()) + " % a day" : "not empty";
    }

    static List<Double> list(Series series) {
        return IntStream.range(0, series.size()).mapToObj(series::get).toList();
    }

    static List<Double> percent(Series shares) {
        return IntStream.range(0, shares.size())
                .mapToObj(i -> 100 * shares.get(i))
                .toList();
    }
}
