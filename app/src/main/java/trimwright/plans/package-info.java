/**
 * Turn plans as they are kept: files of {@code turn-plan/1} in a library's folder, read back for debriefs and drills. Sees core and
 * {@code store}.
 */
@NullMarked
package trimwright.plans;

import org.jspecify.annotations.NullMarked;
