package trimwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;

/** The page files: one shell for every place of the workbench, its modules and styles, and the page libraries. */
final class PageRoutes implements Routes {
    private static final String FOLDER = "trimwright/web/page/";
    private static final List<String> PLACES = List.of(
            "/",
            "/prepare",
            "/card",
            "/explore",
            "/practice",
            "/library",
            "/debrief",
            "/debrief/{session}",
            "/dock",
            "/dock/{session}",
            "/quick",
            "/quick/{session}",
            "/live",
            "/coach");
    private static final Pattern FILE_NAME = Pattern.compile("(?:[a-z-]+/)?[a-z-]+\\.(js|css|svg)");
    private static final Pattern IMPORT_MAP =
            Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
    private static final Map<String, String> MEDIA_TYPES =
            Map.of("js", "text/javascript; charset=utf-8", "css", "text/css; charset=utf-8", "svg", "image/svg+xml");

    private final Asset shell = new Asset(Bundled.get(FOLDER + "index.html"), "text/html; charset=utf-8");
    private final Map<String, Asset> files = new ConcurrentHashMap<>();
    private final Map<String, byte[]> vendorFiles = Vendor.files();

    private record Asset(byte[] bytes, String mediaType, String tag) {
        Asset(byte[] bytes, String mediaType) {
            this(bytes, mediaType, '"' + Bundled.hash(bytes).substring(0, 22) + '"');
        }
    }

    /** CSP source expression of the import map, the only inline script. */
    String inlineScriptHash() {
        Matcher map = IMPORT_MAP.matcher(new String(shell.bytes(), StandardCharsets.UTF_8));
        if (!map.find()) {
            throw new IllegalStateException("the page shell has no import map");
        }
        return "sha256-" + Bundled.hash(map.group(1).getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void addTo(RoutesConfig routes) {
        for (String place : PLACES) {
            routes.get(place, ctx -> send(ctx, shell));
        }
        routes.get("/page/<file>", ctx -> send(ctx, pageFile(ctx.pathParam("file"))));
        routes.get("/vendor/{file}", ctx -> send(ctx, vendorFile(ctx.pathParam("file"))));
    }

    private @Nullable Asset pageFile(String name) {
        return FILE_NAME.matcher(name).matches() ? asset("page/" + name, Bundled.find(FOLDER + name)) : null;
    }

    private @Nullable Asset vendorFile(String name) {
        return asset("vendor/" + name, vendorFiles.get(name));
    }

    private @Nullable Asset asset(String key, byte @Nullable [] bytes) {
        if (bytes == null) {
            return null;
        }
        String ending = key.substring(key.lastIndexOf('.') + 1);
        return files.computeIfAbsent(key, k -> new Asset(bytes, MEDIA_TYPES.getOrDefault(ending, "text/plain")));
    }

    private static void send(Context ctx, @Nullable Asset asset) {
        if (asset == null) {
            throw Refusal.notFound(Texts.of("web.refuse.nothing", ctx.path()));
        }
        // Asked again each time, answered by 304: a newer program never meets an older page.
        ctx.header("Cache-Control", "no-cache").header("ETag", asset.tag());
        if (asset.tag().equals(ctx.header("If-None-Match"))) {
            ctx.status(304);
            return;
        }
        ctx.contentType(asset.mediaType()).result(asset.bytes());
    }
}
