/** Tests of the simulated race day at the edge. */
@NullMarked
package trimwright.raceday;

import org.jspecify.annotations.NullMarked;
