package ampdays.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of files that a sweep may take away, and names of others that it must leave alone: our own rule, no outside source. */
class SweepChartTest {
    @ParameterizedTest
    @ValueSource(strings = {"lines.svg", "days-to-empty.png", "days-to-empty-12.svg", "break-even-3.png", "front.svg"})
    void chartsOfASweepAreKnownByTheirNames(String name) {
        assertThat(SweepChart.isFile(name)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"lines", "my-lines.svg", "front-door.png", "front.csv", "days-to-empty-1.jpg", "break-even-.svg"
            })
    void otherFilesAreLeftAlone(String name) {
        assertThat(SweepChart.isFile(name)).isFalse();
    }
}
