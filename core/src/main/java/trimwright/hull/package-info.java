/**
 * The two hulls while they touch the water: buoyancy and resistance. Start at {@link trimwright.hull.HullModel}; the
 * published regression is {@link trimwright.hull.RoundBilgeSeries}. Uses {@code units}, {@code water} and {@code boat}.
 */
@NullMarked
package trimwright.hull;

import org.jspecify.annotations.NullMarked;
