package ampdays.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.units.QuantityException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmpacityTest {
    /** Source: 33 CFR 183.425 table 5, rows as printed. */
    @ParameterizedTest
    @CsvSource({
        "18, 10, 10, 15, 20, 20, 25, 25",
        "16, 15, 15, 20, 25, 25, 30, 35",
        "14, 20, 20, 25, 30, 35, 40, 45",
        "12, 25, 25, 35, 40, 45, 50, 55",
        "10, 40, 40, 50, 55, 60, 70, 70",
        "8, 55, 65, 70, 70, 80, 90, 100",
        "6, 80, 95, 100, 100, 120, 125, 135",
        "4, 105, 125, 130, 135, 160, 170, 180",
        "3, 120, 145, 150, 155, 180, 195, 210",
        "2, 140, 170, 175, 180, 210, 225, 240",
        "1, 165, 195, 210, 210, 245, 265, 280",
        "1/0, 195, 230, 245, 245, 285, 305, 325",
        "2/0, 225, 265, 285, 285, 330, 355, 370",
        "3/0, 260, 310, 330, 330, 385, 410, 430",
        "4/0, 300, 360, 385, 385, 445, 475, 510"
    })
    void tableOfTheBoatRule(
            String gauge, double a60, double a75, double a80, double a90, double a105, double a125, double a200)
            throws QuantityException {
        double area = Conductor.parse(gauge + " AWG").areaMm2();
        double[] classes = {60, 75, 80, 90, 105, 125, 200};
        double[] amps = {a60, a75, a80, a90, a105, a125, a200};
        for (int i = 0; i < classes.length; i++) {
            assertThat(Ampacity.tableA(area, classes[i])).isEqualTo(amps[i]);
        }
    }

    /**
     * Source: the same rule's engine-space column of the 105 °C class. It rounds down 0.85 times the table; the heat
     * balance gives 0.856, so 1 A or 1.1 %.
     */
    @ParameterizedTest
    @CsvSource({
        "18, 17",
        "16, 21",
        "14, 30",
        "12, 38",
        "10, 51",
        "8, 68",
        "6, 102",
        "4, 136",
        "3, 153",
        "2, 178",
        "1, 208",
        "1/0, 242",
        "2/0, 280",
        "3/0, 327",
        "4/0, 378"
    })
    void engineSpaceColumn(String gauge, double inEngineSpaceA) throws QuantityException {
        double area = Conductor.parse(gauge + " AWG").areaMm2();
        assertThat(Ampacity.allowedA(area, 105, 1, 50))
                .isCloseTo(inEngineSpaceA, within(Math.max(1, 0.011 * inEngineSpaceA)));
    }

    /** Source: engine-space factors of 33 CFR 183.425, air of 50 °C; they follow the heat balance but for 200 °C (1.00). */
    @ParameterizedTest
    @CsvSource({"60, 0.58", "75, 0.75", "80, 0.78", "90, 0.82", "105, 0.85", "125, 0.89"})
    void engineSpaceFactors(double ratedC, double factor) {
        assertThat(Ampacity.ambientShare(ratedC, 50)).isCloseTo(factor, within(0.01));
    }

    /** Source: 33 CFR 183.425 table 5, note 2. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 0.7", "4, 0.6", "6, 0.6", "7, 0.5", "24, 0.5", "25, 0.4"})
    void bundles(int conductors, double share) {
        assertThat(Ampacity.bundleShare(conductors)).isEqualTo(share);
    }

    /** Source: common practice, 35 mm² is taken like 2 AWG (33.6 mm², 210 A); between rows it lies a little above. */
    @Test
    void metricSizesLieBetweenTheRows() {
        assertThat(Ampacity.tableA(35, 105)).isBetween(210.0, 217.0);
        assertThat(Ampacity.tableA(0.75, 105)).isBetween(17.0, 20.0);
        assertThat(Ampacity.tableA(120, 105)).isEqualTo(445);
    }

    /** At the current allowed, the conductor is as warm as its insulation may be, in any air above 30 °C (identity). */
    @ParameterizedTest
    @CsvSource({"30, 105", "65, 105", "80, 125", "45, 90"})
    void allowedCurrentHeatsToTheRating(double airC, double ratedC) {
        double allowed = Ampacity.allowedA(35, ratedC, 4, airC);
        assertThat(Ampacity.conductorC(35, ratedC, 4, airC, allowed)).isCloseTo(ratedC, within(1e-9));
    }

    /** A rating between two classes counts as the lower one; air at the rating allows nothing. */
    @Test
    void ratingsBetweenClasses() {
        assertThat(Ampacity.insulationClassC(85)).isEqualTo(80);
        assertThat(Ampacity.insulationClassC(130)).isEqualTo(125);
        assertThat(Ampacity.allowedA(35, 105, 1, 105)).isZero();
        assertThat(Ampacity.allowedA(35, 105, 1, 140)).isZero();
    }

    /** Source: NEC 240.4(D) and the low-voltage table of its article 552, by reproductions. */
    @ParameterizedTest
    @CsvSource({"18, 6", "16, 8", "14, 15", "12, 20", "10, 30"})
    void thinConductors(String gauge, double most) throws QuantityException {
        assertThat(Ampacity.thinConductorA(Conductor.parse(gauge + " AWG").areaMm2()))
                .isEqualTo(most);
    }

    /** A metric size counts as the gauge it reaches; from 8 AWG on there is no such limit. */
    @Test
    void thinMetricConductors() {
        assertThat(Ampacity.thinConductorA(2.5)).isEqualTo(15);
        assertThat(Ampacity.thinConductorA(4)).isEqualTo(20);
        assertThat(Ampacity.thinConductorA(6)).isEqualTo(30);
        assertThat(Ampacity.thinConductorA(10)).isInfinite();
    }
}
