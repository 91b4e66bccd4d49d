/**
 * Drawn numbers that are the same on every machine and every Java. Start at {@link trimwright.chance.RandomStream}. Uses
 * nothing else of the project.
 */
@NullMarked
package trimwright.chance;

import org.jspecify.annotations.NullMarked;
