package trimwright.crew;

/**
 * How a crew sails otherwise than it should. {@link #NONE} is a crew without habits, not a perfect one.
 *
 * @param momentShare share of the righting moment carried that could be carried upwind (-); 1 is all
 * @param lateEase time by which an ease of the sheet comes later (s)
 * @param twist more than aimed at (rad)
 * @param rideHeight more than aimed at (m)
 * @param lateInversion time by which the camber is put over later in a turn (s)
 */
public record Habits(double momentShare, double lateEase, double twist, double rideHeight, double lateInversion) {
    public static final Habits NONE = new Habits(1, 0, 0, 0, 0);

    public Habits {
        if (!(momentShare > 0.5 && momentShare <= 1) || !(lateEase >= 0) || !(lateInversion >= 0)) {
            throw new IllegalArgumentException("habits: moment share " + momentShare + ", late ease " + lateEase
                    + " s, late inversion " + lateInversion + " s");
        }
    }
}
