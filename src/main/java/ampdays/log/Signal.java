package ampdays.log;

import ampdays.units.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a column of a log may measure, in base units, with the range outside which a value is no measurement. The ranges
 * are wide on purpose: 12 to 48 V systems, vans of any size (guess).
 */
public enum Signal {
    BANK_VOLTAGE("bank voltage", Kind.MEAN, Dimension.VOLTAGE, 8, 65),
    BANK_CURRENT("bank current", Kind.SIGNED, Dimension.CURRENT, -2000, 2000),
    BANK_POWER("bank power", Kind.SIGNED, Dimension.POWER, -30_000, 30_000),
    STATE_OF_CHARGE("state of charge", Kind.LEVEL, Dimension.SHARE, 0, 1.005),
    BANK_TEMPERATURE("bank temperature", Kind.MEAN, Dimension.TEMPERATURE, -50, 90),
    CHARGE_IN("charge into the bank", Kind.COUNTER, Dimension.CHARGE, 0, 1e8),
    CHARGE_OUT("charge out of the bank", Kind.COUNTER, Dimension.CHARGE, 0, 1e8),
    ENERGY_IN("energy into the bank", Kind.COUNTER, Dimension.ENERGY, 0, 1e9),
    ENERGY_OUT("energy out of the bank", Kind.COUNTER, Dimension.ENERGY, 0, 1e9),
    SOLAR_POWER("solar power", Kind.MEAN, Dimension.POWER, -50, 10_000),
    SOLAR_ENERGY("solar energy", Kind.COUNTER, Dimension.ENERGY, 0, 1e9),
    CHARGER_POWER("DC-DC charger power", Kind.MEAN, Dimension.POWER, -50, 10_000),
    CHARGER_CURRENT("DC-DC charger current", Kind.MEAN, Dimension.CURRENT, -5, 500),
    SECOND_POWER("second alternator power", Kind.MEAN, Dimension.POWER, -50, 20_000),
    SECOND_CURRENT("second alternator current", Kind.MEAN, Dimension.CURRENT, -5, 1000),
    SECOND_TEMPERATURE("second alternator case", Kind.MEAN, Dimension.TEMPERATURE, -50, 250),
    SHORE_POWER("shore charger power", Kind.MEAN, Dimension.POWER, -50, 10_000),
    USE_POWER("power in use", Kind.MEAN, Dimension.POWER, -50, 20_000),
    COOLING_POWER("cooling power", Kind.MEAN, Dimension.POWER, -50, 10_000),
    REFRIGERATOR_POWER("refrigerator power", Kind.MEAN, Dimension.POWER, -50, 1000),
    CABIN_TEMPERATURE("cabin temperature", Kind.MEAN, Dimension.TEMPERATURE, -50, 90),
    OUTSIDE_TEMPERATURE("outside temperature", Kind.MEAN, Dimension.TEMPERATURE, -60, 70);

    /** How values of a signal follow each other. */
    enum Kind {
        /** A flow or a state that is averaged over time. */
        MEAN,
        /** A flow with a direction. */
        SIGNED,
        /** A state that the meter itself works out and may set anew. */
        LEVEL,
        /** A sum that grows. */
        COUNTER
    }

    private final String label;
    private final Kind kind;
    private final Dimension dimension;
    private final double least;
    private final double most;

    Signal(String label, Kind kind, Dimension dimension, double least, double most) {
        this.label = label;
        this.kind = kind;
        this.dimension = dimension;
        this.least = least;
        this.most = most;
    }

    /** The name that a map uses. */
    public String label() {
        return label;
    }

    public Dimension dimension() {
        return dimension;
    }

    public boolean isCounter() {
        return kind == Kind.COUNTER;
    }

    /** Whether a map must say which direction is plus. */
    public boolean isSigned() {
        return kind == Kind.SIGNED;
    }

    boolean isLevel() {
        return kind == Kind.LEVEL;
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    public static Optional<Signal> of(String label) {
        return Arrays.stream(values()).filter(s -> s.label.equals(label)).findFirst();
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(Signal::label).toList();
    }
}
