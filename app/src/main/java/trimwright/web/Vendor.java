package trimwright.web;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** The few page libraries, taken from their Maven jars on the class path. */
final class Vendor {
    private Vendor() {}

    /** File name under {@code /vendor/} to content. */
    static Map<String, byte[]> files() {
        String preact = webjar("preact") + "/";
        String uplot = webjar("uplot") + "/dist/";
        String htm = "META-INF/resources/_static/htm/" + Bundled.versionOf("org.mvnpm", "htm") + "/dist/";
        Map<String, byte[]> files = new TreeMap<>();
        files.put("preact.js", Bundled.get(preact + "dist/preact.module.js"));
        files.put("hooks.js", Bundled.get(preact + "hooks/dist/hooks.module.js"));
        files.put("htm.js", Bundled.get(htm + "htm.module.js"));
        files.put("uplot.js", asModule(Bundled.get(uplot + "uPlot.iife.min.js")));
        files.put("uplot.css", Bundled.get(uplot + "uPlot.min.css"));
        return files;
    }

    private static String webjar(String name) {
        return "META-INF/resources/webjars/" + name + "/" + Bundled.versionOf("org.webjars.npm", name);
    }

    /** The jar's module form is three times the size of its script form, so the script is sent with an export. */
    private static byte[] asModule(byte[] script) {
        String text = new String(script, StandardCharsets.UTF_8);
        return (text + "\nexport default uPlot;\n").getBytes(StandardCharsets.UTF_8);
    }
}
