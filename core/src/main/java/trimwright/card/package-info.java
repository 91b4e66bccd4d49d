/**
 * What goes on cards beside the target book: loads and the arms that haul them, gusts. Start at {@link
 * trimwright.card.LoadCard}. Works on solved targets and the forces of {@code platform}. All values are free of the tack, SI
 * and radians.
 */
@NullMarked
package trimwright.card;

import org.jspecify.annotations.NullMarked;
