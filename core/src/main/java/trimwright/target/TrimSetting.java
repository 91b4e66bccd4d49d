package trimwright.target;

/**
 * How the wing is set, free of the tack.
 *
 * @param camber flap angle at the foot (rad), positive with depth to leeward
 * @param twist camber less the flap angle at the head (rad)
 * @param twistMidRatio share of the twist reached at half height (-), 0.5 where it grows evenly
 * @param sheet angle of the main element to the centreline (rad), positive eased to leeward
 */
public record TrimSetting(double camber, double twist, double twistMidRatio, double sheet) {
    /** Flap angle at the head (rad), negative where the head is put over. */
    public double headFlap() {
        return camber - twist;
    }
}
