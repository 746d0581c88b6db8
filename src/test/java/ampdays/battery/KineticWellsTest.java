package ampdays.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import ampdays.ReferenceTable.Row;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class KineticWellsTest {
    static List<Row> table() {
        return ReferenceTable.rows("kibam");
    }

    /** Source: table kibam (matrix exponential), ten digits: 1e-9 relative. */
    @ParameterizedTest
    @MethodSource("table")
    void stepAndLimits(Row row) {
        double whole = row.number("q_max_Ah");
        double q1 = row.number("q1_Ah");
        double q2 = row.number("q2_Ah");
        double current = row.number("current_A");
        KineticWells wells = new KineticWells(row.number("c"), row.number("k_per_h"), row.number("t_h"));
        Offset<Double> digits = within(1e-9 * whole);
        assertThat(wells.availableAh(q1, q2, current)).isCloseTo(row.number("q1_end_Ah"), digits);
        assertThat(wells.boundAh(q1, q2, current)).isCloseTo(row.number("q2_end_Ah"), digits);
        assertThat(wells.maxDischargeA(q1, q2)).isCloseTo(row.number("i_max_discharge_A"), relative(row));
        assertThat(wells.maxChargeA(q1, q2, whole)).isCloseTo(-row.number("i_max_charge_A"), relative(row));
    }

    private static Offset<Double> relative(Row row) {
        return within(1e-9 * (Math.abs(row.number("i_max_discharge_A")) + Math.abs(row.number("i_max_charge_A"))));
    }

    /**
     * Source: lifetimes in minutes of a battery of 5.5 A min, c = 0.166, k = 0.122 per minute; M. Jongerden and B.
     * Haverkort, Which battery model to use?, IET Software 3 (2009), from memory, to the printed digits. Loads are in mA,
     * a minute each, and come again.
     */
    @ParameterizedTest
    @CsvSource({
        "250, 4.53",
        "500, 2.02",
        "500 250, 2.58",
        "250 0, 10.80",
        "500 0, 4.30",
        "500 0 250 0, 4.80",
        "250 0 0, 21.86",
        "500 0 0, 6.53"
    })
    void lifetimes(String loads, double minutes) {
        double[] amperes = Arrays.stream(loads.split(" "))
                .mapToDouble(load -> Double.parseDouble(load) / 1000)
                .toArray();
        assertThat(lifetime(0.166, 0.122, 5.5, amperes, 1)).isCloseTo(minutes, within(0.005));
    }

    /**
     * Source: 7200 A s, c = 0.625, k of the wells 4.5e-5 per second, 0.96 A: 91 min without a break, 203 min as a square
     * wave of 1 and of 0.2 Hz; V. Rao et al. 2005 and M. Jongerden and B. Haverkort, TR-CTIT-08-01, from memory. Taking
     * the wells' k for that of the closed form would give 81 and 169 min.
     */
    @ParameterizedTest
    @CsvSource({"0.96, 60, 91", "0.96 0, 0.5, 203", "0.96 0, 2.5, 203"})
    void lifetimesOfTheSecondSet(String loads, double seconds, double minutes) {
        double[] amperes =
                Arrays.stream(loads.split(" ")).mapToDouble(Double::parseDouble).toArray();
        double k = 4.5e-5 / (0.625 * 0.375);
        assertThat(lifetime(0.625, k, 7200, amperes, seconds) / 60).isCloseTo(minutes, within(0.5));
    }

    /** Time until the well at hand is empty, in the unit of time of k; loads hold for a stretch each and come again. */
    private static double lifetime(double c, double k, double whole, double[] amperes, double stretch) {
        KineticWells wells = new KineticWells(c, k, stretch);
        double q1 = c * whole;
        double q2 = whole - q1;
        int i = 0;
        while (wells.availableAh(q1, q2, amperes[i % amperes.length]) > 0) {
            double next = wells.availableAh(q1, q2, amperes[i % amperes.length]);
            q2 = wells.boundAh(q1, q2, amperes[i % amperes.length]);
            q1 = next;
            i++;
        }
        double low = 0;
        double high = stretch;
        while (high - low > 1e-9 * stretch) {
            double middle = (low + high) / 2;
            boolean alive = new KineticWells(c, k, middle).availableAh(q1, q2, amperes[i % amperes.length]) > 0;
            low = alive ? middle : low;
            high = alive ? high : middle;
        }
        return i * stretch + low;
    }

    /** The rated current empties the full battery in the rated time (definition of the capacity). */
    @ParameterizedTest
    @CsvSource({"100, 20, 0.3, 1", "220, 20, 0.25, 0.6", "75, 10, 0.4, 2"})
    void wholeChargeFollowsFromTheRating(double ratedAh, double hours, double c, double k) {
        double whole = KineticWells.wholeAh(c, k, ratedAh, hours);
        double left = new KineticWells(c, k, hours).availableAh(c * whole, (1 - c) * whole, ratedAh / hours);
        assertThat(left).isCloseTo(0, within(1e-9 * whole));
        assertThat(whole).isGreaterThan(ratedAh);
    }

    /** What is not drawn flows back: the sum of both wells changes by the current alone (conservation of charge). */
    @ParameterizedTest
    @CsvSource({"-12", "0", "7.5"})
    void chargeIsKept(double current) {
        KineticWells wells = new KineticWells(0.3, 1, 0.25);
        double end = wells.availableAh(12, 50, current) + wells.boundAh(12, 50, current);
        assertThat(end).isCloseTo(62 - current * 0.25, within(1e-12 * 62));
    }
}
