package trimwright.intake;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import trimwright.ingest.csv.CsvMapping;
import trimwright.keyfile.Fault;
import trimwright.keyfile.KeyFile;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * A mapping file ({@code csv-map/1}).
 *
 * @param mapping what the table's columns are
 * @param encoding of the table as it stands on disk; a reader of core gets UTF-16 turned into UTF-8
 * @param boatFileSuffix end of a file's name that is no part of the boat's, or empty
 */
public record MappingFile(CsvMapping mapping, Charset encoding, String boatFileSuffix) {
    private static final int MOST_BYTES = 1_000_000;

    /**
     * Reads the file.
     *
     * @throws UserInputException with a line for each fault
     */
    public static MappingFile read(Path file) {
        String text;
        try {
            if (Files.isDirectory(file) || Files.size(file) > MOST_BYTES) {
                throw new UserInputException(Texts.of("intake.map.not_a_mapping", file));
            }
            text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("intake.map.unreadable", file), e);
        }
        return parse(text, file.toString());
    }

    static MappingFile parse(String text, String name) {
        KeyFile file = KeyFile.read(text, MapKeys.TABLE, key -> null);
        MappingLoader loader = new MappingLoader(file.values());
        MappingFile found = file.faults().isEmpty() ? loader.load() : null;
        if (found == null) {
            throw new UserInputException((file.faults().isEmpty() ? loader.faults() : file.faults())
                    .stream()
                            .distinct()
                            .sorted(Fault.BY_PLACE)
                            .map(fault -> fault.text(name))
                            .collect(Collectors.joining("\n")));
        }
        return found;
    }
}
