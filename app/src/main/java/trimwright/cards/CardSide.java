package trimwright.cards;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boatfile.BoatFile;
import trimwright.target.TargetMode;

/** What a side of the trim card may be about, in the order in which sides are printed. */
public enum CardSide {
    /** Best trim upwind. */
    UPWIND,
    /** Best trim downwind. */
    DOWNWIND,
    /** The fastest reach on the foils. */
    REACH;

    /** The name in options and files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The side of that name, null where there is none. */
    public static @Nullable CardSide find(String key) {
        for (CardSide side : values()) {
            if (side.key().equals(key)) {
                return side;
            }
        }
        return null;
    }

    /** All sides that a boat file gives content for. */
    public static List<CardSide> listFor(BoatFile file) {
        return List.of(values());
    }

    /** What its targets are best for. */
    TargetMode mode() {
        return switch (this) {
            case UPWIND -> TargetMode.UPWIND;
            case DOWNWIND -> TargetMode.DOWNWIND;
            default -> TargetMode.ANGLE;
        };
    }
}
