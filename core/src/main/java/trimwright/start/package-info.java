/**
 * Starts as they are planned: seconds and metres to full speed, how slowly she can be held, how seconds are lost. Start at
 * {@link trimwright.start.StartPlanner}. Sees motion and crew, no targets.
 */
@NullMarked
package trimwright.start;

import org.jspecify.annotations.NullMarked;
