package trimwright.wind;

import org.jspecify.annotations.Nullable;

/** Chooses which boat speed is judged. Over ground by default on a foiling boat: its log is dry above take-off. */
final class SpeedChoice {
    /** The log must cover this share of the time that speed over ground covers (chosen). */
    private static final double LEAST_COVER = 0.5;

    /** A log is dry below this share of speed over ground, seen at speeds above {@link #MOVING} (chosen). */
    private static final double DRY = 0.3;

    /** (m/s), chosen: below it a paddle wheel may stand still. */
    private static final double MOVING = 2.5;

    /** Share of moving time in which a dry log condemns it (chosen). */
    private static final double DRY_SHARE = 0.1;

    private SpeedChoice() {}

    static WindTrack.Basis of(double[] stw, double[] sog, boolean foils, @Nullable SpeedSource asked) {
        int water = 0;
        int ground = 0;
        int moving = 0;
        int dry = 0;
        for (int i = 0; i < stw.length; i++) {
            boolean hasStw = !Double.isNaN(stw[i]);
            boolean hasSog = !Double.isNaN(sog[i]);
            water += hasStw ? 1 : 0;
            ground += hasSog ? 1 : 0;
            if (hasStw && hasSog && sog[i] > MOVING) {
                moving++;
                dry += stw[i] < DRY * sog[i] ? 1 : 0;
            }
        }
        if (ground == 0) {
            return new WindTrack.Basis(SpeedSource.THROUGH_WATER, SpeedReason.NO_GROUND_SPEED);
        }
        if (water < LEAST_COVER * ground) {
            return new WindTrack.Basis(SpeedSource.OVER_GROUND, SpeedReason.NO_LOG);
        }
        if (asked != null) {
            return new WindTrack.Basis(asked, SpeedReason.ASKED_FOR);
        }
        if (foils) {
            return new WindTrack.Basis(SpeedSource.OVER_GROUND, SpeedReason.FOILING_BOAT);
        }
        boolean isDry = dry > DRY_SHARE * moving;
        return isDry
                ? new WindTrack.Basis(SpeedSource.OVER_GROUND, SpeedReason.LOG_DRY)
                : new WindTrack.Basis(SpeedSource.THROUGH_WATER, SpeedReason.LOG_WET);
    }
}
