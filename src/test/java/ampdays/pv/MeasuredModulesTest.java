package ampdays.pv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Power of measured modules over light and temperature. Source: NREL mPERT data set, 2014, repackaged by A. Driesse, 2019;
 * flash measurements with an uncertainty of about 2.8 % in power for crystalline modules. The files are not part of the
 * project.
 */
class MeasuredModulesTest {
    private static final Path FOLDER = Path.of("../shared/reference/pv/mpert");
    private static final Pattern GAMMA = Pattern.compile("gamma_mp: (-?[0-9.]+)");
    private static final Pattern ROW = Pattern.compile("\\d+,20\\d\\d-.*");

    private record Point(double cellC, double irradianceWm2, double bestV, double bestW) {}

    private record Module(double gammaPerK, List<Point> points) {
        double ratedW() {
            return points.stream()
                    .filter(p -> p.cellC == 25 && p.irradianceWm2 == 1000)
                    .findFirst()
                    .orElseThrow()
                    .bestW;
        }

        double errorOf(Point p, double ratedW, double lowLightShare) {
            return PvModule.dcW(p.irradianceWm2, p.cellC, ratedW, gammaPerK, lowLightShare) / p.bestW - 1;
        }

        List<Point> brightAndWarm() {
            return points.stream()
                    .filter(p -> p.irradianceWm2 >= 600 && p.cellC >= 25)
                    .toList();
        }
    }

    private static Module read(String name) throws IOException {
        Path file = FOLDER.resolve(name + ".txt");
        Assumptions.assumeTrue(Files.exists(file), () -> "skipped: there is no " + file);
        double gammaPerK = Double.NaN;
        List<Point> points = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            Matcher gamma = GAMMA.matcher(line);
            if (gamma.find()) {
                gammaPerK = Double.parseDouble(gamma.group(1)) / 100;
            } else if (ROW.matcher(line).matches()) {
                String[] cells = line.split(",", -1);
                points.add(new Point(
                        Double.parseDouble(cells[2]),
                        Double.parseDouble(cells[3]),
                        Double.parseDouble(cells[7]),
                        Double.parseDouble(cells[8])));
            }
        }
        return new Module(gammaPerK, points);
    }

    /**
     * The linear model over 600 to 1100 W/m² and 25 to 65 °C, with the module's own temperature coefficient. Rated by its
     * measurement at 1000 W/m² and 25 °C it stays within 3 % on four of six; two small multicrystalline modules lose more at
     * 600 W/m², 3.5 and 3.8 %. With the rating that fits the range best, all are within 3 %.
     */
    @ParameterizedTest
    @CsvSource({
        "HIT05662, 0.01",
        "xSi12922, 0.012",
        "xSi11246, 0.03",
        "mSi460A8, 0.02",
        "mSi0166, 0.036",
        "mSi0188, 0.04"
    })
    void linearWhenBrightAndWarm(String name, double worst) throws IOException {
        Module module = read(name);
        double ratedW = module.ratedW();
        double[] errors = module.brightAndWarm().stream()
                .mapToDouble(p -> module.errorOf(p, ratedW, 0))
                .sorted()
                .toArray();
        assertThat(errors).hasSize(12);
        double least = errors[0];
        double most = errors[errors.length - 1];
        assertThat(Math.abs(least)).isLessThanOrEqualTo(worst);
        assertThat(most).isLessThanOrEqualTo(worst);
        assertThat((most - least) / (2 + least + most)).isLessThanOrEqualTo(0.03);
    }

    /**
     * With the term for weak light, down to 200 W/m² and from 15 to 65 °C, each module with the k that docs/MODEL.md lists for
     * its technology. Within 1.5 %, which is less than the measurement's own uncertainty; the module with cracked cells 4 %.
     */
    @ParameterizedTest
    @CsvSource({
        "HIT05662, 0.0058, 0.015",
        "xSi12922, 0.0035, 0.015",
        "xSi11246, 0, 0.04",
        "mSi460A8, 0.0178, 0.015",
        "mSi0166, 0.0267, 0.015",
        "mSi0188, 0.0238, 0.015"
    })
    void withWeakLight(String name, double lowLightShare, double worst) throws IOException {
        Module module = read(name);
        for (Point p : module.points()) {
            if (p.irradianceWm2 >= 200) {
                assertThat(Math.abs(module.errorOf(p, module.ratedW(), lowLightShare)))
                        .as("%s at %s", name, p)
                        .isLessThanOrEqualTo(worst);
            }
        }
    }

    /** The default k of 0.5 % on the two healthy modules of newer technology: within 2 % down to 200 W/m². */
    @ParameterizedTest
    @CsvSource({"HIT05662", "xSi12922"})
    void withTheDefault(String name) throws IOException {
        Module module = read(name);
        for (Point p : module.points()) {
            if (p.irradianceWm2 >= 200) {
                assertThat(Math.abs(module.errorOf(p, module.ratedW(), 0.005)))
                        .as("%s at %s", name, p)
                        .isLessThanOrEqualTo(0.02);
            }
        }
    }

    /**
     * What a pulse-width controller has to work with, in full light and heat: the best voltage by its linear coefficient, within
     * 3 %, the band that the coefficients of crystalline modules leave at 65 °C and their resistance at 1100 W/m².
     */
    @ParameterizedTest
    @CsvSource({"xSi12922", "xSi11246", "mSi460A8", "mSi0166", "mSi0188"})
    void bestVoltageWhenBright(String name) throws IOException {
        Module module = read(name);
        double ratedV = module.points().stream()
                .filter(p -> p.cellC == 25 && p.irradianceWm2 == 1000)
                .findFirst()
                .orElseThrow()
                .bestV;
        for (Point p : module.brightAndWarm()) {
            if (p.irradianceWm2 >= 800) {
                assertThat(PulseWidth.bestV(ratedV, p.cellC) / p.bestV - 1)
                        .as("%s at %s", name, p)
                        .isBetween(-0.03, 0.03);
            }
        }
    }
}
