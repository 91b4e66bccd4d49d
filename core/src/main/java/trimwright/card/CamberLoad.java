package trimwright.card;

/**
 * What another camber does to speed and sheet, all other trim as good as it can be with it.
 *
 * @param camber flap angle at the foot (rad)
 * @param speed best boat speed with it at the same wind angle (m/s)
 * @param speedLost against the best with camber free (m/s), not below 0
 * @param sheet the sheet's load and work
 */
public record CamberLoad(double camber, double speed, double speedLost, SheetLoad sheet) {}
