package trimwright.cards;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import trimwright.boatfile.BoatFile;
import trimwright.target.TargetMode;

/** What a side of the trim card may be about, in the order in which sides are printed. */
public enum CardSide {
    /** Best trim upwind. */
    UPWIND,
    /** Best trim downwind. */
    DOWNWIND,
    /** The fastest reach on the foils. */
    REACH,
    /** First acts against gusts upwind. */
    GUSTS_UPWIND,
    /** First acts against gusts downwind. */
    GUSTS_DOWNWIND,
    /** Sheet loads, and what hauling takes. */
    LOADS;

    /** The name in options and files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The side of that name, or the sides whose names begin with it: {@code gusts} is both of gusts; empty where there are none. */
    public static List<CardSide> listNamed(String key) {
        return Stream.of(values())
                .filter(side -> side.key().equals(key) || side.key().startsWith(key + "-"))
                .toList();
    }

    /** All sides that a boat file gives content for: gusts and loads where it says who works the controls. */
    public static List<CardSide> listFor(BoatFile file) {
        return Stream.of(values())
                .filter(side -> file.boat().handling() != null || !side.needsHandling())
                .toList();
    }

    private boolean needsHandling() {
        return this == GUSTS_UPWIND || this == GUSTS_DOWNWIND || this == LOADS;
    }

    /** What its targets are best for. */
    TargetMode mode() {
        return switch (this) {
            case UPWIND, GUSTS_UPWIND -> TargetMode.UPWIND;
            case DOWNWIND, GUSTS_DOWNWIND -> TargetMode.DOWNWIND;
            case REACH, LOADS -> TargetMode.ANGLE;
        };
    }
}
