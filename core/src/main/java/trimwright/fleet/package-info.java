/**
 * What boats of one session did otherwise than the others in the same wind at the same time: differences of progress, trim and
 * turns with intervals, of which only those are told that chance does not make. Start at {@link
 * trimwright.fleet.FleetFindings}. Knows no targets, no model and no simulation: data only.
 */
@NullMarked
package trimwright.fleet;

import org.jspecify.annotations.NullMarked;
