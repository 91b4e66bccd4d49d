/**
 * The earth's magnetic field, for the variation of a compass. Start at {@link trimwright.magnetic.MagneticField}. May use
 * nothing.
 */
@NullMarked
package trimwright.magnetic;

import org.jspecify.annotations.NullMarked;
