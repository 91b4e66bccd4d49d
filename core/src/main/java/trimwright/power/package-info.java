/**
 * What people on the handles can give, and what hauling and oil take of it. Start at {@link trimwright.power.CriticalPower} for
 * the giving and {@link trimwright.power.PowerAccount} for both. Uses {@code boat} and {@code units} only. SI and radians.
 */
@NullMarked
package trimwright.power;

import org.jspecify.annotations.NullMarked;
