package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Reads the constants of the main sources with their comments. */
class ChosenConstantsDocTest {
    private static final Pattern CONSTANT = Pattern.compile(
            "^\\s*(?:public |private |protected )?static final (\\w[\\w<>\\[\\], ]*) ([A-Z][A-Z0-9_]*)\\s*=\\s*(.*)$");

    private static final Pattern CITED = Pattern.compile(
            "(?i)chosen|exact|defin|memory|common practice|fitted|rounded|\\b(19|20)\\d\\d\\b|table \\d|eq\\.|"
                    + "(?-i:\\b(?:ITTC|IEC|ISO|NACA|[A-Z][a-z]{2,} and [A-Z][a-z]{2,})\\b)|docs/theory");

    /** Packages whose numbers are physics: a constant there without a word of where it comes from is a fault. */
    private static final List<String> MODEL =
            List.of("air", "water", "section", "wing", "foil", "hull", "platform", "wake", "weather");

    private record Constant(
            String where, String type, String name, String value, String comment, String classComment) {}

    @Test
    void theListHasEveryConstantThatWasChosen() {
        StringBuilder table =
                new StringBuilder("| where | constant | value | what the code says |\n|---|---|---|---|\n");
        for (Constant constant : constants()) {
            if (constant.comment.toLowerCase(java.util.Locale.ROOT).contains("chosen")) {
                table.append("| " + constant.where + " | `" + constant.name + "` | `"
                        + constant.value.replaceAll("[({]$", "$0...") + "` | " + constant.comment.replace("|", "\\|")
                        + " |\n");
            }
        }
        GeneratedBlock.check("docs/validation.md", "chosen constants", table.toString());
    }

    @Test
    void everyNumberOfTheModelNamesItsSourceOrSaysChosen() {
        List<String> silent = new ArrayList<>();
        for (Constant constant : constants()) {
            boolean model = MODEL.stream().anyMatch(noun -> constant.where.startsWith("core " + noun + "."));
            boolean plainNumber =
                    constant.type.equals("double") && constant.value.matches("-?[\\d_.]+(?:[eE]-?\\d+)?[dLf]?");
            boolean trivial = constant.value.matches("-?[012](\\.0)?");
            if (model
                    && plainNumber
                    && !trivial
                    && !CITED.matcher(constant.comment).find()
                    && !CITED.matcher(constant.classComment).find()) {
                silent.add(
                        constant.where + " " + constant.name + " = " + constant.value + " [" + constant.comment + "]");
            }
        }
        assertEquals(List.of(), silent);
    }

    private static List<Constant> constants() {
        List<Constant> constants = new ArrayList<>();
        for (String module : List.of("core", "app")) {
            for (Path file : ProjectFiles.below(module + "/src/main/java", ".java")) {
                String where = module + " "
                        + ProjectFiles.shown(file)
                                .replace(module + "/src/main/java/trimwright/", "")
                                .replace(".java", "")
                                .replace('/', '.');
                read(where, ProjectFiles.read(file).lines().toList(), constants);
            }
        }
        return constants;
    }

    private static void read(String where, List<String> lines, List<Constant> constants) {
        String comment = "";
        String classComment = "";
        boolean inComment = false;
        for (String line : lines) {
            String bare = line.strip();
            if (inComment || bare.startsWith("//") || bare.startsWith("/*")) {
                comment = inComment || bare.startsWith("//") ? comment + " " + bare : bare;
                inComment = (inComment || bare.startsWith("/*")) && !bare.contains("*/");
                continue;
            }
            if (classComment.isEmpty() && bare.matches(".*\\b(class|record|enum|interface) [A-Z].*")) {
                classComment = words(comment);
            }
            Matcher constant = CONSTANT.matcher(line);
            if (constant.matches()) {
                String rest = constant.group(3);
                int trailing = rest.indexOf("//");
                String value = (trailing < 0 ? rest : rest.substring(0, trailing))
                        .strip()
                        .replaceAll(";$", "");
                String own = trailing < 0 ? comment : comment + " " + rest.substring(trailing);
                constants.add(
                        new Constant(where, constant.group(1), constant.group(2), value, words(own), classComment));
            }
            // A comment counts for the constants that follow it without an empty line.
            if (!constant.matches() && !bare.startsWith("@")) {
                comment = "";
            }
        }
    }

    private static String words(String comment) {
        return comment.replaceAll("/\\*\\*?|\\*/|//", " ")
                .replaceAll("(^|\\s)\\*(\\s|$)", " ")
                .replaceAll("\\{@(?:link|code) ([^}]*)}", "$1")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
