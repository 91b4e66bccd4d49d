package trimwright.ingest.signalk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trimwright.ingest.SourceChoice;

/** The values of one boat, those of each source and path apart: two devices that send the same path never mix. */
final class DeltaGroups {
    private final Map<String, Map<List<String>, DeltaRows>> sources = new LinkedHashMap<>();

    /** Adds what an update says; see {@link DeltaRows#add}. */
    void add(String source, long place, long line, long mark, List<String> paths, double[] values) {
        Map<List<String>, DeltaRows> known = sources.computeIfAbsent(source, name -> new LinkedHashMap<>());
        Set<List<String>> touched = new LinkedHashSet<>();
        for (String path : paths) {
            touched.add(DeltaRows.together(path));
        }
        for (List<String> channels : touched) {
            known.computeIfAbsent(channels, DeltaRows::new).add(place, line, mark, paths, values);
        }
    }

    /** Everything with its time, named {@code signalk-}, source, path. */
    List<SourceChoice.Source> placed(DeltaRows.Placing placing) {
        List<SourceChoice.Source> all = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Map.Entry<String, Map<List<String>, DeltaRows>> source : sources.entrySet()) {
            String device = unused("signalk-" + DeltaSource.word(source.getKey()), taken);
            for (DeltaRows rows : source.getValue().values()) {
                all.add(new SourceChoice.Source(
                        device + "-" + rows.word(), device, 0, SourceChoice.Origin.DEVICE, rows.placed(placing)));
            }
        }
        return all;
    }

    /** Two sources whose names differ only in marks, as wind.1 and wind-1, stay two. */
    private static String unused(String wanted, Set<String> taken) {
        String name = wanted;
        for (int i = 2; !taken.add(name); i++) {
            name = wanted + "-" + i;
        }
        return name;
    }
}
