package ampdays.commission;

import ampdays.units.DegreesFahrenheit;
import ampdays.units.Dimension;
import ampdays.units.Require;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The day of the commissioning.
 *
 * @param ambientC air in the shade, °C
 * @param underBonnetC air around the alternators with the bonnet closed and the engine warm, °C
 * @param socShare state of charge of the bank, 0 to 1
 * @param sun light on the panels
 */
public record Conditions(double ambientC, double underBonnetC, double socShare, Sunlight sun) {
    public static final double LEAST_C = -30;
    public static final double MOST_AMBIENT_C = 55;
    public static final double MOST_UNDER_BONNET_C = 140;

    public Conditions {
        Require.within("ambient", ambientC, LEAST_C, MOST_AMBIENT_C);
        Require.within("under-bonnet", underBonnetC, LEAST_C, MOST_UNDER_BONNET_C);
        Require.share("state of charge", socShare);
        if (underBonnetC < ambientC) {
            throw new IllegalArgumentException(
                    "air under the bonnet is colder than the air outside; read it with the engine warm");
        }
    }

    /** As written in a heading and on the command line: names to quantities. */
    public Map<String, String> spelled() {
        Map<String, String> spelled = new LinkedHashMap<>();
        spelled.put("ambient", Dimension.TEMPERATURE.show(ambientC));
        spelled.put("under-bonnet", Dimension.TEMPERATURE.show(underBonnetC));
        spelled.put("soc", Dimension.SHARE.show(socShare));
        sun.spelledLight().ifPresent(light -> spelled.put("sun", light));
        sun.spelledTime().ifPresent(time -> spelled.put("at", time));
        return spelled;
    }

    /** In words, temperatures in both units. */
    public String words() {
        return "air in the shade " + inBothUnits(ambientC) + "; under the bonnet " + inBothUnits(underBonnetC)
                + "; state of charge " + Dimension.SHARE.show(socShare) + (sun.isTold() ? "; " + sun.words() : "");
    }

    /** A temperature as both kinds of thermometer show it. */
    public static String inBothUnits(double celsius) {
        return Dimension.TEMPERATURE.show(celsius) + " (" + DegreesFahrenheit.whole(celsius) + ")";
    }
}
