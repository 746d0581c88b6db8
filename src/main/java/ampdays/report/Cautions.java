package ampdays.report;

import ampdays.report.Block.Point;
import ampdays.report.Block.Points;
import ampdays.report.Block.Text;
import ampdays.results.HeatAfterLoss;
import ampdays.units.Dimension;
import ampdays.units.UnitSystem;
import java.util.List;
import java.util.stream.Stream;

/**
 * Cautions in our own words. Codes are named so that the reader knows whom to ask, never quoted. Sources: for carbon
 * monoxide in parked vehicles, Morbidity and Mortality Weekly Report 45 (47), 1996; for heat in parked vehicles,
 * C. McLaren, J. Null and J. Quinn, Pediatrics 116 (2005) e109; for the rest, common practice.
 */
final class Cautions {
    private Cautions() {}

    static Part of(Material material, Say say) {
        UnitSystem units = material.units();
        String freezing = units.show(Dimension.TEMPERATURE, 0, 2);
        String rise = units.show(Dimension.TEMPERATURE_DIFFERENCE, 22, 2);
        return Part.of(
                "cautions",
                "Cautions",
                Stream.of(
                        new Text(
                                "This is an estimate, not a code check. Have the installation planned and inspected by a"
                                        + " licensed person. The vehicle maker’s body-builder rules come first, then the codes of the"
                                        + " place: among them, as they apply, NFPA 1192, NEC article 551, ANSI/RVIA LV, ABYC E-11 and E-13,"
                                        + " ISO 13297, AS/NZS 3001.2, and for listed batteries UL 1973, UL 2271 and IEC 62619."),
                        new Points(List.of(
                                new Point(
                                        "Carbon monoxide.",
                                        "The exhaust of a running engine kills sleepers, also with a window open. Never run or idle the"
                                                + " engine while anybody sleeps in or beside the van; close rear windows and switch off the roof fan"
                                                + " while it charges; keep snow and tall grass off the pipe; fit an alarm listed for such vehicles"
                                                + " and replace it in time."),
                                new Point(
                                        "Heat when cooling stops.",
                                        "A closed vehicle in the sun warms by some " + rise
                                                + " within the hour, most of it in the first half hour, on mild days too, and open window slits do"
                                                + " not help. Cooling stops for many reasons, and the alarm may lose its power with it. No design"
                                                + " from this program makes it safe to leave a child or a pet alone in the van."
                                                + thisVan(material, say)),
                                new Point(
                                        "Lithium batteries.",
                                        "No charging below " + freezing
                                                + " in the cells; heat ages them and trips their protection. Use listed packs, held against a crash,"
                                                + " with a fuse close to the terminal that can break their fault current, which is thousands of"
                                                + " amperes. They start no engine unless the maker says so."),
                                new Point(
                                        "Load dump.",
                                        "When the protection opens while an alternator charges, its voltage jumps and can destroy its rectifier"
                                                + " and what hangs on it. Let the battery’s protection stop the regulator first, and fit what the"
                                                + " makers of both ask for (ISO 16750-2 describes the pulse)."),
                                new Point(
                                        "Fire.",
                                        "Thin, chafed or unfused cable and loose joints are the usual causes. Fuse a cable between two sources"
                                                + " at both ends, protect every pass through sheet metal, re-tighten joints; a smoke alarm, an"
                                                + " extinguisher and a main switch within reach belong to the work."),
                                new Point(
                                        "Belts and hot exhaust.",
                                        "An engine may start by itself: keep hands and clothes off belts. Do not idle over dry grass; the"
                                                + " exhaust sets it alight, most of all while a particle filter burns itself clean."),
                                new Point(
                                        "Roof.",
                                        "Panels, racks and an air conditioner load the roof, raise the van and its centre of gravity, and must"
                                                + " stay within what the vehicle maker allows, standing and driving."),
                                new Point(
                                        "Hook-up.",
                                        "Reverse polarity, low voltage and a missing earth occur on camp sites: test before you trust. Nothing"
                                                + " may feed back into the pedestal.")))));
    }

    /** What the simulation says of the recommended design. */
    private static String thisVan(Material material, Say say) {
        return material.studies()
                .heat()
                .map(heat ->
                        " Simulated for this van, parked in full sun with its windows shut at the worst moment of the"
                                + " trip (" + say.celsius(heat.outsideC()) + " outside): from "
                                + say.celsius(heat.keptC()) + " the cabin passes "
                                + passes(heat.minutesTo32C(), 32, say)
                                + ", " + passes(heat.minutesTo35C(), 35, say) + ", "
                                + passes(heat.minutesTo40C(), 40, say)
                                + ".")
                .orElse("");
    }

    private static String passes(double minutes, double degrees, Say say) {
        String temperature = say.celsius(degrees);
        if (Double.isNaN(minutes)) {
            return temperature + " not within " + HeatAfterLoss.WATCHED_H + " hours";
        }
        return temperature + Say.number(" after %.0f min", minutes);
    }
}
