package trimwright.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import trimwright.prepare.TargetBooks;
import trimwright.store.Library;

/** Puts together what the workbench shows. */
public final class Services {
    private Services() {}

    /**
     * All families of addresses.
     *
     * @param library whose sessions are shown; stays open until the workbench is closed
     * @param boatFiles to pick from beside the boats of the program
     */
    public static List<Routes> of(Library library, List<Path> boatFiles) {
        return of(library, boatFiles, new TargetBooks());
    }

    /** The same, with target books that the program may have made before. */
    public static List<Routes> of(Library library, List<Path> boatFiles, TargetBooks books) {
        BoatShelf boats = new BoatShelf(boatFiles);
        TargetShelf targets = new TargetShelf(boats, books);
        SessionShelf sessions = new SessionShelf(library);
        DebriefShelf debriefs = new DebriefShelf(sessions, boats, targets);
        return List.of(
                new BoatRoutes(boats),
                new TargetRoutes(targets),
                new CardRoutes(boats, targets, Clock.system(ZoneId.systemDefault())),
                new SetupRoutes(boats, books),
                new ExploreRoutes(boats, targets),
                new SessionRoutes(sessions, debriefs));
    }
}
