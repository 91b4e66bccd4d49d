/**
 * Air and the triangles of wind, water and boat: density and viscosity, the wind's profile over height, true and
 * apparent wind, current. Start at {@link trimwright.air.AirState} and {@link trimwright.air.TrueWind}. Uses
 * {@code units} only.
 */
@NullMarked
package trimwright.air;

import org.jspecify.annotations.NullMarked;
