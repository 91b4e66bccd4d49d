package trimwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** What becomes of a request that cannot be answered: a status and {@code {"schema":"fault/1","message":...}}. */
final class Faults implements Routes {
    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);

    @Override
    public void addTo(RoutesConfig routes) {
        routes.exception(Refusal.class, (refusal, ctx) -> send(ctx, refusal.status(), refusal.sentence()));
        routes.exception(UserInputException.class, (fault, ctx) -> send(ctx, 400, String.valueOf(fault.getMessage())));
        routes.exception(NoAnswerException.class, (fault, ctx) -> send(ctx, 422, String.valueOf(fault.getMessage())));
        routes.exception(
                HttpResponseException.class,
                (fault, ctx) -> send(ctx, fault.getStatus(), Texts.of("web.refuse.nothing", ctx.path())));
        // The last stop: whatever else reaches this edge is a fault of ours, logged once with its cause.
        routes.exception(Exception.class, (fault, ctx) -> {
            LOG.error("{} {}", ctx.method(), ctx.path(), fault);
            send(ctx, 500, Texts.of("web.refuse.failed", ctx.path()));
        });
    }

    private static void send(Context ctx, int status, String sentence) {
        ctx.status(status);
        Json.send(ctx, JsonOut.document("fault/1").put("message", sentence));
    }
}
