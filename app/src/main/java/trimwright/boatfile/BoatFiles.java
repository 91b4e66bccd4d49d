package trimwright.boatfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.keyfile.Fault;
import trimwright.keyfile.KeyFile;
import trimwright.keyfile.KeyTable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Finds, reads and checks boat files. */
public final class BoatFiles {
    /** Names of the boats that come with the program. */
    public static final List<String> SHIPPED = List.of("whimbrel14");

    /** Chosen: a boat file has about a hundred lines; a larger file is another thing, named by mistake. */
    private static final int MOST_BYTES = 1_000_000;

    private static final Set<String> HEADSAILS = Set.of(
            "jib", "headsail", "genoa", "genua", "foresail", "staysail", "gennaker", "spinnaker", "code0", "forestay");

    private BoatFiles() {}

    /** The table that checker, loader and docs/formats.md share. */
    public static KeyTable keys() {
        return BoatKeys.TABLE;
    }

    /**
     * The boat that {@code --boat} names: a path if it contains a slash or ends in .toml, else a shipped boat.
     *
     * @throws UserInputException if there is no such file or boat, or the file has faults: a line for each
     */
    public static BoatFile find(String given) {
        byte[] bytes = isPath(given) ? readFile(given) : readShipped(given);
        return parse(given, bytes);
    }

    /** The boat of a shipped file, as text with its comments. */
    public static String shippedText(String name) {
        return new String(readShipped(name), StandardCharsets.UTF_8);
    }

    /** All faults of a file that exists, in the order of the file. */
    public static List<Fault> check(String path) {
        return check(readFile(path));
    }

    static boolean isPath(String given) {
        return given.contains("/") || given.contains("\\") || given.endsWith(".toml");
    }

    public static BoatFile parse(String name, byte[] bytes) {
        List<Fault> faults = check(bytes);
        if (!faults.isEmpty()) {
            throw new UserInputException(
                    faults.stream().map(fault -> fault.text(name)).collect(Collectors.joining("\n")));
        }
        String text = decode(bytes);
        KeyFile file = KeyFile.read(String.valueOf(text), BoatKeys.TABLE, BoatFiles::refusal);
        return new BoatFile(
                BoatLoader.load(file.values()), MarkLoader.load(file.values()), String.valueOf(text), hash(bytes));
    }

    static List<Fault> check(byte[] bytes) {
        String text = decode(bytes);
        if (text == null) {
            return List.of(new Fault(0, "", Texts.of("boatfile.not_text")));
        }
        KeyFile file = KeyFile.read(text, BoatKeys.TABLE, BoatFiles::refusal);
        List<Fault> faults = new ArrayList<>(file.faults());
        if (faults.stream().noneMatch(fault -> fault.key().isEmpty())) {
            faults.addAll(PossibleBoat.check(file.values()));
        }
        return faults.stream().distinct().sorted(Fault.BY_PLACE).toList();
    }

    private static @Nullable String refusal(String key) {
        boolean headsail =
                Arrays.stream(key.toLowerCase(Locale.ROOT).split("[_-]", -1)).anyMatch(HEADSAILS::contains);
        return headsail ? Texts.of("boatfile.headsail") : null;
    }

    private static byte[] readFile(String given) {
        Path path = Path.of(given);
        try {
            if (Files.isDirectory(path)) {
                throw new UserInputException(Texts.of("boatfile.folder", given));
            }
            if (Files.size(path) > MOST_BYTES) {
                throw new UserInputException(Texts.of("boatfile.too_large", given, Files.size(path), MOST_BYTES));
            }
            return Files.readAllBytes(path);
        } catch (NoSuchFileException e) {
            throw new UserInputException(Texts.of("boatfile.no_file", given, String.join(", ", SHIPPED)), e);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("boatfile.unreadable", given, e), e);
        }
    }

    private static byte[] readShipped(String name) {
        if (!SHIPPED.contains(name)) {
            throw new UserInputException(Texts.of("boatfile.no_boat", name, String.join(", ", SHIPPED)));
        }
        try (InputStream in = BoatFiles.class.getResourceAsStream(name + ".toml")) {
            if (in == null) {
                throw new IllegalStateException("not in the program: " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    /** The text without a byte order mark, or null if the bytes are not UTF-8 text. */
    private static @Nullable String decode(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') >= 0) {
                return null;
            }
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            return null;
        }
    }

    private static String hash(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest).substring(0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
