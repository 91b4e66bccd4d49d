/**
 * The simulated race day: a fleet of computed crews in one wind on one course, what their instruments log, and the truth
 * behind it. Start at {@link trimwright.sim.Race}; what a day is made from is a {@link trimwright.sim.Scenario}. Sees
 * {@code weather}, {@code course}, {@code motion}, {@code crew}; knows no target book and no debrief, so that neither can
 * look at the answers.
 */
@NullMarked
package trimwright.sim;

import org.jspecify.annotations.NullMarked;
