package trimwright.crew;

import org.jspecify.annotations.Nullable;

/** Whoever has the wing in hand: a computed trimmer, or a person at a page. Holds its own memory; one is for one boat. */
public interface WingHand {
    /**
     * What is asked of the wing now.
     *
     * @param sight what is seen and felt
     * @param aim what the crew's card says for this wind and angle
     * @param turn the turn under way, null in straight sailing
     * @param grip share of the heel that is the wing's alone to hold, 0 to 1: less where the foils hold it
     * @param dt step (s)
     */
    WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt);
}
