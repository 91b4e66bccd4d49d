package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class ValidationDocTest {
    private record Row(String source, String where, String test, String tolerance) {}

    private static final List<Row> ROWS = rows();

    @Test
    void theTableListsEveryCheckAgainstAnOutsideSource() {
        StringBuilder table =
                new StringBuilder("| source | where in it | what is checked | tolerance |\n|---|---|---|---|\n");
        for (Row row : ROWS) {
            table.append("| `" + row.source + "` | " + row.where + " | " + row.test + " | " + row.tolerance + " |\n");
        }
        GeneratedBlock.check("docs/validation.md", "validated against", table.toString());
    }

    @Test
    void everySourceIsListed() {
        Set<String> listed = new TreeSet<>();
        Matcher key = Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE)
                .matcher(ProjectFiles.read(ProjectFiles.ROOT.resolve("docs/sources.md")));
        List<String> twice = new ArrayList<>();
        while (key.find()) {
            if (!listed.add(key.group(1))) {
                twice.add(key.group(1));
            }
        }
        assertEquals(List.of(), twice, "in docs/sources.md more than once");
        Set<String> missing = new TreeSet<>();
        ROWS.forEach(row -> missing.add(row.source));
        missing.removeAll(listed);
        assertEquals(Set.of(), missing, "not in docs/sources.md");
    }

    @Test
    void checksAgainstSourcesStandInValidationTests() {
        assertTrue(ROWS.size() > 5, "the compiled tests were not found");
        List<String> elsewhere = ROWS.stream()
                .map(Row::test)
                .filter(test -> !test.contains("Validation"))
                .toList();
        assertEquals(List.of(), elsewhere, "classes whose name does not end in ValidationTest");
    }

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (JavaClass javaClass : new ClassFileImporter().importPackages("trimwright")) {
            for (JavaMethod method : javaClass.getMethods()) {
                if (method.isAnnotatedWith(ValidatedAgainst.class)) {
                    ValidatedAgainst checked = method.getAnnotationOfType(ValidatedAgainst.class);
                    rows.add(new Row(
                            checked.source(),
                            cell(checked.where()),
                            cell(sentence(method.getName()) + " (`" + javaClass.getSimpleName() + "`)"),
                            cell(checked.tolerance())));
                }
            }
        }
        rows.sort(Comparator.comparing(Row::source).thenComparing(Row::test));
        return rows;
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replaceAll("\\s+", " ").strip();
    }

    /** {@code easingTheWingReducesHeel} to {@code easing the wing reduces heel}. */
    private static String sentence(String methodName) {
        return methodName
                .replaceAll("([a-z0-9])([A-Z])", "$1 $2")
                .replaceAll("([a-z])([0-9])", "$1 $2")
                .toLowerCase(Locale.ROOT);
    }
}
