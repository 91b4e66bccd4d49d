/**
 * The simulated race day at the edge: runs the boats on threads and writes what a real day would leave behind (logs,
 * mapping, course) and the truth beside it. Start at {@link trimwright.raceday.RaceDay}.
 */
@NullMarked
package trimwright.raceday;

import org.jspecify.annotations.NullMarked;
