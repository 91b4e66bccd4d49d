package trimwright.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The running server of the pages, on the loopback only. */
public final class Workbench implements AutoCloseable {
    /** Chosen: one person with a few tabs; Jetty itself needs three of them. */
    private static final int THREADS = 16;

    private final Javalin server;
    private final List<Routes> all;

    private Workbench(Javalin server, List<Routes> all) {
        this.server = server;
        this.all = all;
    }

    /**
     * Starts to answer.
     *
     * @param services what there is to show; closed with the workbench
     * @param port on 127.0.0.1; 0 for any free one
     * @throws UserInputException if another program has that port
     */
    public static Workbench start(List<Routes> services, int port) {
        PageRoutes pages = new PageRoutes();
        List<Routes> all = new ArrayList<>();
        all.add(new Guard(pages.inlineScriptHash()));
        all.add(new Faults());
        all.add(pages);
        all.add(new TextRoutes());
        all.addAll(services);
        Javalin server = Javalin.create(config -> configure(config, all));
        try {
            server.start("127.0.0.1", port);
        } catch (JavalinBindException e) {
            throw new UserInputException(Texts.of("web.port_in_use", port), e);
        }
        return new Workbench(server, all);
    }

    private static void configure(JavalinConfig config, List<Routes> all) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.compressionStrategy = CompressionStrategy.GZIP;
        config.jetty.threadPool = new QueuedThreadPool(THREADS, 4);
        for (Routes routes : all) {
            routes.addTo(config.routes);
        }
    }

    public int port() {
        return server.port();
    }

    /** What to type into the browser's address line. */
    public String address() {
        return "http://127.0.0.1:" + port() + "/";
    }

    @Override
    public void close() {
        server.stop();
        all.forEach(Routes::close);
    }
}
