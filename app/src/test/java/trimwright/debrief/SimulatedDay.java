package trimwright.debrief;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.course.Course;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.intake.Intake;
import trimwright.intake.IntakeOptions;
import trimwright.intake.MappingFile;
import trimwright.raceday.DayMaker;
import trimwright.segment.Matching;
import trimwright.sim.Scenario;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.track.BoatTrack;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;

/** A simulated day with its truth: made, imported through the readers that real logs go through, debriefed. */
final class SimulatedDay {
    static final BoatFile BOAT = BoatFiles.find("whimbrel14");

    private final Path folder;

    private SimulatedDay(Path folder) {
        this.folder = folder;
    }

    static WingSpec wing() {
        return BOAT.boat().wings().get(0);
    }

    /** Sails the day into the folder, unless it is there already. */
    static SimulatedDay of(Scenario scenario, int minutes, Path folder, TargetBook book) {
        if (!Files.exists(folder.resolve("course.toml"))) {
            try {
                new DayMaker(BOAT.boat(), wing(), book, Runtime.getRuntime().availableProcessors())
                        .make(scenario, minutes, folder, Progress.NONE);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        return new SimulatedDay(folder);
    }

    /** @param book to judge by, or null */
    DebriefReport debrief(@Nullable TargetBook book) throws IOException {
        return debrief(book, WindOptions.DEFAULT);
    }

    DebriefReport debrief(@Nullable TargetBook book, WindOptions wind) throws IOException {
        Logged logged = read(List.of(folder));
        return Debrief.of(logged.tracks(), new DebriefOptions(BOAT.boat(), book, logged.course(), wind));
    }

    /** What the library has of a session. */
    record Logged(List<BoatTrack> tracks, @Nullable Course course) {}

    /** Days that follow each other as one session, on the first's course, through the readers that real logs go through. */
    static Logged read(List<Path> folders) throws IOException {
        Path shelf = Files.createTempDirectory("simulated-day");
        Path first = folders.get(0);
        MappingFile map = MappingFile.read(first.resolve("wing-map.toml"));
        IntakeOptions options =
                new IntakeOptions(null, map, null, null, null, first.resolve("course.toml"), ChecksumRule.REQUIRED);
        List<Path> logs = new ArrayList<>();
        for (Path folder : folders) {
            try (Stream<Path> files = Files.list(folder.resolve("logs"))) {
                files.sorted().forEach(logs::add);
            }
        }
        new Intake(shelf, options).run(logs, Progress.NONE);
        try (Library library = Library.open(shelf)) {
            SessionInfo session = library.getSession("latest");
            return new Logged(library.load(session), SessionCourse.find(library, session));
        }
    }

    /** From the clock of a debrief to the time of the truth (s): the day's zero is the first sample but for the sensors' period. */
    static double zero(DebriefReport report) {
        return zero(report.course(), report.clock());
    }

    static double zero(@Nullable Course course, SessionClock clock) {
        if (course == null) {
            throw new IllegalStateException("no course");
        }
        return (course.gunNanos() - clock.startNanos()) / 1e9 - GUN;
    }

    /** The gun goes a minute after the day's zero. */
    private static final double GUN = 60;

    /**
     * Turns of a boat in legs of the course, or the straight stretches of 10 s or more that it was ordered to hold: without
     * those for gathering speed, of which short ones are bridged.
     *
     * @param what {@code straight} or {@code turn}
     */
    List<Matching.Labelled> truth(String boat, String what) throws IOException {
        List<Matching.Labelled> spans = new ArrayList<>();
        int legs = ends(boat).size();
        int leg = -1;
        for (String[] cells : table(boat, "spans")) {
            double from = Double.parseDouble(cells[0]);
            double to = Double.parseDouble(cells[1]);
            int of = Integer.parseInt(cells[5]);
            if (!cells[2].equals(what) || of < 0 || of >= legs || cells[3].equals("gathering")) {
                leg = cells[2].equals("turn") ? -1 : leg;
                continue;
            }
            String kind = what.equals("turn") ? cells[3] : cells[6];
            Matching.Labelled last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
            if (what.equals("straight")
                    && last != null
                    && leg == of
                    && kind.equals(last.kind())
                    && from - last.to() < LEAST) {
                spans.set(spans.size() - 1, new Matching.Labelled(kind, last.from(), to));
            } else {
                spans.add(new Matching.Labelled(kind, from, to));
            }
            leg = of;
        }
        spans.removeIf(span -> what.equals("straight") && span.to() - span.from() < LEAST);
        return spans;
    }

    /** Shortest phase, and shortest departure from one that ends it (s). */
    private static final double LEAST = 10;

    /** Causes of the turns, in the order of {@link #truth}. */
    List<String> causes(String boat) throws IOException {
        List<String> causes = new ArrayList<>();
        int legs = ends(boat).size();
        for (String[] cells : table(boat, "spans")) {
            int leg = Integer.parseInt(cells[5]);
            if (cells[2].equals("turn") && leg >= 0 && leg < legs) {
                causes.add(cells[4]);
            }
        }
        return causes;
    }

    /** When the boat came to the end of each of its legs (s), without the start. */
    List<Double> ends(String boat) throws IOException {
        List<Double> ends = new ArrayList<>();
        for (String[] cells : table(boat, "passages")) {
            if (Integer.parseInt(cells[1]) >= 0) {
                ends.add(Double.parseDouble(cells[0]));
            }
        }
        return ends;
    }

    /** Duration of each leg (s). */
    List<Double> legs(String boat) throws IOException {
        List<Double> legs = new ArrayList<>();
        double last = Double.NaN;
        for (String[] cells : table(boat, "passages")) {
            double time = Double.parseDouble(cells[0]);
            if (Integer.parseInt(cells[1]) >= 0) {
                legs.add(time - last);
            }
            last = time;
        }
        return legs;
    }

    /** The truth of each second: cell 5 the wind that wakes took (kn), cell 16 the leg. */
    List<String[]> seconds(String boat) throws IOException {
        return table(boat, "seconds");
    }

    private List<String[]> table(String boat, String name) throws IOException {
        return table(folder, boat, name);
    }

    static List<String[]> table(Path folder, String boat, String name) throws IOException {
        String file = boat.toLowerCase(Locale.ROOT) + "-" + name + ".csv";
        return Files.readAllLines(folder.resolve("truth").resolve(file)).stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
    }
}
