package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Price and mass of the demo's parts, added up by hand from the prices and masses in force; common practice, no source. */
class PartsTest {
    private static Values demo;

    @BeforeAll
    static void read() throws Exception {
        demo = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml")).base();
    }

    private static Parts with(String path, String text) {
        return Parts.of(demo.with(path, text));
    }

    /** 6.4 kWh, 400 W and 40 A; the foam of the preset is taken out, so that the sum is that of its parts. */
    @Test
    void theDemoAddsUp() {
        Parts bare = Parts.of(demo.with("cabin.insulation", "0 mm"));
        assertThat(bare.price()).isEqualTo(6.4 * 500 + 4 * 300 + 40 * 7, within(1e-9));
        assertThat(bare.massKg()).isEqualTo(6.4 * 10 + 4 * 7 + 40 * 0.05, within(1e-9));
        Parts half = with("cabin.insulation", "12.5 mm");
        assertThat(half.price() - bare.price()).isEqualTo(750, within(1e-9));
        assertThat(half.massKg() - bare.massKg()).isEqualTo(12.5, within(1e-9));
    }

    @Test
    void whatIsAddedIsPaidAndWeighed() {
        Parts base = Parts.of(demo);
        assertThat(with("second-alternator.rated", "200 A").price() - base.price())
                .isEqualTo(3600, within(1e-9));
        assertThat(with("second-alternator.rated", "200 A").massKg() - base.massKg())
                .isEqualTo(18, within(1e-9));
        assertThat(with("battery.capacity", "8.4 kWh").price() - base.price()).isEqualTo(1000, within(1e-9));
        assertThat(with("cabin.covers", "insulated").price() - base.price()).isEqualTo(400, within(1e-9));
        assertThat(with("prices.solar", "250").price() - base.price()).isEqualTo(-200, within(1e-9));
        assertThat(Parts.of(demo.without("solar")).panelM2()).isZero();
        assertThat(with("solar.panel-efficiency", "20 %").panelM2()).isEqualTo(2, within(1e-9));
    }
}
