/** Units and angles. Start at {@link trimwright.units.Units}. Uses nothing else of the project. */
@NullMarked
package trimwright.units;

import org.jspecify.annotations.NullMarked;
