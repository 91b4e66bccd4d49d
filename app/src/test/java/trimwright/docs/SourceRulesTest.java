package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the formatter and the compiler cannot see. */
class SourceRulesTest {
    private static final String CORE = "core/src/main/java";
    private static final String APP = "app/src/main/java";

    @Test
    void unitsAreConvertedInOnePlace() {
        assertEquals(
                List.of(),
                hits(
                        List.of(CORE, APP, "core/src/test/java", "app/src/test/java"),
                        "(?<![\\d.])(1\\.94384\\d*|1\\.9438|0\\.51444\\d*|0\\.5144|57\\.2957\\d*|57\\.3|0\\.0174532\\d*|0\\.01745)(?!\\d)",
                        List.of("/units/", "src/test/")));
    }

    @Test
    void coreKnowsOtherUnitsOnlyWhereDataEnters() {
        assertEquals(
                List.of(),
                hits(
                        List.of(CORE),
                        "\\b[a-z]\\w*(Kn|Deg|Knots|Degrees|Percent|Millis)\\b(?!\\()",
                        List.of("/units/", "/ingest/")));
    }

    @Test
    void onlyCommandsWriteToTheStandardStreams() {
        assertEquals(
                List.of(), hits(List.of(CORE, APP), "System\\.(out|err)\\b|printStackTrace\\(\\)", List.of("/cli/")));
    }

    @Test
    void importsAreNamedOneByOne() {
        assertEquals(
                List.of(),
                hits(List.of(CORE, APP, "core/src/test/java", "app/src/test/java"), "^import .*\\*;", List.of()));
    }

    @Test
    void thereIsOneMechanismForWhatMayBeAbsent() {
        assertEquals(List.of(), hits(List.of(CORE, APP), "\\bjava\\.util\\.Optional;", List.of()));
    }

    @Test
    void nothingIsLeftForLaterOrSwitchedOff() {
        assertEquals(
                List.of(),
                hits(
                        List.of(CORE, APP, "core/src/test/java", "app/src/test/java", "app/src/main/resources"),
                        "TO" + "DO|FIX" + "ME|@Dis" + "abled(?!OnOs)",
                        List.of()));
    }

    @Test
    void numbersAreTheSameOnEveryMachine() {
        // Math may answer differently in the last place from one Java or processor to another; a simulated race grows
        // that
        // into another race. What is exact by definition (sqrt, rounding, sign) is left.
        assertEquals(
                List.of(),
                hits(
                        List.of(CORE, APP),
                        "(?<!Strict)\\bMath(\\.|::)(sin|cos|tan|asin|acos|atan|atan2|sinh|cosh|tanh|exp|expm1|log|log10|log1p|pow|"
                                + "cbrt|hypot)\\b",
                        List.of()));
    }

    @Test
    void numbersAreFormattedAlikeInEveryLocale() {
        assertEquals(
                List.of(),
                hits(
                        List.of(CORE, APP),
                        "String\\.format\\(\\s*\"|\\.formatted\\(|toLowerCase\\(\\)|toUpperCase\\(\\)",
                        List.of()));
    }

    /** Lines of Java sources that match, as {@code path:line: text}; path parts that are allowed are left out. */
    private static List<String> hits(List<String> folders, String regex, List<String> allowed) {
        Pattern pattern = Pattern.compile(regex);
        List<String> hits = new ArrayList<>();
        for (String folder : folders) {
            for (Path file : ProjectFiles.below(folder, ".java")) {
                String shown = ProjectFiles.shown(file);
                if (allowed.stream().anyMatch(shown::contains)) {
                    continue;
                }
                List<String> lines = ProjectFiles.read(file).lines().toList();
                for (int i = 0; i < lines.size(); i++) {
                    if (pattern.matcher(lines.get(i)).find()) {
                        hits.add(shown + ":" + (i + 1) + ": " + lines.get(i).strip());
                    }
                }
            }
        }
        return hits;
    }
}
