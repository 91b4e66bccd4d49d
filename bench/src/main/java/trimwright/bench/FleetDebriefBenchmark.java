package trimwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.course.Course;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.SessionCourse;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.intake.Intake;
import trimwright.intake.IntakeOptions;
import trimwright.intake.MappingFile;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.raceday.DayMaker;
import trimwright.sim.Scenario;
import trimwright.sim.ScenarioDraw;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.wind.WindOptions;

/**
 * Debrief of a fleet's day at ten samples a second by targets, tracks at hand: an hour of six simulated boats, and the same hour again
 * and again, or every boat twice, for how it grows.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FleetDebriefBenchmark extends Measured {
    private static final int MINUTES = 60;
    private static final long HOUR = 3_600_000_000_000L;

    @Param({"1", "2", "6"})
    public int hours = 1;

    @Param({"6", "12"})
    public int boats = 6;

    private @Nullable TargetBook book;
    private @Nullable Course course;
    private final BoatFile file = BoatFiles.find("whimbrel14");
    private List<BoatTrack> tracks = List.of();

    @Setup
    public void sail() throws IOException, InterruptedException {
        WingSpec wing = file.boat().wings().get(0);
        TargetBook found = new TargetBooks().of(TargetRequest.of(file, wing), Progress.NONE);
        book = found;
        Path folder = Files.createTempDirectory("fleet-debrief");
        Scenario scenario = ScenarioDraw.of(5);
        new DayMaker(file.boat(), wing, found, 2).make(scenario, MINUTES, folder.resolve("day"), Progress.NONE);
        Path day = folder.resolve("day");
        List<Path> logs;
        try (Stream<Path> all = Files.list(day.resolve("logs"))) {
            logs = all.sorted().toList();
        }
        IntakeOptions options = new IntakeOptions(
                null,
                MappingFile.read(day.resolve("wing-map.toml")),
                null,
                null,
                null,
                day.resolve("course.toml"),
                ChecksumRule.REQUIRED);
        new Intake(folder.resolve("library"), options).run(logs, Progress.NONE);
        try (Library library = Library.open(folder.resolve("library"))) {
            SessionInfo session = library.getSession("latest");
            course = SessionCourse.find(library, session);
            tracks = fleet(library.load(session));
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private List<BoatTrack> fleet(List<BoatTrack> hour) {
        List<BoatTrack> all = new ArrayList<>();
        for (int i = 0; i < boats; i++) {
            BoatTrack one = hour.get(i % hour.size());
            String name = i < hour.size() ? one.boat() : one.boat() + " again";
            all.add(new BoatTrack(name, one.groups().stream().map(this::tiled).toList()));
        }
        return all;
    }

    private ChannelGroup tiled(ChannelGroup hour) {
        int size = hour.size();
        long[] times = new long[hours * size];
        for (int i = 0; i < times.length; i++) {
            times[i] = hour.timeNanos(i % size) + i / size * HOUR;
        }
        List<Channel> channels = new ArrayList<>();
        for (Channel channel : hour.channels()) {
            double[] values = new double[times.length];
            byte[] quality = new byte[times.length];
            double[] known = channel.toArray();
            byte[] marks = channel.qualityToArray();
            for (int i = 0; i < times.length; i++) {
                values[i] = known[i % size];
                quality[i] = marks[i % size];
            }
            channels.add(new Channel(channel.path(), values, quality));
        }
        return new ChannelGroup(hour.name(), times, channels);
    }

    @Benchmark
    public DebriefReport byTargets() {
        return Debrief.of(tracks, new DebriefOptions(file.boat(), book, course, WindOptions.DEFAULT));
    }
}
