package trimwright.web;

import io.javalin.config.RoutesConfig;

/** Target books. */
final class TargetRoutes implements Routes {
    private final TargetShelf shelf;

    TargetRoutes(TargetShelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/targets", shelf::answer);
    }

    @Override
    public void close() {
        shelf.close();
    }
}
