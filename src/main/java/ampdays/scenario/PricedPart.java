package ampdays.scenario;

import ampdays.units.Dimension;
import ampdays.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The parts of a design that are priced and weighed, each by a unit of its own, fitted. Test: {@code PartsTest}. */
public enum PricedPart {
    BATTERY("bank", "kWh of bank") {
        @Override
        double count(Values v) {
            return BatterySection.capacityAh(v) * BatterySection.nominalV(v) / 1000;
        }

        /** Another chemistry is another bank. */
        @Override
        double bought(Values was, Values is) {
            return was.isLeadAcid() == is.isLeadAcid() ? more(was, is) : count(is);
        }
    },
    SOLAR("panels with mounts", "100 W of panels") {
        @Override
        double count(Values v) {
            return amount(v, "solar.power") / 100;
        }

        @Override
        double bought(Values was, Values is) {
            return more(was, is);
        }
    },
    CHARGER("DC-DC and shore chargers", "ampere of charger") {
        @Override
        double count(Values v) {
            return amount(v, DC_DC) + amount(v, SHORE);
        }

        @Override
        double bought(Values was, Values is) {
            return larger(amount(was, DC_DC), amount(is, DC_DC)) + larger(amount(was, SHORE), amount(is, SHORE));
        }
    },
    SECOND_ALTERNATOR("second alternator, bracket, cable, regulator", "ampere of second alternator") {
        @Override
        double count(Values v) {
            return amount(v, "second-alternator.rated");
        }
    },
    INSULATION("foam in roof and walls", "foam in roof and walls") {
        @Override
        public String unit(UnitSystem units) {
            return units.show(Dimension.THICKNESS, FOAM_STEP_M, 2) + " of " + label();
        }

        @Override
        double count(Values v) {
            return v.number("cabin.insulation") / FOAM_STEP_M;
        }

        @Override
        double bought(Values was, Values is) {
            return more(was, is);
        }
    },
    COVERS("insulated window covers", "set of insulated window covers") {
        @Override
        double count(Values v) {
            return v.word("cabin.covers").equals("insulated") ? 1 : 0;
        }
    },
    COOLING("air conditioner", "air conditioner") {
        @Override
        double count(Values v) {
            return v.has("cooling") ? 1 : 0;
        }

        /** Another class, or another size of the same, is another unit. */
        @Override
        double bought(Values was, Values is) {
            boolean same = was.has("cooling")
                    && was.word("cooling.preset").equals(is.word("cooling.preset"))
                    && was.number("cooling.capacity") == is.number("cooling.capacity");
            return same ? 0 : count(is);
        }
    },
    INVERTER("inverter", "kW of inverter") {
        @Override
        double count(Values v) {
            return amount(v, "inverter.rated") / 1000;
        }
    };

    private static final double FOAM_STEP_M = 0.025;
    private static final String DC_DC = "factory-alternator.charger";
    private static final String SHORE = "shore-charger.rated";

    private final String label;
    private final String unit;
    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');
    private final String pricePath = "prices." + word;
    private final String massPath = "masses." + word;

    PricedPart(String label, String unit) {
        this.label = label;
        this.unit = unit;
    }

    /** How many a design has. */
    abstract double count(Values v);

    /** How many a changed design needs new: a larger one of what comes in one piece is bought whole. */
    double bought(Values was, Values is) {
        return larger(count(was), count(is));
    }

    double more(Values was, Values is) {
        return Math.max(0, count(is) - count(was));
    }

    private static double larger(double was, double is) {
        return is > was ? is : 0;
    }

    /** What the design does not have counts nothing. */
    private static double amount(Values v, String path) {
        double number = v.has(path.substring(0, path.indexOf('.'))) ? v.number(path) : 0;
        return Double.isNaN(number) ? 0 : number;
    }

    /** What it is, in a list of parts. */
    public String label() {
        return label;
    }

    /** What one of it is, without an article. */
    public String unit(UnitSystem units) {
        return unit;
    }

    /** As it is written in a list of prices or masses. */
    public String word() {
        return word;
    }

    public String pricePath() {
        return pricePath;
    }

    public String massPath() {
        return massPath;
    }

    /** What all of it weighs in a design, kg. */
    public double massKg(Values v) {
        return count(v) * v.number(massPath());
    }

    public static Optional<PricedPart> of(String word) {
        return Arrays.stream(values()).filter(p -> p.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(PricedPart::word).toList();
    }
}
