package trimwright.store;

import java.util.List;

/**
 * One Parquet file of a session.
 *
 * @param name of the group of channels
 * @param file path inside the session's folder, with {@code /}
 * @param rows number of time stamps
 * @param startNanos first time stamp (ns since 1970, UTC)
 * @param endNanos last time stamp
 * @param paths names of its channels
 */
public record GroupInfo(String name, String file, int rows, long startNanos, long endNanos, List<String> paths) {
    public GroupInfo {
        paths = List.copyOf(paths);
    }
}
