package ampdays.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** In which units numbers are printed: metric ones, those used in the United States, or the latter in brackets behind. */
public enum UnitSystem {
    METRIC,
    US,
    BOTH;

    private static final Set<String> OF_THE_UNITED_STATES = Set.of(
            "°F",
            "ft",
            "in",
            "ft²",
            "ft³",
            "lb",
            "mph",
            "BTU/(h °F)",
            "BTU/°F",
            "BTU/(h ft² °F)",
            "h ft² °F/BTU",
            "ft³/min",
            "gal",
            "gal/h");
    private static final double SHORT_M = 0.3;
    private static final Unit LITRE = unit(Dimension.VOLUME, "L");
    private static final Unit GALLON = unit(Dimension.VOLUME, "gal");

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A value in base units as text with its unit. */
    public String show(Dimension dimension, double base, int digits) {
        return show(Units.shown(dimension), other(dimension, base), base, digits);
    }

    /** Two values with their unit once, as in "51–70 kg". */
    public String range(Dimension dimension, double low, double high, int digits) {
        Unit metric = Units.shown(dimension);
        Unit other = other(dimension, high).orElse(metric);
        return switch (this) {
            case METRIC -> range(metric, low, high, digits);
            case US -> range(other, low, high, digits);
            case BOTH ->
                range(metric, low, high, digits)
                        + (other.equals(metric) ? "" : " (" + range(other, low, high, digits) + ")");
        };
    }

    private static String range(Unit unit, double low, double high, int digits) {
        String lower = unit.show(low, digits);
        return lower.substring(0, lower.length() - unit.symbol().length()).strip() + "–" + unit.show(high, digits);
    }

    /** A volume of a liquid, to two significant digits. */
    public String liquid(double litres) {
        return twoDigits(LITRE, GALLON, litres / 1000);
    }

    /** A mass, to two significant digits. */
    public String mass(double kilograms) {
        return twoDigits(
                Units.shown(Dimension.MASS), other(Dimension.MASS, kilograms).orElseThrow(), kilograms);
    }

    /** A temperature in whole degrees. */
    public String temperature(double celsius) {
        return temperatures(Units.shown(Dimension.TEMPERATURE).write(Long.toString(Math.round(celsius))));
    }

    /** A text with its temperatures, which are in °C. */
    public String temperatures(String text) {
        return switch (this) {
            case METRIC -> text;
            case US -> DegreesFahrenheit.inPlace(text);
            case BOTH -> DegreesFahrenheit.beside(text);
        };
    }

    private String twoDigits(Unit metric, Unit other, double base) {
        return switch (this) {
            case METRIC -> twoDigits(metric, base);
            case US -> twoDigits(other, base);
            case BOTH -> twoDigits(metric, base) + " (" + twoDigits(other, base) + ")";
        };
    }

    /** With its zeros: 1.0 gal. */
    private static String twoDigits(Unit unit, double base) {
        return unit.write(
                new BigDecimal(base / unit.factor()).round(new MathContext(2)).toPlainString());
    }

    /** A text that a person wrote, with the other units behind it or in its place where there are any. */
    public String written(String text, Dimension dimension, double base) {
        Optional<Unit> other = other(dimension, base);
        boolean isOther = Quantity.unit(text, dimension)
                .map(unit -> OF_THE_UNITED_STATES.contains(unit.symbol()))
                .orElse(false);
        return switch (this) {
            case METRIC -> isOther ? Units.shown(dimension).show(base, 3) : text;
            case US -> other.isEmpty() || isOther ? text : other.get().show(base, 3);
            case BOTH ->
                other.isEmpty()
                        ? text
                        : text + " ("
                                + (isOther
                                        ? Units.shown(dimension).show(base, 3)
                                        : other.get().show(base, 3))
                                + ")";
        };
    }

    private String show(Unit metric, Optional<Unit> other, double base, int digits) {
        return switch (this) {
            case METRIC -> metric.show(base, digits);
            case US -> other.orElse(metric).show(base, digits);
            case BOTH ->
                metric.show(base, digits)
                        + other.map(unit -> " (" + unit.show(base, digits) + ")")
                                .orElse("");
        };
    }

    /** Short lengths are told in inches. */
    private static Optional<Unit> other(Dimension dimension, double base) {
        if (dimension == Dimension.LENGTH && Math.abs(base) < SHORT_M) {
            return Optional.of(unit(Dimension.LENGTH, "in"));
        }
        return Units.of(dimension).stream()
                .filter(unit -> OF_THE_UNITED_STATES.contains(unit.symbol()))
                .findFirst();
    }

    private static Unit unit(Dimension dimension, String symbol) {
        return Units.of(dimension).stream()
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
