package ampdays.chart;

import ampdays.results.SweepTable.Column;

/**
 * What the knob of a sweep is called on a chart, for readers who do not write scenarios. Test: {@code KnobTitleTest}.
 */
final class KnobTitle {
    private KnobTitle() {}

    /** Without the unit. */
    static String of(Column knob) {
        return PlainNames.of(knob.path());
    }

    /** With the unit in brackets. */
    static String axis(Column knob) {
        return knob.unit().isEmpty() ? of(knob) : of(knob) + " (" + knob.unit() + ")";
    }

    /** One of its values in words. */
    static String at(Column knob, int place) {
        String amount = knob.amount(place);
        if (!knob.path().equals(PlainNames.HEAT) || !knob.isNumeric()) {
            return of(knob) + " " + amount;
        }
        double byDegrees = knob.number(place);
        return byDegrees == 0
                ? "weather as in the file"
                : "all air " + amount.replaceFirst("^[+-]", "") + (byDegrees > 0 ? " hotter" : " cooler");
    }
}
