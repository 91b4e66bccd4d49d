package trimwright.web;

import io.javalin.http.Context;

/** Answers with a page that stands alone: its style inside, nothing that runs, nothing fetched. */
final class StandAlone {
    private StandAlone() {}

    /** @param name of the file that a browser keeps it as, without ending */
    static void send(Context ctx, String name, String html) {
        ctx.status(200);
        ctx.header("Content-Disposition", "inline; filename=\"" + name + ".html\"");
        ctx.header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'");
        ctx.contentType("text/html; charset=utf-8").result(html);
    }
}
