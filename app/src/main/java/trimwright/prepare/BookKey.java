package trimwright.prepare;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import trimwright.platform.Variable;

/** What a book depends on, as 64 hexadecimal digits: boat file, wing, grid, held controls, foils, and the program itself. */
final class BookKey {
    private BookKey() {}

    /** The key, or null where the program cannot tell which program it is. */
    static @Nullable String of(TargetRequest request) {
        MessageDigest digest = sha256();
        if (!ModelFingerprint.addTo(digest)) {
            return null;
        }
        StringBuilder rest = new StringBuilder();
        rest.append(request.wing().id()).append('\n');
        rest.append(request.grid().winds()).append('\n');
        rest.append(request.grid().angles()).append('\n');
        for (Map.Entry<Variable, Double> held : new TreeMap<>(request.held()).entrySet()) {
            rest.append(held.getKey().name())
                    .append('=')
                    .append(held.getValue())
                    .append('\n');
        }
        rest.append(request.foils().name()).append('\n');
        rest.append(request.section().key()).append('\n');
        rest.append(request.boat().text());
        digest.update(rest.toString().getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest.digest());
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
