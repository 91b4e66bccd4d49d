package trimwright.web;

import io.javalin.config.RoutesConfig;

/** One family of addresses of the workbench. */
@FunctionalInterface
public interface Routes {
    void addTo(RoutesConfig routes);
}
