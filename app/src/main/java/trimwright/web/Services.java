package trimwright.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import trimwright.plans.KeptPlans;
import trimwright.prepare.SectionSource;
import trimwright.prepare.TargetBooks;
import trimwright.season.KeptLearned;
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
        return of(library, boatFiles, books, SectionSource.CLOSED_FORM);
    }

    /**
     * The same.
     *
     * @param section where the flow about the wings' sections shall come from; the closed form until tables are there
     */
    public static List<Routes> of(Library library, List<Path> boatFiles, TargetBooks books, SectionSource section) {
        BoatShelf boats = new BoatShelf(boatFiles);
        SectionShelf sections = new SectionShelf(
                boats, section, (wing, progress) -> books.sectionsOf(wing, SectionSource.COMPUTED, progress));
        TargetShelf targets = new TargetShelf(boats, books, sections);
        SessionShelf sessions = new SessionShelf(library);
        DebriefShelf debriefs = new DebriefShelf(sessions, boats, targets);
        return List.of(
                new BoatRoutes(boats, new KeptLearned(library.folder())),
                sections,
                new TargetRoutes(targets),
                new CardRoutes(boats, targets, Clock.system(ZoneId.systemDefault())),
                new SetupRoutes(boats, books),
                new PlanRoutes(boats, targets),
                new ExploreRoutes(boats, targets),
                new PracticeRoutes(boats, targets, new KeptPlans(library.folder())),
                new MomentRoutes(sessions, boats),
                new DockRoutes(sessions, boats),
                new CalibrationRoutes(sessions, boats),
                new SessionRoutes(sessions, debriefs));
    }
}
