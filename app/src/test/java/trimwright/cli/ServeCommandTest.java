package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class ServeCommandTest {
    @Test
    void aPortInUseIsOneLineAndExitTwo(@TempDir Path folder) throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            int port = taken.getLocalPort();
            CliRun run = CliRun.in(folder, "serve", "--port", Integer.toString(port));
            assertEquals(2, run.exit());
            assertEquals(
                    "Port " + port
                            + " on 127.0.0.1 is in use by another program. Choose another with --port, or --port 0"
                            + " for any free one.\n",
                    run.err());
            assertEquals("", run.out());
        }
    }

    @Test
    void whatCannotBeServedIsSaidBeforeTheServerStarts(@TempDir Path folder) {
        CliRun port = CliRun.in(folder, "serve", "--port", "70000");
        assertEquals(2, port.exit());
        assertEquals("--port is 70000; a port is a number from 0 to 65535.\n", port.err());
        CliRun boat = CliRun.in(folder, "serve", "--boat", "nowhere.toml");
        assertEquals(2, boat.exit());
        assertEquals("No boat file nowhere.toml. Give the path of a file that exists.\n", boat.err());
    }

    /** The signal of Ctrl-C is sent by name, which only Unix has. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void itPrintsItsAddressServesAndEndsOnCtrlC(@TempDir Path folder) throws Exception {
        Process served = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "trimwright.Main",
                        "serve",
                        "--library",
                        folder.toString(),
                        "--port",
                        "0")
                .start();
        try (BufferedReader out = served.inputReader()) {
            String line = String.valueOf(out.readLine());
            assertTrue(line.startsWith("The workbench is at http://127.0.0.1:"), line);
            URI address = URI.create(line.substring(line.indexOf("http")) + "api/sessions");
            HttpResponse<String> answer = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
            CliRun listed = CliRun.in(folder, "sessions", "--json", "--library", folder.toString());
            assertEquals(listed.out(), answer.body());
            boolean deaf = isInterruptIgnored();
            new ProcessBuilder("kill", deaf ? "-TERM" : "-INT", Long.toString(served.pid()))
                    .start()
                    .waitFor();
            assertTrue(served.waitFor(20, TimeUnit.SECONDS), "still running 20 s after the signal");
            assertEquals(deaf ? 143 : 130, served.exitValue());
        } finally {
            served.destroyForcibly();
        }
    }

    /** A shell starts background jobs deaf to Ctrl-C and children inherit that; then the other end signal is tried. */
    private static boolean isInterruptIgnored() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.isReadable(status)) {
            return false;
        }
        for (String line : Files.readAllLines(status)) {
            if (line.startsWith("SigIgn:")) {
                return (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0;
            }
        }
        return false;
    }
}
