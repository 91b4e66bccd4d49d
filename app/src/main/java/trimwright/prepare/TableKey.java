package trimwright.prepare;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.profile.WingProfile;
import trimwright.section.TableGrid;

/** What a table of computed sections depends on, as 64 hexadecimal digits: outlines, nodes, and the classes that compute. */
final class TableKey {
    /** Packages whose classes decide what a column holds. A change elsewhere in the program leaves tables as they are. */
    private static final List<String> PACKAGES = List.of("profile", "panel", "layer", "polar");

    private TableKey() {}

    /** The key, or null where the program cannot tell which program it is. */
    static @Nullable String of(List<WingProfile> profiles, TableGrid grid) {
        MessageDigest digest = BookKey.sha256();
        if (!ModelFingerprint.addTo(digest, TableKey::decides)) {
            return null;
        }
        digest.update((profiles + "\n" + grid).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest.digest());
    }

    private static boolean decides(String classFile) {
        return PACKAGES.stream().anyMatch(name -> classFile.contains("trimwright/" + name + "/"));
    }
}
