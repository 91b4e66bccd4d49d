package trimwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The picture of the edges: a package of app may see what its row lists of app, and all of core. */
class AppArchitectureTest {
    private static final Map<String, Set<String>> MAY_SEE = new TreeMap<>(Map.ofEntries(
            Map.entry("text", Set.of()),
            Map.entry("keyfile", Set.of("text")),
            Map.entry("boatfile", Set.of("text", "keyfile")),
            Map.entry("coursefile", Set.of("text", "keyfile")),
            Map.entry("raceday", Set.of("text", "keyfile", "boatfile", "coursefile", "prepare")),
            Map.entry("store", Set.of("text")),
            Map.entry("intake", Set.of("text", "keyfile", "coursefile", "store")),
            Map.entry("recording", Set.of("text", "store", "intake")),
            Map.entry("prepare", Set.of("text", "boatfile")),
            Map.entry("cards", Set.of("text", "boatfile", "prepare")),
            Map.entry("choice", Set.of("text", "keyfile", "boatfile", "prepare")),
            Map.entry("plans", Set.of("text", "store")),
            Map.entry("drills", Set.of("text", "boatfile", "prepare", "raceday", "plans")),
            Map.entry("dockside", Set.of("text", "boatfile", "store")),
            Map.entry("sensors", Set.of("text", "boatfile", "store")),
            Map.entry("debrief", Set.of("text", "boatfile", "coursefile", "store", "prepare", "plans", "sensors")),
            Map.entry("season", Set.of("text", "boatfile", "store", "prepare", "drills", "debrief")),
            Map.entry("report", Set.of("text", "store", "debrief")),
            Map.entry(
                    "web",
                    Set.of(
                            "text",
                            "keyfile",
                            "boatfile",
                            "store",
                            "prepare",
                            "cards",
                            "choice",
                            "debrief",
                            "season",
                            "report",
                            "dockside",
                            "sensors",
                            "drills",
                            "plans",
                            "recording")),
            Map.entry(
                    "cli",
                    Set.of(
                            "text",
                            "keyfile",
                            "boatfile",
                            "coursefile",
                            "raceday",
                            "store",
                            "intake",
                            "prepare",
                            "cards",
                            "choice",
                            "drills",
                            "plans",
                            "debrief",
                            "season",
                            "report",
                            "dockside",
                            "sensors",
                            "recording",
                            "web")),
            Map.entry(
                    "Main",
                    Set.of(
                            "text",
                            "keyfile",
                            "boatfile",
                            "coursefile",
                            "raceday",
                            "store",
                            "intake",
                            "prepare",
                            "cards",
                            "choice",
                            "drills",
                            "plans",
                            "debrief",
                            "season",
                            "report",
                            "dockside",
                            "sensors",
                            "recording",
                            "web",
                            "cli"))));

    private static final List<JavaClass> MAIN = new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPath(Path.of(System.getProperty("trimwright.target", "target"), "classes"))
                    .stream()
                    .toList();

    @Test
    void everyPackageSeesOnlyWhatThePictureAllows() {
        Set<String> ours = MAY_SEE.keySet();
        Set<String> breaches = new TreeSet<>();
        for (JavaClass from : MAIN) {
            Set<String> allowed = MAY_SEE.get(noun(from));
            if (allowed == null) {
                breaches.add("package " + noun(from) + " is not in the picture");
                continue;
            }
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                String to = noun(dependency.getTargetClass());
                if (ours.contains(to) && !to.equals(noun(from)) && !allowed.contains(to)) {
                    breaches.add(from.getName() + " sees "
                            + dependency.getTargetClass().getName());
                }
            }
        }
        assertEquals(Set.of(), breaches);
    }

    @Test
    void everyPackageIsNullMarked() {
        Set<String> unmarked = new TreeSet<>();
        for (JavaClass from : MAIN) {
            if (!noun(from).equals("Main")
                    && !from.getPackage().isAnnotatedWith("org.jspecify.annotations.NullMarked")) {
                unmarked.add(from.getPackageName());
            }
        }
        assertEquals(Set.of(), unmarked);
    }

    /** The package below trimwright, {@code Main} for the wiring, nothing for classes that are not ours. */
    private static String noun(JavaClass javaClass) {
        if (!javaClass.getName().startsWith("trimwright.")) {
            return "";
        }
        String[] parts = javaClass.getPackageName().split("\\.", -1);
        return parts.length < 2 ? "Main" : parts[1];
    }
}
