package trimwright.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.boat.FoilSpec;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * The boats that can be picked: the files named on the command line first, then those that come with the program. Files
 * are read each time they are asked for, so a change saved in an editor is there at the next look.
 */
final class BoatShelf {
    /** Between a boat's id and that of a foil set, where it is not the standard one. */
    private static final String FOILS = "~";

    private final List<Place> places = new ArrayList<>();

    private record Place(String id, String given, boolean isFile) {}

    /**
     * A boat as it stands now.
     *
     * @param id its name in addresses
     * @param path the file that the user named, null for a boat of the program
     * @param file what the file holds, null where it has faults
     * @param faults one line each, empty where there are none
     */
    record Entry(String id, @Nullable String path, @Nullable BoatFile file, List<String> faults) {}

    /** @param files paths as given on the command line */
    BoatShelf(List<Path> files) {
        Set<String> taken = new HashSet<>(BoatFiles.SHIPPED);
        for (Path path : files) {
            String name = nameOf(path);
            String id = name;
            for (int n = 2; !taken.add(id); n++) {
                id = name + "-" + n;
            }
            places.add(new Place(id, path.toAbsolutePath().normalize().toString(), true));
        }
        for (String name : BoatFiles.SHIPPED) {
            places.add(new Place(name, name, false));
        }
    }

    private static String nameOf(Path file) {
        return file.getFileName().toString().replaceFirst("\\.toml$", "");
    }

    /** Id of the only file of a shelf. */
    static String idOf(Path file) {
        String name = nameOf(file);
        return BoatFiles.SHIPPED.contains(name) ? name + "-2" : name;
    }

    /** Every boat, and behind it once more for each further foil set. */
    List<Entry> list() {
        return places.stream().flatMap(place -> read(place).stream()).toList();
    }

    /** The boat of that id with the foil set that it names; throws {@link Refusal} if there is none and {@link UserInputException} if its file has faults. */
    BoatFile get(String id) {
        for (Place place : places) {
            if (place.id().equals(id)) {
                return BoatFiles.find(place.given());
            }
            if (id.startsWith(place.id() + FOILS)) {
                return BoatFiles.find(place.given())
                        .withFoils(id.substring(place.id().length() + 1));
            }
        }
        throw Refusal.notFound(Texts.of("web.refuse.boat", id));
    }

    /** The boat's wing of that id; throws {@link Refusal} if there is none. */
    static WingSpec getWing(BoatFile file, String id) {
        return file.boat().wings().stream()
                .filter(wing -> wing.id().equals(id))
                .findFirst()
                .orElseThrow(() ->
                        Refusal.notFound(Texts.of("web.refuse.wing", file.boat().title(), id)));
    }

    private static List<Entry> read(Place place) {
        String path = place.isFile() ? place.given() : null;
        try {
            BoatFile file = BoatFiles.find(place.given());
            return file.boat().foilSets().stream()
                    .map(set -> new Entry(idOf(place, set), path, file.withFoils(set.id()), List.of()))
                    .toList();
        } catch (UserInputException e) {
            // The page says which file: of the path in each line its name is enough.
            String given = place.given();
            String name = String.valueOf(Path.of(given).getFileName());
            List<String> faults = String.valueOf(e.getMessage())
                    .lines()
                    .map(line -> line.replace(given, name))
                    .toList();
            return List.of(new Entry(place.id(), path, null, faults));
        }
    }

    private static String idOf(Place place, FoilSpec set) {
        return set.id().equals(FoilSpec.STANDARD) ? place.id() : place.id() + FOILS + set.id();
    }
}
