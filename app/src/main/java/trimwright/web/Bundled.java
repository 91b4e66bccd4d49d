package trimwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** Bytes that travel with the program on its class path. */
final class Bundled {
    private Bundled() {}

    /** The resource's bytes, or null where there is none. */
    static byte @Nullable [] find(String path) {
        try (InputStream in = Bundled.class.getClassLoader().getResourceAsStream(path)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the bundled file " + path, e);
        }
    }

    static byte[] get(String path) {
        byte[] bytes = find(path);
        if (bytes == null) {
            throw new IllegalStateException("the program lacks its bundled file " + path);
        }
        return bytes;
    }

    /** Version of a library on the class path, as its Maven record states it. */
    static String versionOf(String group, String artifact) {
        Properties record = new Properties();
        String path = "META-INF/maven/" + group + "/" + artifact + "/pom.properties";
        try {
            record.load(new java.io.StringReader(new String(get(path), StandardCharsets.ISO_8859_1)));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the bundled file " + path, e);
        }
        return record.getProperty("version");
    }

    /** SHA-256 in base 64. */
    static String hash(byte[] bytes) {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
