package ampdays.report;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.report.Block.Points;
import ampdays.report.Block.Sheet;
import ampdays.results.Finding.Severity;
import ampdays.results.WiringFinding;
import ampdays.results.WiringResult;
import ampdays.results.WiringRow;
import ampdays.results.WiringRule;
import ampdays.units.UnitSystem;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The words of invented circuits; no outside source. 32 °C are 90 °F by hand. */
class WiringPartTest {
    private static final WiringFinding MAY_OPEN = new WiringFinding(
            Severity.CAUTION,
            "air conditioner",
            WiringRule.HOLD,
            "54 A; in air of 32 °C a thermal breaker of 70 A holds 45 A",
            0,
            12,
            54,
            45,
            "A",
            "worst-joint 0.05 mΩ");

    private static WiringRow row(String circuit, String protection, double ratingA) {
        double none = Double.NaN;
        return new WiringRow(
                circuit,
                "bus",
                "load",
                "AWG 6",
                "13 mm²",
                2,
                false,
                54,
                50,
                60,
                0.2,
                0.016,
                0.03,
                "cabin",
                32,
                50,
                60,
                protection,
                ratingA,
                none,
                none,
                1000,
                none);
    }

    private static Part part() {
        WiringResult result = new WiringResult(
                "as it is",
                ZoneOffset.UTC,
                false,
                12.8,
                2000,
                List.of(
                        row("air conditioner", "thermal breaker", 70),
                        row("lights", "blade fuse", 7.5),
                        row("starter", "none", Double.NaN)),
                List.of(MAY_OPEN),
                List.of(),
                List.of());
        return WiringPart.of(List.of(result), new Say(UnitSystem.US));
    }

    @Test
    void aFindingSaysWhatIsWrongAndWhatCuresIt() {
        Points points = (Points) part().blocks().get(2);
        assertThat(points.points())
                .containsExactly(new Block.Point(
                        "Caution, air conditioner.",
                        "Protection may open. 54 A; in air of 90 °F a thermal breaker of 70 A holds 45 A. Remedy:"
                                + " worst-joint 0.05 mΩ."));
    }

    @Test
    void protectionIsToldWithItsRating() {
        Sheet sheet = (Sheet) part().blocks().get(1);
        assertThat(sheet.rows())
                .extracting(row -> row.cells().get(5))
                .containsExactly("thermal breaker 70 A", "blade fuse 7.5 A", "none");
    }
}
