package ampdays.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.sun.PlaneOfArray;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FacesTest {
    private static final Faces FACES = new Faces(Double.NaN, 0.8, 0.5, 0.4);

    /** Over all headings the faces see what a face of unknown heading sees: sin z/π (geometry); 3,600 headings. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 45, 70})
    void allHeadingsTogetherAreTheMeanOverHeadings(double zenithDeg) {
        double level = Math.sin(Math.toRadians(zenithDeg));
        double walls = 0;
        double glass = 0;
        for (int i = 0; i < 3600; i++) {
            double turn = Math.toRadians(i / 10.0);
            walls += FACES.wallCosine(level * Math.cos(turn), level * Math.sin(turn)) / 3600;
            glass += FACES.glassCosine(level * Math.cos(turn), level * Math.sin(turn)) / 3600;
        }
        double mean = PlaneOfArray.meanUprightCosine(Math.cos(Math.toRadians(zenithDeg)));
        assertThat(walls).isCloseTo(mean, within(1e-6));
        assertThat(glass).isCloseTo(mean, within(1e-6));
    }

    /** Low sun ahead shines on the windscreen, behind on the rear window, abeam on one side (geometry). */
    @Test
    void lowSunOnEachSide() {
        assertThat(FACES.glassCosine(1, 0)).isCloseTo(0.5, within(1e-12));
        assertThat(FACES.glassCosine(-1, 0)).isCloseTo(0.1, within(1e-12));
        assertThat(FACES.glassCosine(0, 1)).isCloseTo(0.2, within(1e-12));
        assertThat(FACES.wallCosine(0, -1)).isCloseTo(0.4, within(1e-12));
        assertThat(FACES.wallCosine(-1, 0)).isCloseTo(0.1, within(1e-12));
    }
}
