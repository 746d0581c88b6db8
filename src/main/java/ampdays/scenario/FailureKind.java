package ampdays.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What may fail, by a name of its own. A kind says whether a design can suffer it, and what it then changes; when it strikes,
 * where no file says so, is told by the study. What is meant by each, and the sizes, are ours (practice, or a guess where
 * docs/MODEL.md says so).
 */
public enum FailureKind {
    PROTECTION_OPENS("bank protection opens"),
    STRING_LOST("string lost"),
    SECOND_ALTERNATOR_DIES("second alternator dies"),
    FACTORY_ALTERNATOR_DIES("factory alternator dies"),
    PANEL_BREAKER_OPENS("panel breaker opens"),
    COOLING_BREAKER_OPENS("cooling breaker opens"),
    HOOK_UP_LOST("hook-up lost with a pet aboard"),
    COLD_MORNING("cold morning"),
    INVERTER_LEFT_ON("inverter left on"),
    HEAT_WAVE("heat wave"),
    UNDER_TREES("parked under trees"),
    CLOSED_BOX("refrigerator in a closed box");

    private static final String SECOND = "second-alternator";
    private static final String FACTORY = "factory-alternator";
    private static final String SHORE = "shore-charger";
    private static final String AWAY = "cabin.set.away";

    private final String label;

    FailureKind(String label) {
        this.label = label;
    }

    /** As it is written after {@code kind:}. */
    public String label() {
        return label;
    }

    /** The kind of a label. */
    public static Optional<FailureKind> of(String label) {
        return Arrays.stream(values()).filter(kind -> kind.label.equals(label)).findFirst();
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(FailureKind::label).toList();
    }

    /** Why a design cannot suffer it, as a predicate of "it does not apply:"; empty when it can. */
    public Optional<String> whyNot(Values values) {
        return switch (this) {
            case PROTECTION_OPENS ->
                unless(!BatterySection.isLeadAcid(values), "a lead-acid bank has no protection that opens");
            case STRING_LOST -> unless(values.number("battery.strings") >= 2, "the bank is one string");
            case SECOND_ALTERNATOR_DIES -> unless(values.has(SECOND), "there is no second alternator");
            case FACTORY_ALTERNATOR_DIES ->
                unless(values.has(FACTORY), "the factory alternator does not charge the bank");
            case PANEL_BREAKER_OPENS, UNDER_TREES -> unless(values.has("solar"), "there are no panels");
            case COOLING_BREAKER_OPENS -> unless(values.has("cooling"), "there is no air conditioner");
            case HOOK_UP_LOST -> unless(values.has(SHORE), "there is no shore charger");
            case INVERTER_LEFT_ON ->
                values.has("inverter")
                        ? unless(
                                !values.word("inverter.running").equals("always"), "the inverter is always on as it is")
                        : Optional.of("there is no inverter");
            case CLOSED_BOX ->
                values.has("refrigerator")
                        ? unless(!values.word("refrigerator.box").equals("closed"), "its box is closed as it is")
                        : Optional.of("there is no refrigerator");
            case COLD_MORNING, HEAT_WAVE -> Optional.empty();
        };
    }

    private static Optional<String> unless(boolean can, String why) {
        return can ? Optional.empty() : Optional.of(why);
    }

    /** The design as it is before, with what the kind takes for granted of it. */
    Values before(Values values) {
        boolean coolsNobody = this == HOOK_UP_LOST
                && values.has("cooling")
                && Double.isNaN(values.number(AWAY))
                && !Double.isNaN(values.number("cabin.set.awake"));
        return coolsNobody ? values.with(AWAY, values.number("cabin.set.awake")) : values;
    }

    /** The design while it lasts. */
    Values during(Values values) {
        Values before = before(values);
        return switch (this) {
            case PROTECTION_OPENS -> withoutSources(before).with("battery.protection", "open");
            case STRING_LOST -> oneStringLess(before);
            case SECOND_ALTERNATOR_DIES -> before.without(SECOND);
            case FACTORY_ALTERNATOR_DIES -> before.without(FACTORY);
            case PANEL_BREAKER_OPENS -> before.with("solar.controller", "0 A");
            case COOLING_BREAKER_OPENS -> before.without("cooling");
            case HOOK_UP_LOST -> before.without(SHORE);
            case INVERTER_LEFT_ON -> before.with("inverter.running", "always");
            case CLOSED_BOX -> closed(before);
            case COLD_MORNING, HEAT_WAVE, UNDER_TREES -> before;
        };
    }

    /** Chargers and regulators hold their voltage by the battery; without it none is counted on. */
    private static Values withoutSources(Values values) {
        Values left = values.without(SECOND).without(FACTORY).without(SHORE);
        return left.has("solar") ? left.with("solar.controller", "0 A") : left;
    }

    /** Capacity, currents and resistance that the design says of the whole bank are those of the strings left. */
    private static Values oneStringLess(Values values) {
        long strings = Math.round(values.number("battery.strings"));
        double left = (strings - 1.0) / strings;
        Values fewer = values.with("battery.strings", Long.toString(strings - 1))
                .with("battery.capacity", left * BatterySection.capacityAh(values));
        for (String path : List.of("battery.charge-limit", "battery.discharge-limit", "battery.heat-capacity")) {
            fewer = isOwn(values, path) ? fewer.with(path, left * values.number(path)) : fewer;
        }
        return isOwn(values, "battery.resistance")
                ? fewer.with("battery.resistance", values.number("battery.resistance") / left)
                : fewer;
    }

    /** Whether file or preset say it, so that it does not follow the capacity. */
    private static boolean isOwn(Values values, String path) {
        return values.find(path)
                .map(value -> !value.origin().equals(Origin.DEFAULT))
                .orElse(false);
    }

    private static Values closed(Values values) {
        return values.without("refrigerator.condenser-rise").with("refrigerator.box", "closed");
    }
}
