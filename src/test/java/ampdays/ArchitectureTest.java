package ampdays;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who may use whom. The map is an allow-list: what is not written here is refused. */
class ArchitectureTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("ampdays");

    private static final List<String> PHYSICS = List.of(
            "heat", "weather", "sun", "pv", "cabin", "cooling", "alternator", "battery", "load", "trip", "wiring");

    /** Package to the packages of ours that it may use. */
    private static final Map<String, List<String>> MAY_USE = mayUse();

    private static Map<String, List<String>> mayUse() {
        Map<String, List<String>> map = new TreeMap<>();
        map.put("units", List.of());
        map.put("heat", List.of());
        for (String physics : List.of("weather", "sun", "load", "trip", "wiring")) {
            map.put(physics, List.of("units"));
        }
        map.put("pv", List.of("units", "sun"));
        map.put("log", List.of("units"));
        // an audit tells loads, and when they run
        map.put("audit", List.of("units", "load"));
        for (String withHeatNodes : List.of("cabin", "cooling", "alternator", "battery")) {
            map.put(withHeatNodes, List.of("units", "heat"));
        }
        // a commissioning sheet as data; what it predicts comes from the bench
        map.put("commission", List.of("units"));
        List<String> zeroAndOne = join(List.of("units"), PHYSICS);
        map.put("scenario", zeroAndOne);
        map.put("results", List.of("units"));
        map.put("sim", join(zeroAndOne, List.of("scenario", "results")));
        map.put("commission.bench", join(zeroAndOne, List.of("commission", "scenario")));
        // a reconciliation lays a log beside a run
        map.put("study", List.of("units", "log", "scenario", "results", "sim", "wiring"));
        // who offers the work, and what it asks for the parts that a scenario prices
        map.put("shop", List.of("scenario"));
        map.put("io", join(zeroAndOne, List.of("audit", "commission", "log", "scenario", "results", "shop")));
        map.put("chart", List.of("units", "results", "study"));
        map.put("chart.jfree", List.of("chart", "units"));
        // what a client must do is the timetable in words, so a report reads the trip
        map.put("report", List.of("units", "trip", "results", "study", "scenario", "wiring", "chart", "shop"));
        // a commissioning sheet is printed by the same layout as a proposal
        map.put("report.page", List.of("report", "shop", "chart", "chart.jfree", "commission"));
        map.put(
                "cli",
                join(
                        zeroAndOne,
                        List.of(
                                "audit",
                                "commission",
                                "commission.bench",
                                "log",
                                "scenario",
                                "results",
                                "sim",
                                "study",
                                "io",
                                "chart",
                                "chart.jfree",
                                "report",
                                "report.page",
                                "shop")));
        return map;
    }

    private static List<String> join(List<String> a, List<String> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    @Test
    void everyPackageIsOnTheMapAndUsesOnlyWhatItMay() {
        List<String> unknown = new ArrayList<>(CLASSES.stream()
                .map(c -> c.getPackageName().replaceFirst("^ampdays\\.", ""))
                .distinct()
                .toList());
        unknown.removeAll(MAY_USE.keySet());
        assertThat(unknown).as("packages that the map does not know").isEmpty();

        MAY_USE.forEach((name, allowed) -> {
            String[] packages = Stream.concat(
                            Stream.of("ampdays." + name), allowed.stream().map(p -> "ampdays." + p))
                    .toArray(String[]::new);
            classes()
                    .that()
                    .resideInAPackage("ampdays." + name)
                    .should()
                    .onlyDependOnClassesThat(resideInAnyPackage(packages).or(resideOutsideOfPackage("ampdays..")))
                    .as(name + " uses only " + allowed)
                    .allowEmptyShould(true)
                    .check(CLASSES);
        });
    }

    @Test
    void thereAreNoCycles() {
        slices().matching("ampdays.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void onlyItsOwnCornerTouchesEachLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackages("ampdays.chart.jfree", "ampdays.report.page")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.jfree..", "org.apache.batik..", "java.awt..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideOutsideOfPackage("ampdays.io")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.snakeyaml..", "com.fasterxml..", "org.apache.commons.csv..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideOutsideOfPackage("ampdays.report.page")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("gg.jte..", "com.openhtmltopdf..", "org.apache.pdfbox..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideOutsideOfPackage("ampdays.cli")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("picocli..", "me.tongfei..")
                .check(CLASSES);
    }

    @Test
    void belowTheCommandLineNothingReadsTheClockTheLocaleOrTheConsole() {
        var below = noClasses().that().resideOutsideOfPackage("ampdays.cli").should();
        below.accessField(System.class, "out").check(CLASSES);
        below.accessField(System.class, "err").check(CLASSES);
        below.callMethod(System.class, "currentTimeMillis").check(CLASSES);
        below.callMethod(System.class, "nanoTime").check(CLASSES);
        below.callMethod(java.time.ZoneId.class, "systemDefault").check(CLASSES);
        below.callMethod(java.time.Instant.class, "now").check(CLASSES);
        below.callMethod(java.time.LocalDate.class, "now").check(CLASSES);
        below.callMethod(java.util.Locale.class, "getDefault").check(CLASSES);
        below.callMethod(Math.class, "random").check(CLASSES);
        below.callConstructor(java.util.Random.class).check(CLASSES);
    }

    @Test
    void staticsAreConstants() {
        fields().that()
                .areStatic()
                .and()
                .doNotHaveModifier(JavaModifier.SYNTHETIC)
                .should()
                .beFinal()
                .allowEmptyShould(true)
                .check(CLASSES);
    }
}
