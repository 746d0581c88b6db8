package ampdays.commission;

import ampdays.commission.Judgement.Support;
import ampdays.commission.Judgement.Suspect;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Judges the readings of a sheet.
 *
 * <p>Drops are judged at the current that was read: a band for 100 A is half as wide and half as high at 50 A (Ohm's law).
 * Causes come in the order of {@link Causes}; one that another reading of the sheet supports moves to the front, one that a
 * passing reading speaks against to the end. Reference: JudgeTest.
 */
public final class Judge {
    private final Sheet sheet;
    private final Map<String, Double> readings;
    private final Map<Symptom, Boolean> deviates = new EnumMap<>(Symptom.class);

    private Judge(Sheet sheet, Map<String, Double> readings) {
        this.sheet = sheet;
        this.readings = readings;
    }

    /**
     * Judges what was read.
     *
     * @param readings by the ids of the items, each in its item's unit; what was not read is missing
     * @return in the order of the sheet
     */
    public static List<Judgement> of(Sheet sheet, Map<String, Double> readings) {
        return new Judge(sheet, readings).judge();
    }

    private List<Judgement> judge() {
        List<Item> read =
                sheet.items().filter(item -> readings.containsKey(item.id())).toList();
        for (Item item : read) {
            boolean off = band(item).judge(readings.get(item.id())) != Outcome.PASS;
            deviates.merge(item.symptom(), off, Boolean::logicalOr);
        }
        return read.stream().map(this::judgement).toList();
    }

    private Judgement judgement(Item item) {
        double reading = readings.get(item.id());
        Band band = band(item);
        Outcome outcome = band.judge(reading);
        if (outcome == Outcome.PASS) {
            return new Judgement(item, reading, band, outcome, List.of(), "");
        }
        List<Suspect> suspects = suspects(item.symptom(), reading > band.passTo());
        return new Judgement(item, reading, band, outcome, suspects, next(item, suspects));
    }

    private Band band(Item item) {
        Item current = sheet.items()
                .filter(other -> other.id().equals(item.scalesWith()))
                .findFirst()
                .orElse(null);
        Double readA = current == null ? null : readings.get(current.id());
        boolean scales = readA != null && readA > 0 && current.predicted() > 0;
        return scales ? item.band().times(readA / current.predicted()) : item.band();
    }

    private List<Suspect> suspects(Symptom symptom, boolean tooMuch) {
        List<Suspect> suspects = new ArrayList<>();
        for (Cause cause : Causes.of(symptom, tooMuch)) {
            Boolean seen = cause.witness().map(deviates::get).orElse(null);
            suspects.add(new Suspect(cause, seen == null ? Support.UNTOLD : seen ? Support.FOR : Support.AGAINST));
        }
        suspects.sort(Comparator.comparing(Suspect::support));
        return suspects;
    }

    private static String next(Item item, List<Suspect> suspects) {
        List<Suspect> open =
                suspects.stream().filter(s -> s.support() != Support.AGAINST).toList();
        if (open.isEmpty()) {
            return item.isQuestion()
                    ? "Put it right, then answer again."
                    : "Take the reading again with another meter.";
        }
        return open.get(0).cause().test();
    }
}
