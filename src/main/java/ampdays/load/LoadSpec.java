package ampdays.load;

import ampdays.units.Require;
import java.util.List;

/**
 * One appliance.
 *
 * @param drawA constant current it takes from the bus, A; 0 when it is given in watts
 * @param drawW constant power it takes, W; 0 when it is given in amps
 * @param onInverter whether it hangs behind the inverter (then only watts)
 * @param occasion when it may run
 * @param windows clock times that narrow the occasion; none = all day
 * @param useHoursPerDay hours of use a day, spread evenly over the times it may run; NaN = all of them
 * @param heatShare share of its energy that ends as heat in the cabin, 0 to 1
 * @param airflowM3H outside air that it moves through the cabin while it runs, m³/h; 0 for all but fans
 * @param shedBelowShare state of charge of the bank below which it is switched off, 0 to 1; 0 = only at the cut-out
 */
public record LoadSpec(
        String name,
        double drawA,
        double drawW,
        boolean onInverter,
        Occasion occasion,
        List<ClockWindow> windows,
        double useHoursPerDay,
        double heatShare,
        double airflowM3H,
        double shedBelowShare) {
    public LoadSpec {
        windows = List.copyOf(windows);
        Require.notNegative("draw in amps", drawA);
        Require.notNegative("draw in watts", drawW);
        if (drawA > 0 && (drawW > 0 || onInverter)) {
            throw new IllegalArgumentException("\"" + name + "\" takes either amps from the bus or watts");
        }
        if (!Double.isNaN(useHoursPerDay)) {
            Require.within("hours of use", useHoursPerDay, 0, 24);
        }
        Require.share("heat share", heatShare);
        Require.notNegative("air flow", airflowM3H);
        Require.share("shedding", shedBelowShare);
    }
}
