package trimwright.store;

import java.util.List;

/** What a session holds of one boat: its name as given, and its groups of channels. */
public record BoatInfo(String boat, List<GroupInfo> groups) {
    public BoatInfo {
        groups = List.copyOf(groups);
    }

    /** Names of all its channels, in the order of the groups. */
    public List<String> paths() {
        return groups.stream()
                .flatMap(group -> group.paths().stream())
                .distinct()
                .toList();
    }
}
