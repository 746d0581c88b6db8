package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.trip.Windows;
import ampdays.units.QuantityException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimetableLineTest {
    @ParameterizedTest
    @CsvSource({"heading N, 0", "heading SW, 225", "heading 180°, 180", "heading 95, 95"})
    void headings(String words, double deg) throws Exception {
        assertThat(TimetableLine.parse("21:00 park shade " + words + " hook-up, asleep")
                        .headingDeg())
                .isEqualTo(deg);
    }

    @Test
    void covers() throws Exception {
        assertThat(TimetableLine.parse("21:00 park open covered, asleep").windows())
                .isEqualTo(Windows.COVERED);
        assertThat(TimetableLine.parse("21:00 idle uncovered, awake").windows()).isEqualTo(Windows.UNCOVERED);
        assertThat(TimetableLine.parse("21:00 park open, away").windows()).isEqualTo(Windows.BY_RULE);
        assertThat(TimetableLine.parse("21:00 park open, away").headingDeg()).isNaN();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "08:00 drive town heading S | only a standing van",
                "08:00 park sun heading up, away | does not say which way",
                "08:00 park sun heading, away | does not say which way",
                "08:00 park sun heading 400°, away | beyond 360",
                "08:00 park sun covered uncovered, away | has the word \"uncovered\"",
            })
    void wrongLines(String line, String message) {
        assertThatThrownBy(() -> TimetableLine.parse(line))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(message);
    }

    @Test
    void preCoolTimes() throws Exception {
        PreCoolTimes times = PreCoolTimes.parse("surplus sun, driving, 14:00-17:00");
        assertThat(times.surplusSun() && times.driving()).isTrue();
        assertThat(times.windows()).hasSize(1);
        assertThatThrownBy(() -> PreCoolTimes.parse("surplus son")).hasMessageContaining("Did you mean surplus sun?");
    }
}
