package trimwright.web;

import io.javalin.config.RoutesConfig;

/** One family of addresses of the workbench. */
@FunctionalInterface
public interface Routes extends AutoCloseable {
    void addTo(RoutesConfig routes);

    /** Called when the workbench stops. */
    @Override
    default void close() {}
}
