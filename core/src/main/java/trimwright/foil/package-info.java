/**
 * Forces on everything that flies in the water: main foils, rudders, elevators. Start at
 * {@link trimwright.foil.MainFoilModel} and {@link trimwright.foil.RudderModel}; the pure formulas are in
 * {@link trimwright.foil.FreeSurface}, {@link trimwright.foil.SectionDrag}, {@link trimwright.foil.Cavitation} and
 * {@link trimwright.foil.Ventilation}. Uses {@code units}, {@code water} and {@code boat}.
 *
 * <p>Body axes: origin at the bottom of the hulls, on the centreline, at the main foils' lift centre; x forward, y to
 * starboard, z down. Every element is given the water's velocity relative to the boat at its own place and its own
 * depth; nothing here knows leeway, heel or a tack.
 */
@NullMarked
package trimwright.foil;

import org.jspecify.annotations.NullMarked;
