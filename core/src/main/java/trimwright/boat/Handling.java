package trimwright.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who works the controls, how fast these go, and what else is driven by the same arms.
 *
 * @param rates how fast wing controls go
 * @param grinders those who turn the handles
 * @param sheetWork how much sheet is hauled while sailing
 * @param oilEfficiency share of the grinders' power that arrives at the rams (-)
 * @param oilUsers what oil drives, the first served first
 * @param source where these figures come from, in a sentence that is shown with them; null where the file does not say
 */
public record Handling(
        ControlRates rates,
        Grinders grinders,
        SheetWork sheetWork,
        double oilEfficiency,
        List<OilUser> oilUsers,
        @Nullable String source) {
    public Handling {
        oilUsers = List.copyOf(oilUsers);
    }

    /**
     * How fast wing controls go.
     *
     * @param sheetEase most that the wing turns outward when the sheet is let go (rad/s)
     * @param sheetHaul most that the rope comes in at the wing, load or no load (m/s)
     * @param camber of the flap at the foot (rad/s)
     * @param twist between the flap at foot and head (rad/s)
     */
    public record ControlRates(double sheetEase, double sheetHaul, double camber, double twist) {}

    /**
     * The people on the handles; figures of one of them, rested.
     *
     * @param count how many (-)
     * @param criticalPower that one keeps up for long (W)
     * @param workAbove that one can do above it before being spent (J)
     * @param peakPower in the first instant of an all-out effort (W)
     */
    public record Grinders(int count, double criticalPower, double workAbove, double peakPower) {}

    /**
     * How much sheet is hauled while sailing.
     *
     * @param straight turned inward on a straight, all hauls together (rad/s)
     * @param turn turned inward after a turn, from slack to the new trim (rad)
     */
    public record SheetWork(double straight, double turn) {}

    /**
     * One thing that oil drives.
     *
     * @param name short, as the crew calls it
     * @param straight mean power at the ram on a straight (W)
     * @param turn work at the ram in one turn (J)
     */
    public record OilUser(String name, double straight, double turn) {}
}
