package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.io.ScenarioReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** 6.4 kWh, 400 W, 40 A, an air conditioner and an inverter of 2 kW; the foam of the preset is taken out, so that the sum is that of its parts. */
    @Test
    void theDemoAddsUp() {
        Parts bare = Parts.of(demo.with("cabin.insulation", "0 mm"));
        assertThat(bare.price()).isEqualTo(6.4 * 500 + 4 * 300 + 40 * 7 + 2500 + 2 * 500, within(1e-9));
        assertThat(bare.massKg()).isEqualTo(6.4 * 10 + 4 * 7 + 40 * 0.05 + 28 + 2 * 6.5, within(1e-9));
        Parts half = with("cabin.insulation", "12.5 mm");
        assertThat(half.price() - bare.price()).isEqualTo(750, within(1e-9));
        assertThat(half.massKg() - bare.massKg()).isEqualTo(12.5, within(1e-9));
    }

    private static List<String> bought(Values was, Values is) {
        return Parts.bought(was, is).stream()
                .map(b -> b.part().word() + " " + Math.round(1000 * b.count()) / 1000.0 + " at " + b.unitPrice())
                .toList();
    }

    /** Bank, panels and foam grow; what comes in one piece is bought whole; what shrinks brings nothing back. */
    @Test
    void whatAChangeHasToBuy() {
        assertThat(bought(demo, demo)).isEmpty();
        assertThat(bought(demo, demo.with("battery.capacity", "8.4 kWh"))).containsExactly("battery 2.0 at 500.0");
        assertThat(bought(demo, demo.with("battery.capacity", "3.2 kWh"))).isEmpty();
        assertThat(bought(demo, demo.with("solar.power", "700 W"))).containsExactly("solar 3.0 at 300.0");
        assertThat(bought(demo, demo.with("factory-alternator.charger", "60 A")))
                .containsExactly("charger 60.0 at 7.0");
        assertThat(bought(demo, demo.with("inverter.rated", "3 kW"))).containsExactly("inverter 3.0 at 500.0");
        assertThat(bought(demo, demo.with("cooling.capacity", "3 kW"))).containsExactly("cooling 1.0 at 2500.0");
        assertThat(bought(demo.without("cooling"), demo)).containsExactly("cooling 1.0 at 2500.0");
        assertThat(bought(demo, demo.with("cabin.covers", "insulated"))).containsExactly("covers 1.0 at 400.0");
        Values lead = demo.with("battery.preset", "lead-acid AGM 12 V");
        assertThat(bought(lead, demo)).containsExactly("battery 6.4 at 500.0");
    }

    /** Whether or not the dollars stand behind the amount; what an option says counts as well. */
    @ParameterizedTest
    @ValueSource(strings = {"9000 USD", "9000"})
    void aBudgetInDollarsIsNotHeldAgainstPricesInEuros(String budget) throws Exception {
        ScenarioFile file = ScenarioReader.read(Path.of("scenarios/desert-survey.yaml"));
        ScenarioFile limited = new ScenarioFile(
                file.scenario(),
                demo.with("prices.budget", budget).with("prices.solar", "320 USD"),
                List.of(new ScenarioFile.Option("more", demo.with("prices.battery", "400"))),
                List.of(),
                List.of());
        Map<PricedPart, Double> prices = Map.of(PricedPart.SOLAR, 280.0);
        Values dollars = limited.priced(prices, "USD", "shop.yaml").base();
        assertThat(dollars.number("prices.budget")).isEqualTo(9000);
        assertThat(dollars.number("prices.solar")).isEqualTo(280);
        Values euros = limited.priced(prices, "EUR", "shop.yaml").base();
        assertThat(euros.number("prices.budget")).isNaN();
        assertThat(euros.number("prices.solar")).isEqualTo(280);
        assertThat(limited.pricesApart(prices.keySet(), "USD")).isEmpty();
        assertThat(limited.pricesApart(prices.keySet(), "EUR"))
                .containsExactly(
                        new ScenarioFile.ApartPrice("prices.budget", "USD"),
                        new ScenarioFile.ApartPrice("prices.battery", "USD"));
    }

    /** Masses of lead-acid and of bonded panels are others; common practice, no source. */
    @Test
    void massesFollowChemistryAndMounting() {
        double leadKg = demo.with("battery.preset", "lead-acid AGM 12 V").number("masses.battery");
        assertThat(leadKg).isEqualTo(28);
        assertThat(demo.number("masses.battery")).isEqualTo(10);
        assertThat(demo.with("solar.preset", "bonded panels").number("masses.solar"))
                .isEqualTo(2);
        assertThat(demo.with("masses.solar", "6 kg").number("masses.solar")).isEqualTo(6);
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
