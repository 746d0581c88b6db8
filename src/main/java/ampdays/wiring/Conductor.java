package ampdays.wiring;

import ampdays.units.Nearest;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A stranded copper conductor of one of the sizes that are sold, metric or gauge. Reference: ConductorTest.
 *
 * @param label as shown, such as {@code 2/0 AWG} or {@code 35 mm²}
 * @param areaMm2 copper cross-section, mm²
 * @param ohmPerKm20 resistance of a kilometre at 20 °C, Ω
 * @param metric whether it is one of the metric sizes
 */
public record Conductor(String label, double areaMm2, double ohmPerKm20, boolean metric) {
    /** Change of the resistance of annealed copper per kelvin at 20 °C: IEC 60028. */
    public static final double ALPHA_PER_K = 0.00393;

    /** The same at 75 °C, as the National Electrical Code writes it below its chapter 9 table 8. */
    private static final double ALPHA_75_PER_K = 0.00323;

    private static final double KILOFEET_PER_KM = 1 / 0.3048;
    private static final Pattern SIZE = Pattern.compile(
            "(?:AWG\\s*(?<after>[0-9/]+)|(?<before>[0-9/]+)\\s*AWG|(?<area>[0-9.]+)\\s*(?:mm²|mm2|sq mm))",
            Pattern.CASE_INSENSITIVE);

    /** Largest resistance of plain class 5 conductors, Ω/km at 20 °C: IEC 60228, table 3 (two reproductions agree). */
    private static final double[][] METRIC = {
        {0.75, 26.0},
        {1, 19.5},
        {1.5, 13.3},
        {2.5, 7.98},
        {4, 4.95},
        {6, 3.30},
        {10, 1.91},
        {16, 1.21},
        {25, 0.780},
        {35, 0.554},
        {50, 0.386},
        {70, 0.272},
        {95, 0.206},
        {120, 0.161}
    };

    /**
     * Gauge and resistance of stranded uncoated copper at 75 °C, Ω per thousand feet: National Electrical Code, chapter 9
     * table 8, by reproductions; sizes 18 to 8 from memory, since these give those of the solid wire (14 AWG: 3.07).
     */
    private static final double[][] GAUGE_OHM_75 = {
        {18, 7.95},
        {16, 4.99},
        {14, 3.14},
        {12, 1.98},
        {10, 1.24},
        {8, 0.778},
        {6, 0.491},
        {4, 0.308},
        {3, 0.245},
        {2, 0.194},
        {1, 0.154},
        {0, 0.122},
        {-1, 0.0967},
        {-2, 0.0766},
        {-3, 0.0608}
    };

    private static final List<Conductor> METRIC_SIZES = Arrays.stream(METRIC)
            .map(row -> new Conductor(number(row[0]) + " mm²", row[0], row[1], true))
            .toList();

    private static final List<Conductor> GAUGE_SIZES = Arrays.stream(GAUGE_OHM_75)
            .map(row -> new Conductor(
                    gaugeLabel((int) row[0]), gaugeAreaMm2((int) row[0]), at20(row[1] * KILOFEET_PER_KM), false))
            .toList();

    private static String number(double area) {
        return area == Math.rint(area) ? Integer.toString((int) area) : Double.toString(area);
    }

    private static String gaugeLabel(int gauge) {
        return (gauge > 0 ? Integer.toString(gauge) : (1 - gauge) + "/0") + " AWG";
    }

    /**
     * Diameter of the solid wire of a gauge, mm: {@code 0.127 · 92^((36 − n)/39)}, ASTM B258. Test: awg_geometry.
     *
     * @param gauge n; 0, −1, −2, −3 for 1/0 to 4/0
     */
    static double gaugeDiameterMm(int gauge) {
        return 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    }

    /** Cross-section of that wire, mm². */
    static double gaugeAreaMm2(int gauge) {
        double diameterMm = gaugeDiameterMm(gauge);
        return Math.PI / 4 * diameterMm * diameterMm;
    }

    /** A resistance at 75 °C converted to 20 °C: {@code R2 = R1 (1 + 0.00323 (T2 − 75))}, NEC chapter 9 table 8, note. */
    private static double at20(double ohmAt75) {
        return ohmAt75 * (1 + ALPHA_75_PER_K * (20 - 75));
    }

    /**
     * Resistance of a kilometre at a conductor temperature, Ω: {@code R20 (1 + 0.00393 (T − 20))}, IEC 60028.
     *
     * @param conductorC °C, −40 to 250
     */
    public double ohmPerKm(double conductorC) {
        return ohmPerKm20 * (1 + ALPHA_PER_K * (conductorC - 20));
    }

    /** All sizes of the kind of this one, the thinnest first. */
    public List<Conductor> family() {
        return metric ? METRIC_SIZES : GAUGE_SIZES;
    }

    /** Sizes of its kind from this one on, this one first. */
    public List<Conductor> andLarger() {
        return family().stream().filter(c -> c.areaMm2 >= areaMm2).toList();
    }

    static List<Conductor> gauges() {
        return GAUGE_SIZES;
    }

    /** The size in the other measure, for a person who thinks in it: {@code 67.4 mm²}, or {@code about 2 AWG}. */
    public String inOtherMeasure() {
        if (!metric) {
            return String.format(Locale.ROOT, areaMm2 < 10 ? "%.2f mm²" : "%.1f mm²", areaMm2);
        }
        Conductor nearest = GAUGE_SIZES.stream()
                .min(Comparator.comparingDouble(c -> Math.abs(Math.log(c.areaMm2 / areaMm2))))
                .orElseThrow();
        return "about " + nearest.label;
    }

    /**
     * Reads a size as people write it: {@code 2/0 AWG}, {@code AWG 6}, {@code 35 mm²}.
     *
     * @throws QuantityException when it is no size that is sold; the message is a predicate
     */
    public static Conductor parse(String text) throws QuantityException {
        Matcher matcher = SIZE.matcher(text.strip());
        if (!matcher.matches()) {
            throw new QuantityException("\"" + text.strip()
                    + "\" is not a conductor size. Write a gauge or an area such" + " as 2/0 AWG, or 70 mm².");
        }
        String label = matcher.group("area") == null
                ? zeros(matcher.group("after") == null ? matcher.group("before") : matcher.group("after")) + " AWG"
                : area(matcher.group("area")) + " mm²";
        return find(label).orElseThrow(() -> new QuantityException(unknown(text.strip(), label)));
    }

    /** A gauge with its zeros counted: 00 is 2/0. */
    private static String zeros(String gauge) {
        return gauge.matches("0+") ? gauge.length() + "/0" : gauge;
    }

    private static String area(String digits) {
        return digits.contains(".") ? digits.replaceFirst("\\.?0*$", "") : digits;
    }

    private static Optional<Conductor> find(String label) {
        return Stream.concat(GAUGE_SIZES.stream(), METRIC_SIZES.stream())
                .filter(c -> c.label.equals(label))
                .findFirst();
    }

    private static String unknown(String written, String label) {
        boolean area = label.endsWith("mm²");
        List<Conductor> sizes = area ? METRIC_SIZES : GAUGE_SIZES;
        return "\"" + written + "\" is no size that is listed here. Sizes: "
                + sizes.stream().map(c -> c.label.replaceFirst(" .*", "")).collect(Collectors.joining(", "))
                + (area ? " mm²." : " AWG.") + nearest(label, sizes);
    }

    private static String nearest(String label, List<Conductor> sizes) {
        Optional<String> meant = Optional.empty();
        if (label.matches("\\d+(\\.\\d+)? mm²")) {
            double wanted = Double.parseDouble(label.replaceFirst(" .*", ""));
            List<Conductor> byDistance = new ArrayList<>(sizes);
            byDistance.sort(Comparator.comparingDouble(c -> Math.abs(c.areaMm2 - wanted)));
            meant = Optional.of(byDistance.get(0).label);
        } else {
            meant = Nearest.of(label, sizes.stream().map(Conductor::label).toList());
        }
        return meant.map(size -> " Did you mean " + size + "?").orElse("");
    }
}
