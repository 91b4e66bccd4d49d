package trimwright.motion;

/**
 * What the crew asks for at one instant.
 *
 * @param aim where the controls shall go
 * @param flap how fast the flap may go over
 */
public record Commands(Controls aim, FlapWork flap) {
    /** Two ways of working the flap. */
    public enum FlapWork {
        /** Trimming: slow and exact. */
        TRIM,
        /** Camber thrown over to the other side in a turn. */
        INVERT
    }
}
