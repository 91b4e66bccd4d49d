package trimwright.turn;

/**
 * What the sheet does in a turn.
 *
 * @param eased out beyond what it was at the driver's word, when the bow begins to move (rad); negative: hauled
 * @param hauled in again after that, the largest stretch of it until the turn was over (rad)
 * @param time that this took (s): from the widest until all but a twentieth was in
 */
public record SheetWork(double eased, double hauled, double time) {}
