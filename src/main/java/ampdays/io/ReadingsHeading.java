package ampdays.io;

import ampdays.audit.MeterSign;
import ampdays.audit.Reading;
import ampdays.units.Dimension;
import ampdays.units.Nearest;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the heading of a list of readings says of the meter, or what the readings show in its place, which is noted. */
final class ReadingsHeading {
    private static final Set<String> KEYS = Set.of("title", "sign", "resolution", "drift");
    private static final Pattern LINE = Pattern.compile("#\\s*([A-Za-z-]+)\\s*:.*");
    private static final Pattern DIGITS = Pattern.compile("[^.]*?\\d*(?:\\.(\\d+))?(?:\\s*(\\p{L}+))?");
    private static final double USUAL_DRIFT_A = 0.2;

    private final CsvText text;
    private final PlainHeading heading;
    private final double mostA;
    private final List<String> notes = new ArrayList<>();
    private double finestDigitA = Double.MAX_VALUE;

    /** @param mostA largest current that is believed, A */
    ReadingsHeading(CsvText text, double mostA) {
        this.text = text;
        this.heading = PlainHeading.of(text, KEYS);
        this.mostA = mostA;
    }

    /** Notes a line of the heading below the names of the columns, where it would pass for a comment. */
    void refuseMisplaced(int line) {
        Matcher matcher = LINE.matcher(text.line(line).strip());
        String key = matcher.matches() ? matcher.group(1).toLowerCase(Locale.ROOT) : "";
        if (KEYS.contains(key)) {
            text.add(
                    line,
                    1,
                    "\"# " + key + ":\" stands below the names of the columns, where it would not count. Write it above"
                            + " them.");
        }
    }

    /** Number of heading lines. */
    int lines() {
        return heading.lines();
    }

    /** What was taken from the readings because nothing was told. */
    List<String> notes() {
        return notes;
    }

    /** The title, or the file's name. */
    String title() {
        return heading.optional("title").map(PlainHeading.Entry::value).orElse(text.file());
    }

    /** Notes each heading line that looks like one of ours. */
    void refuseMisspelt() {
        for (int line = 1; line <= heading.lines(); line++) {
            Matcher matcher = LINE.matcher(text.line(line));
            String key = matcher.matches() ? matcher.group(1).toLowerCase(Locale.ROOT) : "";
            int at = line;
            if (!key.isEmpty() && !KEYS.contains(key)) {
                Nearest.of(key, KEYS)
                        .ifPresent(near ->
                                text.add(at, 1, "the heading says \"" + key + "\". Did you mean \"" + near + "\"?"));
            }
        }
    }

    /** The smallest step that a current is written in tells the meter's last digit. */
    void noteDigit(String written, String columnUnit) {
        Matcher number = DIGITS.matcher(written);
        if (number.matches()) {
            int decimals = number.group(1) == null ? 0 : number.group(1).length();
            String unit = number.group(2) == null ? columnUnit : number.group(2);
            double digitA = Math.pow(10, -decimals) * (unit.equals("mA") ? 1e-3 : 1);
            finestDigitA = Math.min(finestDigitA, digitA);
        }
    }

    /** One step of the last digit, A: as told, or the finest that was written. */
    double resolutionA() {
        Optional<PlainHeading.Entry> entry = heading.optional("resolution");
        if (entry.isPresent()) {
            return headingA(entry.get(), "resolution");
        }
        if (finestDigitA < Double.MAX_VALUE) {
            notes.add("The meter is taken to show steps of " + Dimension.CURRENT.show(finestDigitA)
                    + ", the finest that is written (# resolution: says it).");
        }
        return finestDigitA;
    }

    /** Standard uncertainty of the drift of the base draw, A. */
    double driftA() {
        Optional<PlainHeading.Entry> entry = heading.optional("drift");
        return entry.isPresent() ? headingA(entry.get(), "drift") : USUAL_DRIFT_A;
    }

    private double headingA(PlainHeading.Entry entry, String key) {
        try {
            double value = Quantity.parse(entry.value(), Dimension.CURRENT).value();
            if (value > 0 && value <= mostA) {
                return value;
            }
            text.add(entry.line(), entry.column(), key + " is \"" + entry.value() + "\"; it must lie above 0 A.");
        } catch (QuantityException e) {
            text.add(entry.line(), entry.column(), key + " " + e.getMessage());
        }
        return 1;
    }

    /** Whether the meter shows discharge as plus; empty when it is not told. */
    Optional<Boolean> dischargeIsPlus() {
        Optional<PlainHeading.Entry> entry = heading.optional("sign");
        if (entry.isEmpty()) {
            return Optional.empty();
        }
        String value = entry.get().value().toLowerCase(Locale.ROOT);
        if (value.equals("discharge plus") || value.equals("discharge minus")) {
            return Optional.of(value.endsWith("plus"));
        }
        text.add(
                entry.get().line(),
                entry.get().column(),
                "sign is \"" + entry.get().value() + "\"; expected is \"discharge plus\" or \"discharge minus\".");
        return Optional.empty();
    }

    /** The same by what switching did to the reading. */
    boolean dischargeIsPlus(List<Reading> rows) throws InputException {
        Optional<Boolean> plus = MeterSign.dischargeIsPlus(rows);
        if (plus.isEmpty()) {
            throw text.problem(
                    0,
                    0,
                    "the readings do not show whether discharge is plus or minus. Add a line \"# sign: discharge plus\""
                            + " or \"# sign: discharge minus\".");
        }
        notes.add("Discharge is taken as " + (plus.get() ? "plus" : "minus")
                + " by what switching did to the reading (# sign: says it).");
        return plus.get();
    }
}
