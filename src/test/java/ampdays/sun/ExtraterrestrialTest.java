package ampdays.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.ReferenceTable;
import org.junit.jupiter.api.Test;

class ExtraterrestrialTest {
    /** Source: table extraterrestrial, Spencer column; 10 digits printed. */
    @Test
    void agreesWithTheTable() {
        for (var row : ReferenceTable.rows("extraterrestrial")) {
            assertThat(Extraterrestrial.normalWm2((int) row.number("day_of_year")))
                    .as(row.toString())
                    .isCloseTo(row.number("dni_extra_spencer_Wm2"), within(1e-6));
        }
    }

    /** Source: expected value of the reference library's own test, 24 June 2014: 1321.17 W/m² among all methods. */
    @Test
    void onTheDayOfTheTranspositionChecks() {
        assertThat(Extraterrestrial.normalWm2(175)).isCloseTo(1321.17, within(0.02));
    }
}
