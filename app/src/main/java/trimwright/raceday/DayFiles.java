package trimwright.raceday;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trimwright.course.CourseGeometry;
import trimwright.course.LocalPlane;
import trimwright.coursefile.CourseText;
import trimwright.sim.BoatRun;

/** Everything that a simulated day leaves behind, as texts by their paths below the day's folder. */
final class DayFiles {
    private DayFiles() {}

    static Map<String, String> of(DayPlan plan, List<BoatRun> runs) {
        LocalPlane plane = new CourseGeometry(plan.course()).plane();
        Map<String, String> files = new TreeMap<>();
        files.put("course.toml", CourseText.of(plan.course()));
        files.put("wing-map.toml", WingTable.MAPPING);
        files.put("truth/scenario.toml", ScenarioText.of(plan.scenario()));
        for (BoatRun run : runs) {
            String boat = run.entry().name().toLowerCase(Locale.ROOT);
            files.put("logs/" + boat + ".nmea", NmeaLog.of(run.readings(), plane, plan.zeroNanos()));
            files.put("logs/" + boat + "-wing.csv", WingTable.of(run.readings(), plan.zeroNanos()));
            files.put("truth/" + boat + "-seconds.csv", TruthTables.seconds(run));
            files.put("truth/" + boat + "-spans.csv", TruthTables.spans(run));
            files.put("truth/" + boat + "-passages.csv", TruthTables.passages(run));
        }
        return files;
    }

    /** Writes them; what lies at these paths is overwritten, what else lies in the folder stays. */
    static List<Path> write(Map<String, String> files, Path folder) throws IOException {
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue(), StandardCharsets.UTF_8);
            written.add(path);
        }
        return written;
    }
}
