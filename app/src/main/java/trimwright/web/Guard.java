package trimwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;

/**
 * Who may talk to the workbench. It listens on the loopback only; this keeps other sites that are open in the same
 * browser out: a page whose name was pointed at 127.0.0.1 sends its own name as Host and is refused, a request that
 * changes something must come from our own origin, and our pages load nothing from elsewhere.
 */
final class Guard implements Routes {
    private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

    private final String contentSecurityPolicy;

    /** @param inlineScriptHash CSP hash of the only inline script, the import map */
    Guard(String inlineScriptHash) {
        contentSecurityPolicy = "default-src 'none'; script-src 'self' '" + inlineScriptHash + "'; style-src 'self'; "
                + "img-src 'self' data:; media-src blob:; connect-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none'; "
                + "frame-ancestors 'none'";
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.before(this::check);
        routes.wsBeforeUpgrade(this::checkUpgrade);
    }

    /**
     * A browser does not hold web sockets to one origin, so a page's must come from ours. A plain client of this machine
     * names no origin.
     */
    private void checkUpgrade(Context ctx) {
        if (!isOwnHost(ctx.header("Host"), ctx.req().getLocalPort())) {
            throw Refusal.forbidden(Texts.of("web.refuse.host"));
        }
        if (ctx.header("Origin") != null && !isOwnOrigin(ctx)) {
            throw Refusal.forbidden(Texts.of("web.refuse.origin"));
        }
    }

    private void check(Context ctx) {
        ctx.header("Content-Security-Policy", contentSecurityPolicy);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "no-referrer");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        if (ctx.path().startsWith("/api/")) {
            ctx.header("Cache-Control", "no-store");
        }
        if (!isOwnHost(ctx.header("Host"), ctx.req().getLocalPort())) {
            throw Refusal.forbidden(Texts.of("web.refuse.host"));
        }
        if (!READING.contains(ctx.method()) && !isOwnOrigin(ctx)) {
            throw Refusal.forbidden(Texts.of("web.refuse.origin"));
        }
    }

    static boolean isOwnHost(@Nullable String host, int port) {
        if (host == null) {
            return false;
        }
        String name = host.toLowerCase(Locale.ROOT);
        String ending = ":" + port;
        return name.endsWith(ending) && OWN_NAMES.contains(name.substring(0, name.length() - ending.length()));
    }

    private static boolean isOwnOrigin(Context ctx) {
        String origin = ctx.header("Origin");
        return origin != null
                && origin.startsWith("http://")
                && isOwnHost(origin.substring("http://".length()), ctx.req().getLocalPort());
    }
}
