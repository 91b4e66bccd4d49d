package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import trimwright.cli.CommandNames;

class PagesTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern COMMAND = Pattern.compile("(?:\\./)?\\btrimwright ((?:[a-z-]+ ?)+)");

    @Test
    void everyLinkBetweenPagesLeadsSomewhere() {
        List<String> broken = new ArrayList<>();
        for (Path page : ProjectFiles.below(".", ".md")) {
            Matcher link = LINK.matcher(ProjectFiles.read(page));
            while (link.find()) {
                String target = link.group(1);
                if (target.matches("[a-z]+:.*")) {
                    continue;
                }
                String[] parts = target.split("#", 2);
                Path file = parts[0].isEmpty()
                        ? page
                        : page.resolveSibling(parts[0]).normalize();
                if (!Files.exists(file)) {
                    broken.add(ProjectFiles.shown(page) + ": " + target);
                } else if (parts.length == 2 && !anchors(file).contains(parts[1])) {
                    broken.add(ProjectFiles.shown(page) + ": no heading for " + target);
                }
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void everyTheoryAndDecisionIsInItsIndex() {
        List<String> missing = new ArrayList<>();
        for (String folder : List.of("docs/theory", "docs/decisions")) {
            String index = ProjectFiles.read(ProjectFiles.ROOT.resolve(folder).resolve("README.md"));
            for (Path page : ProjectFiles.below(folder, ".md")) {
                String name = page.getFileName().toString();
                if (!name.equals("README.md") && !index.contains("](" + name + ")")) {
                    missing.add(ProjectFiles.shown(page));
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void everyCommandThatAPageNamesExists() {
        Set<String> known = CommandNames.all();
        List<String> unknown = new ArrayList<>();
        for (Path page : ProjectFiles.below(".", ".md")) {
            for (String code : codeOf(ProjectFiles.read(page))) {
                Matcher command = COMMAND.matcher(code);
                while (command.find()) {
                    String first = command.group(1).strip().split(" ", 2)[0];
                    if (!known.contains(first)) {
                        unknown.add(ProjectFiles.shown(page) + ": trimwright " + first);
                    }
                }
            }
        }
        assertEquals(List.of(), unknown);
    }

    @Test
    void theMapInTheReadmeNamesEveryPackage() {
        String readme = ProjectFiles.read(ProjectFiles.ROOT.resolve("README.md"));
        String map = readme.substring(readme.indexOf("## Map"));
        Set<String> missing = new TreeSet<>();
        for (String module : List.of("core", "app")) {
            for (Path page : ProjectFiles.below(module + "/src/main/java/trimwright", "package-info.java")) {
                String noun = ProjectFiles.shown(page).split("/", -1)[5];
                if (!map.contains("`" + noun + "`")) {
                    missing.add(module + " " + noun);
                }
            }
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyLibraryThatShipsIsNamedWithItsLicence() {
        String notices = ProjectFiles.read(ProjectFiles.ROOT.resolve("THIRD-PARTY.md"));
        List<String> named = Pattern.compile("`([\\w.-]+)`")
                .matcher(notices.lines().filter(line -> line.startsWith("|")).collect(Collectors.joining("\n")))
                .results()
                .map(match -> match.group(1))
                .toList();
        assertTrue(named.size() > 10);
        List<String> silent = new ArrayList<>();
        for (Path jar : libraries()) {
            String name = jar.getFileName().toString();
            if (named.stream().noneMatch(name::startsWith)) {
                silent.add(name);
            }
        }
        assertEquals(List.of(), silent, "not in THIRD-PARTY.md");
    }

    @Test
    void textsAreDefinedOnce() {
        Map<String, Long> counts = ProjectFiles.read(
                        ProjectFiles.ROOT.resolve("app/src/main/resources/trimwright/text/messages.properties"))
                .lines()
                .filter(line -> !line.startsWith("#") && line.contains("="))
                .collect(Collectors.groupingBy(
                        line -> line.substring(0, line.indexOf('=')).strip(), Collectors.counting()));
        assertEquals(
                List.of(),
                counts.entrySet().stream()
                        .filter(entry -> entry.getValue() > 1)
                        .map(Map.Entry::getKey)
                        .toList());
    }

    /** What the last build copied beside the jar; empty before the first. */
    private static List<Path> libraries() {
        return ProjectFiles.jarsOf("app/target/lib").stream()
                .filter(jar -> !jar.getFileName().toString().startsWith("trimwright-"))
                .toList();
    }

    private static List<String> codeOf(String page) {
        List<String> code = new ArrayList<>();
        Matcher fenced = Pattern.compile("(?s)```.*?```|`[^`\n]+`").matcher(page);
        while (fenced.find()) {
            code.add(fenced.group());
        }
        return code;
    }

    private static Set<String> anchors(Path page) {
        Set<String> anchors = new TreeSet<>();
        for (String line : ProjectFiles.read(page).lines().toList()) {
            if (line.startsWith("#")) {
                anchors.add(line.replaceFirst("^#+ ", "")
                        .toLowerCase(java.util.Locale.ROOT)
                        .replaceAll("[^\\w\\- ]", "")
                        .replace(' ', '-'));
            }
        }
        return anchors;
    }
}
