package trimwright.crew;

import org.jspecify.annotations.Nullable;

/**
 * Whether a boat slides: far more leeway than the card has, because air stands on her shaft. It ends where the leeway is the card's
 * again; the second board goes down and the sheet is eased until then, for air leaves a shaft only that is asked for far less. Angles
 * are chosen.
 */
final class Slide {
    private static final double BEGINS = Math.toRadians(5);
    private static final double ENDS = Math.toRadians(0.5);

    private boolean slides;

    /** One that goes on from here by itself. */
    Slide copy() {
        Slide other = new Slide();
        other.slides = slides;
        return other;
    }

    /** Looks: whether she slides now; in a turn she does not count as sliding. */
    boolean look(Sight sight, Aim aim, int tack, @Nullable TurnOrder turn) {
        double leeway = StrictMath.atan2(
                -tack * sight.state().rates().sway(), sight.state().rates().surge());
        double beyond = leeway - aim.attitude().leeway();
        slides = turn == null && sight.isFlying() && beyond > (slides ? ENDS : BEGINS);
        return slides;
    }
}
