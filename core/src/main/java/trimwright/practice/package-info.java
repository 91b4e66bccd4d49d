/**
 * Drills: a boat in a wind with a computed crew, her wing in the hand of a person or of a computed trimmer, and what that
 * hand lost. Start at {@link trimwright.practice.DrillRun}. May use what a simulated boat uses: {@code units}, {@code air},
 * {@code water}, {@code boat}, {@code weather}, {@code motion}, {@code crew}.
 */
@NullMarked
package trimwright.practice;

import org.jspecify.annotations.NullMarked;
