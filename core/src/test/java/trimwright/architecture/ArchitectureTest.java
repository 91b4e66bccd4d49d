package trimwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The picture in docs/architecture.md as a test: a package may see what its row lists, and nothing else of ours. */
class ArchitectureTest {
    private static final Map<String, Set<String>> MAY_SEE = new TreeMap<>(Map.ofEntries(
            Map.entry("units", Set.of()),
            Map.entry("arithmetic", Set.of()),
            Map.entry("boat", Set.of("units")),
            Map.entry("chance", Set.of()),
            Map.entry("weather", Set.of("units", "arithmetic", "chance", "water")),
            Map.entry("course", Set.of("units")),
            Map.entry("air", Set.of("units")),
            Map.entry("water", Set.of("units")),
            Map.entry("profile", Set.of()),
            Map.entry("panel", Set.of("arithmetic", "profile")),
            Map.entry("layer", Set.of("arithmetic", "profile", "panel")),
            Map.entry("section", Set.of("arithmetic", "units", "air")),
            Map.entry("polar", Set.of("profile", "panel", "layer", "section")),
            Map.entry("wing", Set.of("units", "air", "boat", "section")),
            Map.entry("foil", Set.of("units", "water", "boat")),
            Map.entry("hull", Set.of("units", "water", "boat")),
            Map.entry("platform", Set.of("units", "air", "water", "boat", "section", "wing", "foil", "hull")),
            Map.entry("target", Set.of("units", "air", "water", "boat", "section", "wing", "foil", "platform")),
            Map.entry("power", Set.of("units", "boat")),
            Map.entry(
                    "card",
                    Set.of(
                            "units",
                            "air",
                            "water",
                            "boat",
                            "wing",
                            "foil",
                            "platform",
                            "target",
                            "power",
                            "motion",
                            "flight")),
            Map.entry("aim", Set.of("units", "weather", "boat", "platform", "target", "card")),
            Map.entry("setup", Set.of("units", "air", "water", "weather", "boat", "platform", "target", "card", "aim")),
            Map.entry(
                    "motion",
                    Set.of("units", "arithmetic", "air", "water", "boat", "section", "wing", "foil", "hull", "power")),
            Map.entry("flight", Set.of("boat", "motion")),
            Map.entry("crew", Set.of("units", "boat", "course", "motion", "flight")),
            Map.entry(
                    "sim",
                    Set.of(
                            "units", "air", "water", "boat", "wing", "chance", "weather", "course", "motion", "crew",
                            "dock")),
            Map.entry("practice", Set.of("units", "air", "water", "boat", "weather", "motion", "crew")),
            Map.entry("turn", Set.of("air", "water", "boat", "chance", "weather", "motion", "crew", "practice")),
            Map.entry(
                    "start",
                    Set.of("air", "water", "boat", "weather", "motion", "crew", "practice", "course", "units")),
            Map.entry("response", Set.of("units", "air", "water", "boat", "weather", "motion", "crew", "practice")),
            Map.entry("learned", Set.of("units", "wind", "segment", "target", "response")),
            Map.entry("magnetic", Set.of()),
            Map.entry("track", Set.of("units")),
            Map.entry("ingest", Set.of("units", "track")),
            Map.entry("wind", Set.of("units", "air", "boat", "track", "magnetic")),
            Map.entry("segment", Set.of("units", "boat", "track", "wind", "course")),
            Map.entry("dock", Set.of("units", "boat", "track", "compare")),
            Map.entry("calibration", Set.of("units", "air", "boat", "track", "wind", "wing", "dock")),
            Map.entry("fleet", Set.of("units", "chance", "wind", "segment")),
            Map.entry(
                    "live",
                    Set.of(
                            "units",
                            "air",
                            "boat",
                            "track",
                            "ingest",
                            "wind",
                            "segment",
                            "platform",
                            "target",
                            "aim",
                            "response")),
            Map.entry("call", Set.of("units", "boat", "segment", "live")),
            Map.entry(
                    "compare",
                    Set.of("units", "air", "boat", "track", "wind", "segment", "platform", "target", "course"))));

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("trimwright");

    @Test
    void everyPackageSeesOnlyWhatThePictureAllows() {
        List<String> breaches = new ArrayList<>();
        for (JavaClass from : MAIN) {
            String own = noun(from);
            Set<String> allowed = MAY_SEE.get(own);
            if (allowed == null) {
                breaches.add("package " + own + " is not in the picture");
                continue;
            }
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                JavaClass to = dependency.getTargetClass();
                if (to.getPackageName().startsWith("trimwright")
                        && !noun(to).equals(own)
                        && !allowed.contains(noun(to))) {
                    breaches.add(from.getName() + " sees " + to.getName());
                }
            }
        }
        assertEquals(List.of(), breaches.stream().distinct().sorted().toList());
    }

    @Test
    void coreKnowsNoFilesSocketsThreadsOrClocks() {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass from : MAIN) {
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                JavaClass to = dependency.getTargetClass();
                String name = to.getName();
                if (resideInAPackage("java.net..").test(to)
                        || resideInAPackage("java.nio.file..").test(to)
                        || resideInAPackage("java.util.concurrent..").test(to)
                        || name.equals("java.lang.Thread")
                        || name.equals("java.time.Clock")
                        || name.equals("java.io.File")) {
                    breaches.add(from.getName() + " uses " + name);
                }
            }
        }
        assertEquals(Set.of(), breaches);
    }

    @Test
    void everyPackageSaysWhatIsInItAndIsNullMarked() {
        for (JavaClass javaClass : MAIN) {
            assertTrue(
                    javaClass.getPackage().isAnnotatedWith("org.jspecify.annotations.NullMarked"),
                    javaClass.getPackageName() + " has no @NullMarked package-info");
        }
    }

    private static String noun(JavaClass javaClass) {
        String[] parts = javaClass.getPackageName().split("\\.", -1);
        return parts.length < 2 ? "" : parts[1];
    }
}
