/**
 * Targets: the best speed, angle and trim of a boat with a wing, over wind and point of sail. Start at
 * {@link trimwright.target.TargetBook}; a point of it is a {@link trimwright.target.TargetPoint}. All values are free of
 * the tack, SI and radians. Angles of the true wind are to the course through the water; the apparent wind is to the bow.
 */
@NullMarked
package trimwright.target;

import org.jspecify.annotations.NullMarked;
