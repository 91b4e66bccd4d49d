/**
 * Turns as they are planned: what the trimmer does by which cue, sailed on the motion model with gusts and people's delays
 * drawn, and the best moves found. Start at {@link trimwright.turn.TurnPlanner}. Sees motion and crew, no targets.
 */
@NullMarked
package trimwright.turn;

import org.jspecify.annotations.NullMarked;
