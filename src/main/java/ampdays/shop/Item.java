package ampdays.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a price list may name, each for one of its unit, fitted. */
public enum Item {
    BATTERY("kWh of bank"),
    SOLAR("100 W of panels"),
    CHARGER("ampere of charger"),
    SECOND_ALTERNATOR("ampere of second alternator"),
    INSULATION("25 mm of foam in roof and walls"),
    COVERS("set of window covers"),
    COOLING("air conditioner"),
    INVERTER("kW of inverter");

    private final String unit;

    Item(String unit) {
        this.unit = unit;
    }

    /** What one of it is, without an article. */
    public String unit() {
        return unit;
    }

    /** As it is written in a price list. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Item> of(String word) {
        return Arrays.stream(values()).filter(i -> i.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Item::word).toList();
    }
}
