package ampdays.chart.jfree;

import ampdays.chart.LinesChart.Place;
import ampdays.units.DegreesFahrenheit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** The kinds of axis that the pictures need. */
final class Axes {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final int[] DAY_STEPS = {1, 2, 7, 14, 28, 91, 182, 364};
    private static final List<Integer> CLOCK_STEPS = List.of(5, 10, 15, 30, 60, 120, 180, 360, 720);
    private static final int MOST_DAY_MARKS = 15;

    /** Kept free beyond the outer marks, so that neither a line nor the grid is cut there. */
    private static final double RIM = 0.012;

    /** A mark nearer to the last one than this is left out. */
    private static final double LEAST_OF_STEP = 0.5;

    private final Style style;

    Axes(Style style) {
        this.style = style;
    }

    /** "day 1" stands under the middle of the first day. */
    MarkedAxis tripDays(double days) {
        int whole = (int) Math.ceil(days);
        int step = 1;
        for (int candidate : DAY_STEPS) {
            step = candidate;
            if (whole <= step * MOST_DAY_MARKS) {
                break;
            }
        }
        List<Double> at = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int day = 1; day <= whole; day += step) {
            double middle = (day - 1 + Math.min(day, days)) / 2;
            at.add(middle);
            words.add("day " + day);
        }
        return new MarkedAxis(0, days, at, words, style);
    }

    MarkedAxis hours() {
        List<Double> at = List.of(0.0, 6.0, 12.0, 18.0, 24.0);
        return new MarkedAxis(
                0,
                24,
                at,
                at.stream()
                        .map(hour -> String.format(Locale.ROOT, "%02.0f:00", hour))
                        .toList(),
                style);
    }

    /** Times of the clock between two hours, at most one for each {@code roomPerMark} of {@code wide} points. */
    MarkedAxis clock(double fromHour, double toHour, double wide, double roomPerMark) {
        double leastMinutes = 60 * (toHour - fromHour) * roomPerMark / wide;
        int step = CLOCK_STEPS.stream()
                .filter(minutes -> minutes >= leastMinutes)
                .findFirst()
                .orElse(24 * 60);
        List<Double> at = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int minute = step * (int) Math.ceil(60 * fromHour / step - 1e-9); minute <= 60 * toHour; minute += step) {
            at.add(minute / 60.0);
            words.add(String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60));
        }
        return new MarkedAxis(fromHour, toHour, at, words, style);
    }

    MarkedAxis months(double from, double to) {
        List<Integer> shown = IntStream.range(0, MONTHS.size())
                .filter(month -> month + 0.5 >= from && month + 0.5 <= to)
                .boxed()
                .toList();
        return new MarkedAxis(
                from,
                to,
                shown.stream().map(month -> month + 0.5).toList(),
                shown.stream().map(MONTHS::get).toList(),
                style);
    }

    MarkedAxis percent() {
        List<Double> at = List.of(0.0, 20.0, 40.0, 60.0, 80.0, 100.0);
        return new MarkedAxis(0, 103, at, at.stream().map(Axes::plain).toList(), style);
    }

    /** Marks on round numbers; the axis itself runs to the mark beyond the values where {@code widened}. */
    MarkedAxis numbers(double low, double high, int mostSteps, boolean widened) {
        return numbers(low, high, mostSteps, widened, Axes::plain);
    }

    /** Temperatures, with degrees Fahrenheit in brackets behind those of Celsius where both are wanted. */
    MarkedAxis degrees(double low, double high, int mostSteps, boolean both) {
        return numbers(
                low,
                high,
                mostSteps,
                true,
                value -> both
                        ? plain(value) + " (" + plain(Math.rint(DegreesFahrenheit.of(value))) + ")"
                        : plain(value));
    }

    /** Marks on round numbers from zero to a last value, which has one of its own, on an axis that runs on beyond both. */
    MarkedAxis upTo(double last, int mostSteps, double from, double to) {
        double step = roundStep(last / mostSteps);
        List<Double> at = new ArrayList<>();
        for (int i = 0; i * step <= last - LEAST_OF_STEP * step; i++) {
            at.add(i * step);
        }
        at.add(last);
        return new MarkedAxis(from, to, at, at.stream().map(Axes::plain).toList(), style);
    }

    /** Places by their names, at most so many; names too near to the one before are left out. */
    MarkedAxis named(double from, double to, List<Place> named, int most) {
        List<Double> at = new ArrayList<>();
        List<String> words = new ArrayList<>();
        named.stream().sorted(Comparator.comparingDouble(Place::at)).forEach(place -> {
            if (at.isEmpty() || place.at() - at.get(at.size() - 1) >= (to - from) / most) {
                at.add(place.at());
                words.add(place.word());
            }
        });
        return new MarkedAxis(from, to, at, words, style);
    }

    /** Sources up and uses down; both sides are told without a sign. */
    MarkedAxis upAndDown(double down, double up) {
        return numbers(-down, up, 6, true, value -> plain(Math.abs(value)));
    }

    private MarkedAxis numbers(
            double low, double high, int mostSteps, boolean widened, DoubleFunction<String> spelling) {
        double span = high > low ? high - low : 1;
        double step = roundStep(span / mostSteps);
        double from = widened ? Math.floor(low / step) * step : low;
        double to = widened ? Math.ceil((low + span) / step) * step : high;
        List<Double> at = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
            at.add(i * step);
            words.add(spelling.apply(i * step));
        }
        double rim = widened ? RIM * (to - from) : 0;
        return new MarkedAxis(from - rim, to + rim, at, words, style);
    }

    /** The next of 1, 2, 5, 10 … times a power of ten. */
    private static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double digit : new double[] {1, 2, 5}) {
            if (digit * power >= least * (1 - 1e-9)) {
                return digit * power;
            }
        }
        return 10 * power;
    }

    /** Whole numbers without a point, others rounded to six digits, with a true minus sign. */
    private static String plain(double value) {
        String text = value == Math.rint(value)
                ? Long.toString((long) value)
                : new BigDecimal(value)
                        .round(new MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString();
        return text.replace('-', '\u2212');
    }
}
