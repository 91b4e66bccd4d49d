/**
 * The debrief of a session: composes wind, cutting and comparison of core for every boat on one clock, and writes the
 * result as JSON and as text. Holds no formula. Start at {@link trimwright.debrief.Debrief}. Uses {@code text} and core.
 */
@NullMarked
package trimwright.debrief;

import org.jspecify.annotations.NullMarked;
