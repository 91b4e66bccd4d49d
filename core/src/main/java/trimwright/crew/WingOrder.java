package trimwright.crew;

import trimwright.motion.Commands;

/**
 * What a hand asks of the wing; signed form, as {@link trimwright.motion.Controls}.
 *
 * @param sheet (rad)
 * @param camber flap angle at the foot (rad)
 * @param twist (rad)
 * @param flap how fast the flap may go over
 * @param side tack for which the wing is trimmed: +1 wind from starboard, -1 from port
 * @param inverted when the camber was last put over (s), NaN if never
 */
public record WingOrder(double sheet, double camber, double twist, Commands.FlapWork flap, int side, double inverted) {}
