package trimwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What becomes of a request that cannot be answered: a status and {@code {"schema":"fault/1","message":...}}. */
final class Faults implements Routes {
    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);

    @Override
    public void addTo(RoutesConfig routes) {
        routes.exception(Refusal.class, (refusal, ctx) -> send(ctx, refusal.status(), refusal.sentence()));
        routes.exception(
                HttpResponseException.class,
                (fault, ctx) -> send(ctx, fault.getStatus(), "There is nothing at " + ctx.path() + "."));
        // The last stop: whatever else reaches this edge is a fault of ours, logged once with its cause.
        routes.exception(Exception.class, (fault, ctx) -> {
            LOG.error("{} {}", ctx.method(), ctx.path(), fault);
            send(ctx, 500, "The workbench failed at " + ctx.path() + "; the terminal it runs in has the details.");
        });
    }

    private static void send(Context ctx, int status, String sentence) {
        ctx.status(status);
        Json.send(ctx, Json.document("fault/1").put("message", sentence));
    }
}
