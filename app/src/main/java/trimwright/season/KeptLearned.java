package trimwright.season;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.learned.LearnedBook;
import trimwright.learned.LearnedTargets;
import trimwright.store.Durable;
import trimwright.store.Slug;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Learned targets of a library, in its folder {@code learned}: each run of learning a file of its own, none ever replaced. */
public final class KeptLearned {
    private static final String FOLDER = "learned";
    private static final String ENDING = ".json";

    private final Path folder;

    /** @param library its folder */
    public KeptLearned(Path library) {
        folder = library.resolve(FOLDER);
    }

    /** Keeps it under the next number, and says where; what the newest file says already is not kept again. */
    public Path keep(Learned learned) {
        String start = start(learned.boat(), learned.wing(), learned.foils());
        String text = JsonOut.text(LearnedJson.document(learned));
        List<Path> kept = list(start);
        try {
            Files.createDirectories(folder);
            if (!kept.isEmpty()) {
                Path newest = kept.get(kept.size() - 1);
                if (Files.readString(newest).equals(text)) {
                    return newest;
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        int number = kept.isEmpty() ? 1 : numberOf(kept.get(kept.size() - 1), start) + 1;
        Path file = folder.resolve(start + String.format(Locale.ROOT, "%04d", number) + ENDING);
        Durable.replace(file, text);
        return file;
    }

    /**
     * What was learnt last of the boat with that wing and her foils.
     *
     * @throws UserInputException where nothing was, or against another boat file or crew
     */
    public Learned get(BoatFile file, WingSpec wing) {
        String boat = file.boat().name();
        String foils = file.boat().foils().id();
        List<Path> kept = list(start(boat, wing.id(), foils));
        if (kept.isEmpty()) {
            throw new UserInputException(Texts.of("learn.none", boat, wing.id(), foils, folder));
        }
        Path newest = kept.get(kept.size() - 1);
        Learned learned = read(newest);
        if (!learned.boatHash().equals(file.hash())
                || Math.abs(learned.crewMass() - file.boat().crew().mass()) > CREW_ROUNDING) {
            throw new UserInputException(Texts.of("learn.other_file", newest, boat));
        }
        return learned;
    }

    /** Whether {@link #get} has an answer. */
    public boolean has(BoatFile file, WingSpec wing) {
        try {
            get(file, wing);
            return true;
        } catch (UserInputException e) {
            return false;
        }
    }

    /** Half of the last place that a file has of the crew's mass (kg). */
    private static final double CREW_ROUNDING = 0.006;

    /** The model's book with what was learnt. */
    public static TargetBook book(TargetBook model, LearnedTargets learned, BoatFile file) {
        Double fastest = file.boat().limits().boatSpeedMax();
        return LearnedBook.of(model, learned, fastest == null ? Double.POSITIVE_INFINITY : fastest);
    }

    private static String start(String boat, String wing, String foils) {
        return String.join("-", Slug.of(boat), Slug.of(wing), Slug.of(foils)) + "-";
    }

    private List<Path> list(String start) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches("\\Q" + start + "\\E\\d{4,9}\\.json"))
                    .sorted((a, b) -> Integer.compare(numberOf(a, start), numberOf(b, start)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int numberOf(Path file, String start) {
        String name = file.getFileName().toString();
        return Integer.parseInt(name.substring(start.length(), name.length() - ENDING.length()));
    }

    private static Learned read(Path file) {
        try {
            JsonNode document = JsonOut.mapper().readTree(Files.readString(file));
            if (!document.path("schema").asText().equals(LearnedJson.SCHEMA)) {
                throw new UserInputException(Texts.of("learn.no_file", file, LearnedJson.SCHEMA));
            }
            return LearnedJson.read(document);
        } catch (JsonProcessingException e) {
            throw new UserInputException(Texts.of("learn.no_file", file, LearnedJson.SCHEMA), e);
        } catch (IllegalArgumentException e) {
            throw new UserInputException(Texts.of("learn.no_key", file, String.valueOf(e.getMessage())), e);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("learn.unreadable", file), e);
        }
    }
}
