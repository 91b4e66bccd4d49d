package trimwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.course.Course;
import trimwright.coursefile.CourseFiles;
import trimwright.debrief.CrewLines;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.DebriefRequest;
import trimwright.debrief.KeptDebriefs;
import trimwright.debrief.QuickDocument;
import trimwright.debrief.SessionCourse;
import trimwright.learned.LearnedTargets;
import trimwright.plans.KeptPlan;
import trimwright.plans.KeptPlans;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.report.DayReport;
import trimwright.season.KeptLearned;
import trimwright.season.Learned;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.wind.SpeedSource;
import trimwright.wind.WindOptions;

/** Debriefs one session of the library. */
@Command(name = "debrief")
public final class DebriefCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(paramLabel = "SESSION", descriptionKey = "debrief.session")
    private String session;

    @Option(names = "--boat", paramLabel = "BOAT", descriptionKey = "debrief.boat_option")
    private @Nullable String boat;

    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SetupOption setup = new SetupOption();

    @Mixin
    private final SectionOption section = new SectionOption();

    @Mixin
    private final LearnedOption taught = new LearnedOption();

    @Option(names = "--speed", paramLabel = "SOURCE", descriptionKey = "debrief.speed_option")
    private @Nullable String speed;

    @Option(names = "--wind-as-logged", descriptionKey = "debrief.as_logged_option")
    private boolean asLogged;

    @Option(names = "--course", paramLabel = "COURSE", descriptionKey = "debrief.course_option")
    private @Nullable Path course;

    @Option(names = "--turn-plan", paramLabel = "FILE", descriptionKey = "debrief.turn_plan_option")
    private List<Path> plans = List.of();

    @Mixin
    private final QuickOption quick = new QuickOption();

    @Mixin
    private final ReportOption report = new ReportOption();

    private final Console console;
    private final Folders folders;
    private final TargetBooks books;

    public DebriefCommand(Console console, Folders folders, TargetBooks books) {
        this.books = books;
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() throws InterruptedException {
        quick.check();
        WindOptions wind = new WindOptions(
                WindOptions.DEFAULT.longestGap(),
                speedSource(),
                asLogged ? WindOptions.Sensors.AS_LOGGED : WindOptions.Sensors.CORRECTED);
        BoatFile file = boat == null ? setup.withoutBoat() : setup.of(BoatFiles.find(boat));
        WingSpec spec = file == null ? null : wing.of(file.boat());
        if (file == null && taught.isWanted()) {
            throw new UserInputException(Texts.of("debrief.learned_of_no_boat"));
        }
        Learned learned = file == null || spec == null ? null : taught.of(file, spec, library, folders);
        Course given = course == null ? null : CourseFiles.read(course);
        try (Library shelf = Library.open(library.folder(folders))) {
            SessionInfo info = shelf.getSession(session);
            DebriefRequest request = new DebriefRequest(
                    info,
                    file,
                    spec,
                    given,
                    wind,
                    section.source(),
                    plans(shelf, file, spec),
                    shelf.calibrations(info).findInForce(),
                    learned == null ? null : learned.targets());
            KeptDebriefs kept = new KeptDebriefs(shelf.derived(request.session()));
            KeptDebriefs.Printed printed = kept.find(request);
            if (printed == null) {
                printed = kept.print(request, make(shelf, request).with(request.plans()));
            }
            if (report.isAsked()) {
                String told = report.write(page(shelf, request, printed).html());
                console.text(common.json() ? printed.json() : told + "\n");
            } else if (quick.isAsked()) {
                QuickDocument six = quick.of(printed.json(), new CrewLines(shelf.folder()));
                console.text(common.json() ? JsonOut.text(six.json()) : six.text());
            } else {
                console.text(common.json() ? printed.json() : printed.text());
            }
        }
        return CommandRunner.DONE;
    }

    private DayReport page(Library shelf, DebriefRequest request, KeptDebriefs.Printed printed)
            throws InterruptedException {
        BoatFile file = request.boat();
        WingSpec spec = request.wing();
        return DayReport.of(
                JsonOut.read(printed.json()),
                request.session(),
                shelf.load(request.session()),
                courseOf(shelf, request),
                file == null || spec == null ? null : against(request, file, targets(file, spec)));
    }

    /** Those given, or else those that the library keeps for that boat and wing. */
    private List<KeptPlan> plans(Library shelf, @Nullable BoatFile file, @Nullable WingSpec spec) {
        if (!plans.isEmpty()) {
            return plans.stream().map(KeptPlans::read).toList();
        }
        KeptPlans kept = new KeptPlans(shelf.folder());
        return file == null || spec == null
                ? kept.list()
                : kept.list(file.boat().name(), spec.id());
    }

    private static @Nullable Course courseOf(Library shelf, DebriefRequest request) {
        Course given = request.course();
        return given == null ? SessionCourse.find(shelf, request.session()) : given;
    }

    private DebriefReport make(Library shelf, DebriefRequest request) throws InterruptedException {
        BoatFile file = request.boat();
        WingSpec spec = request.wing();
        Course sailed = courseOf(shelf, request);
        if (file == null || spec == null) {
            DebriefOptions plain = new DebriefOptions(null, null, sailed, request.wind());
            return Debrief.of(shelf.load(request.session()), plain.with(request.corrections()));
        }
        Sections sections = section.sections(spec, books, console);
        TargetBook model = targets(file, spec);
        DebriefOptions options = new DebriefOptions(
                file.boat(),
                model,
                sailed,
                request.wind(),
                sections,
                request.corrections(),
                request.learned() == null ? null : against(request, file, model));
        return Debrief.of(shelf.load(request.session()), options);
    }

    /** The book that speeds are held against. */
    private static TargetBook against(DebriefRequest request, BoatFile file, TargetBook model) {
        LearnedTargets learned = request.learned();
        return learned == null ? model : KeptLearned.book(model, learned, file);
    }

    private TargetBook targets(BoatFile file, WingSpec spec) throws InterruptedException {
        return console.book(books, TargetRequest.of(file, spec, TargetRequest.defaultGrid(), section.source()));
    }

    private @Nullable SpeedSource speedSource() {
        if (speed == null) {
            return null;
        }
        return switch (speed) {
            case "over-ground" -> SpeedSource.OVER_GROUND;
            case "through-water" -> SpeedSource.THROUGH_WATER;
            default -> throw new UserInputException(Texts.of("debrief.no_speed", speed));
        };
    }
}
