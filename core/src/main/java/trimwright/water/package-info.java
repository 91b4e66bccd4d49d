/**
 * The water: density, viscosity, vapour pressure, friction, and how things enter and leave it smoothly, and how water that moves is
 * told to a boat. Start at
 * {@link trimwright.water.WaterState}. Uses {@code units} only.
 */
@NullMarked
package trimwright.water;

import org.jspecify.annotations.NullMarked;
