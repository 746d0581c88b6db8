package ampdays.log;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A log as minutes: means, last levels, growth of counters. Flows of the bank are plus into it. */
public final class MeteredLog {
    private final Facts facts;
    private final Map<Signal, Track> tracks;
    private final List<Trap> traps;

    /**
     * What was read.
     *
     * @param file its name
     * @param rows with a time, used or not
     * @param startEpochSecond first minute
     * @param minutes from the first to the last row
     * @param usualSeconds usual time between rows
     * @param gaps stretches without rows
     * @param gapSeconds length of all of them, s
     * @param longestGapLine line of the row that ends the longest
     * @param zone for days
     */
    public record Facts(
            String file,
            long rows,
            long startEpochSecond,
            int minutes,
            double usualSeconds,
            int gaps,
            long gapSeconds,
            long longestGapSeconds,
            int longestGapLine,
            ZoneId zone) {}

    MeteredLog(Facts facts, Map<Signal, Track> tracks, List<Trap> traps) {
        this.facts = facts;
        this.tracks = new EnumMap<>(tracks);
        this.traps = List.copyOf(traps);
    }

    public Facts facts() {
        return facts;
    }

    /** What would mislead, in the order of lines. */
    public List<Trap> traps() {
        return traps;
    }

    public boolean has(Signal signal) {
        return tracks.containsKey(signal);
    }

    public Set<Signal> signals() {
        return tracks.keySet();
    }

    public int minutes() {
        return facts.minutes();
    }

    public long epochSecond(int minute) {
        return facts.startEpochSecond() + 60L * minute;
    }

    /** Mean of a minute, its last level, or the growth within it, in base units; NaN when it was not measured. */
    public double value(Signal signal, int minute) {
        Track track = tracks.get(signal);
        return track == null ? Double.NaN : track.value(facts.startEpochSecond() / 60 + minute);
    }

    /** Seconds of a minute that were measured, 0 to 60. */
    public double seconds(Signal signal, int minute) {
        Track track = tracks.get(signal);
        return track == null ? 0 : track.seconds(facts.startEpochSecond() / 60 + minute);
    }

    /** Share of the log's time in which a signal was measured, 0 to 1; a level or counter stands for the usual interval. */
    public double coverage(Signal signal) {
        boolean points = signal.isCounter() || signal.isLevel();
        double most = points ? Math.max(60, facts.usualSeconds()) : 60;
        double covered = 0;
        for (int minute = 0; minute < facts.minutes(); minute++) {
            double seconds = seconds(signal, minute);
            covered += points && seconds > 0 ? most : Math.min(most, seconds);
        }
        return Math.min(1, covered / (60.0 * facts.minutes()));
    }

    /** Power into the bank, W: as logged, or voltage times current. */
    public double bankW(int minute) {
        if (has(Signal.BANK_POWER)) {
            return value(Signal.BANK_POWER, minute);
        }
        return value(Signal.BANK_VOLTAGE, minute) * value(Signal.BANK_CURRENT, minute);
    }

    /** Power from the panels at the bus, W; by the counter where no power is logged. */
    public double solarW(int minute) {
        return has(Signal.SOLAR_POWER) || !has(Signal.SOLAR_ENERGY)
                ? value(Signal.SOLAR_POWER, minute)
                : 60 * value(Signal.SOLAR_ENERGY, minute);
    }

    /** Power of the DC-DC charger at the bus, W. */
    public double chargerW(int minute) {
        return power(Signal.CHARGER_POWER, Signal.CHARGER_CURRENT, minute);
    }

    /** Power of the second alternator at the bus, W. */
    public double secondW(int minute) {
        return power(Signal.SECOND_POWER, Signal.SECOND_CURRENT, minute);
    }

    private double power(Signal power, Signal current, int minute) {
        return has(power) ? value(power, minute) : value(current, minute) * value(Signal.BANK_VOLTAGE, minute);
    }

    public boolean hasSolar() {
        return has(Signal.SOLAR_POWER) || has(Signal.SOLAR_ENERGY);
    }

    public boolean hasCharger() {
        return has(Signal.CHARGER_POWER) || has(Signal.CHARGER_CURRENT);
    }

    public boolean hasSecond() {
        return has(Signal.SECOND_POWER) || has(Signal.SECOND_CURRENT);
    }

    /** Whether the bank's power can be told. */
    public boolean hasBank() {
        return has(Signal.BANK_POWER) || (has(Signal.BANK_VOLTAGE) && has(Signal.BANK_CURRENT));
    }
}
