package ampdays.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LoadTest {
    /** Common practice, no source: an inverter loses 8 to 15 % at mid load and far more near idle. */
    @Test
    void inverterInput() {
        InverterSpec inverter = new InverterSpec(2000, 20, 0.05, 0.06, 4000, true);
        assertThat(inverter.inputW(0)).isEqualTo(20);
        assertThat(1000 / inverter.inputW(1000)).isBetween(0.85, 0.92);
        assertThat(20 / inverter.inputW(20)).isLessThan(0.5);
        assertThat(inverter.inputW(2000)).isCloseTo(2000 + 20 + 100 + 120, within(1e-9));
    }

    @Test
    void windowsMayPassMidnight() {
        ClockWindow evening = new ClockWindow(22 * 60, 6 * 60);
        assertThat(evening.holds(23 * 60)).isTrue();
        assertThat(evening.holds(0)).isTrue();
        assertThat(evening.holds(6 * 60)).isFalse();
        ClockWindow noon = new ClockWindow(11 * 60, 13 * 60);
        assertThat(noon.holds(11 * 60)).isTrue();
        assertThat(noon.holds(13 * 60)).isFalse();
    }
}
