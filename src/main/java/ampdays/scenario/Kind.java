package ampdays.scenario;

import ampdays.load.Occasion;
import ampdays.units.Dimension;
import ampdays.units.Nearest;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import ampdays.wiring.Conductor;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a parameter's text may be, and how it is read. */
public sealed interface Kind {
    /** Reads a text without its mark; the exception's message is a predicate after the parameter's path. */
    Reading read(String text) throws QuantityException;

    /** What may be written, as a sentence. */
    default String advice() {
        if (this instanceof Measured measured) {
            return Quantity.advice(measured.dimensions().toArray(new Dimension[0]));
        }
        if (this instanceof Count count) {
            return "Write a whole number from " + count.low() + " to " + count.high() + ".";
        }
        if (this instanceof Money) {
            return "Write an amount such as 4850, or with its currency behind it: 4850 USD.";
        }
        if (this instanceof Choice choice) {
            return "Choices: " + String.join("; ", choice.words()) + ".";
        }
        if (this instanceof SpeedPoints) {
            return "Write points like: " + SpeedPoints.EXAMPLE + ".";
        }
        if (this instanceof ConductorSize) {
            return "Write a gauge or an area such as 2/0 AWG, or 70 mm².";
        }
        if (this instanceof ChargeLimits) {
            return ChargeLimitText.ADVICE;
        }
        return this instanceof Timetable ? "Write a list of lines like: - 07:10 park sun, away." : "Write one value.";
    }

    /** What was read: a number with its dimension, or a word (NaN and empty). */
    record Reading(double number, Optional<Dimension> dimension) {
        static final Reading WORD = new Reading(Double.NaN, Optional.empty());
    }

    /**
     * A number with a unit.
     *
     * @param dimensions accepted, the usual one first; the range is in its base unit and holds for it alone
     * @param word a word accepted instead of a number, such as {@code off}; may be empty
     */
    record Measured(List<Dimension> dimensions, double low, double high, String word) implements Kind {
        public Measured {
            dimensions = List.copyOf(dimensions);
        }

        @Override
        public Reading read(String text) throws QuantityException {
            if (!word.isEmpty() && text.equals(word)) {
                return Reading.WORD;
            }
            Quantity quantity = Quantity.parse(text, dimensions.toArray(new Dimension[0]));
            double value = quantity.value();
            boolean usual = quantity.dimension() == dimensions.get(0);
            if (usual ? !(value >= low && value <= high) : !(value >= 0)) {
                throw new QuantityException("\"" + text + "\" is out of range. It must "
                        + (usual ? "lie " + range() : "not be negative") + ".");
            }
            return new Reading(value, Optional.of(quantity.dimension()));
        }

        /** The value, or the end of the range that it lies beyond. */
        double within(double value) {
            return Math.max(low, Math.min(high, value));
        }

        /** Such as {@code from 1 Ah to 100000 Ah}. */
        public String range() {
            Dimension usual = dimensions.get(0);
            return "from " + usual.show(low) + " to " + usual.show(high);
        }
    }

    /** An amount of money; behind it may stand its currency, which must be that of all prices of the design. */
    record Money(double high) implements Kind {
        private static final Pattern AMOUNT =
                Pattern.compile("([+\\-\u2212]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)(?![\\d,.])\\s*(.*)");

        @Override
        public Reading read(String text) throws QuantityException {
            Matcher amount = AMOUNT.matcher(text);
            if (!amount.matches() && !text.contains(",")) {
                throw new QuantityException("\"" + text + "\" is not an amount of money. " + advice());
            }
            Quantity quantity = Quantity.parse(amount.matches() ? amount.group(1) : text, Dimension.NUMBER);
            if (!(quantity.value() >= 0 && quantity.value() <= high)) {
                throw new QuantityException(
                        "\"" + text + "\" is out of range. It must lie from 0 to " + Dimension.NUMBER.show(high) + ".");
            }
            return new Reading(quantity.value(), Optional.of(Dimension.NUMBER));
        }

        /** The word behind an amount that was read; may be empty. */
        static String currency(String text) {
            Matcher amount = AMOUNT.matcher(text);
            return amount.matches() ? amount.group(2) : "";
        }
    }

    /** A whole number. */
    record Count(int low, int high) implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            if (!text.matches("\\d{1,9}")) {
                throw new QuantityException("\"" + text + "\" is not a whole number. " + advice());
            }
            int number = Integer.parseInt(text);
            if (number < low || number > high) {
                throw new QuantityException("\"" + text + "\" is out of range. " + advice());
            }
            return new Reading(number, Optional.of(Dimension.NUMBER));
        }
    }

    /** One of some words. */
    record Choice(List<String> words) implements Kind {
        public Choice {
            words = List.copyOf(words);
        }

        @Override
        public Reading read(String text) throws QuantityException {
            if (!words.contains(text)) {
                throw new QuantityException("\"" + text + "\" is not one of its choices: " + String.join("; ", words)
                        + "." + didYouMean(text, words));
            }
            return Reading.WORD;
        }
    }

    /** Free text. */
    record Text() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            if (text.isBlank()) {
                throw new QuantityException("is empty. Write a text.");
            }
            return Reading.WORD;
        }
    }

    /** The first day of a trip. */
    record Date() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            Days.date(text);
            return Reading.WORD;
        }
    }

    /** A time zone by its public name. */
    record Zone() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            try {
                ZoneId.of(text);
            } catch (DateTimeException e) {
                throw new QuantityException("\"" + text + "\" is not a time zone. Write its public name, like "
                        + "America/Phoenix, or an offset, like UTC-07:00."
                        + didYouMean(
                                text,
                                ZoneId.getAvailableZoneIds().stream().sorted().toList()));
            }
            return Reading.WORD;
        }
    }

    /** What the vehicle and the people do, one line each. */
    record Timetable() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            TimetableLine.parseAll(text);
            return Reading.WORD;
        }
    }

    /** Currents by rotor speed. */
    record SpeedPoints() implements Kind {
        /** How such points are written. */
        public static final String EXAMPLE = "1800 rpm 120 A, 2500 rpm 190 A, 6000 rpm 260 A";

        @Override
        public Reading read(String text) throws QuantityException {
            CurvePoints.parse(text);
            return Reading.WORD;
        }
    }

    /** When a load may run: an occasion, clock windows, or both. */
    record When() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            LoadTimes.parse(text);
            return Reading.WORD;
        }

        static List<String> occasions() {
            return Arrays.stream(Occasion.values())
                    .map(o -> o.name().toLowerCase(Locale.ROOT))
                    .toList();
        }
    }

    /** Charge limits by temperature. */
    record ChargeLimits() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            ChargeLimitText.parse(text, 1);
            return Reading.WORD;
        }
    }

    /** A conductor of a size that is sold. */
    record ConductorSize() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            Conductor.parse(text);
            return Reading.WORD;
        }
    }

    /** When to pre-cool: from surplus sun, while driving, in clock windows. */
    record PreCool() implements Kind {
        @Override
        public Reading read(String text) throws QuantityException {
            PreCoolTimes.parse(text);
            return Reading.WORD;
        }
    }

    static String didYouMean(String word, List<String> known) {
        return Nearest.of(word, known).map(w -> " Did you mean " + w + "?").orElse("");
    }
}
