package trimwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Asks the desktop to show an address; a machine without one is left alone. */
final class WebBrowser {
    private WebBrowser() {}

    /** Whether something was asked to show it. */
    static boolean show(String address) {
        List<String> command = command(address);
        if (command == null) {
            return false;
        }
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            // No such program here: the address is printed anyway.
            return false;
        }
    }

    private static @Nullable List<String> command(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("mac")) {
            return List.of("open", address);
        }
        if (system.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        boolean desktop = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        return desktop ? List.of("xdg-open", address) : null;
    }
}
