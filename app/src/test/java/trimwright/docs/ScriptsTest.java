package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The scripts that people start, as far as they run without building. */
@DisabledOnOs(OS.WINDOWS)
class ScriptsTest {
    @TempDir
    Path folder;

    @Test
    void whatIsWrongIsSaidInOneLine() throws Exception {
        assertRefused(
                run(Map.of("TRIMWRIGHT_HEAP", "much"), "trimwright", "where"),
                "trimwright: TRIMWRIGHT_HEAP is \"much\".");
        assertRefused(
                run(Map.of("TRIMWRIGHT_HEAP", "0g"), "trimwright", "where"), "trimwright: TRIMWRIGHT_HEAP is \"0g\".");
        assertRefused(
                run(Map.of("TRIMWRIGHT_JAVA_HOME", folder.toString()), "trimwright", "where"),
                "trimwright: TRIMWRIGHT_JAVA_HOME, \"" + folder + "\", is not");
        assertRefused(run(Map.of(), "verify", "--all"), "verify: unknown argument --all.");
        assertRefused(run(Map.of(), "verify", "--jdk", "newest"), "verify: --jdk needs a number");
        assertRefused(run(Map.of(), "verify", "--jdk"), "verify: --jdk needs a number");
    }

    @Test
    void helpIsTheHeadOfTheScript() throws Exception {
        for (String script : List.of("verify", "bench/run")) {
            Ended help = run(Map.of(), script, "--help");
            assertEquals(0, help.exit);
            assertTrue(help.out.contains(script) && !help.out.contains("set -eu"), help.out);
            assertEquals("", help.err);
        }
    }

    @Test
    void theNewestJavaWithACompilerIsTaken() throws Exception {
        makeJava("eight", "1.8.0_392", "java", "javac");
        makeJava("seventeen", "17.0.15", "java", "javac");
        makeJava("twentyone", "21.0.2", "java", "javac");
        makeJava("thirty", "30", "java");
        makeJava("early", "31-ea", "java", "javac");
        makeJava("odd", "unknown", "java", "javac");
        assertEquals("early 31-ea 31", found("eight seventeen twentyone thirty early odd", ""));
        assertEquals("twentyone 21.0.2 21", found("thirty twentyone seventeen", ""));
        assertEquals("thirty 30 30", found("eight thirty", ""));
        assertEquals("seventeen 17.0.15 17", found("twentyone seventeen thirty", "17"));
        assertEquals("none", found("twentyone thirty", "17"));
        assertEquals("none", found("eight odd", ""));
    }

    /** Folder, version and major version that find_java settles on among those. */
    private String found(String candidates, String wanted) throws Exception {
        Path script = Files.writeString(
                folder.resolve("find.sh"),
                "set -eu\n. '" + ProjectFiles.ROOT.resolve("scripts/java.sh") + "'\ncd '" + folder + "'\n"
                        + "java_candidates() { printf '%s\\n' " + candidates + "; }\n"
                        + "if find_java " + wanted
                        + "; then echo \"$java_home $java_version $java_major\"; else echo none; fi\n");
        Ended ended = run(Map.of(), script.toString());
        assertEquals("", ended.err);
        return ended.out.strip();
    }

    private void makeJava(String name, String version, String... programs) throws IOException {
        Path bin = Files.createDirectories(folder.resolve(name).resolve("bin"));
        Files.writeString(folder.resolve(name).resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
        for (String program : programs) {
            assertTrue(Files.writeString(bin.resolve(program), "").toFile().setExecutable(true));
        }
    }

    private static void assertRefused(Ended ended, String beginning) {
        assertEquals(2, ended.exit, ended.err);
        assertTrue(ended.err.startsWith(beginning), ended.err);
        assertEquals(1, ended.err.lines().count(), ended.err);
        assertEquals("", ended.out);
    }

    private Ended run(Map<String, String> environment, String script, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(
                List.of("bash", ProjectFiles.ROOT.resolve(script).toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile());
        builder.environment().remove("TRIMWRIGHT_JAVA_HOME");
        builder.environment().putAll(environment);
        Process process = builder.start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError(command + " does not end");
        }
        return new Ended(process.exitValue(), text("out"), text("err"));
    }

    private String text(String file) throws IOException {
        return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
    }

    private record Ended(int exit, String out, String err) {}
}
