/**
 * Drills at the edge: from a target book to a boat that can be sailed, hands by name, results as document and text. Used
 * by the command and by the page. Start at {@link trimwright.drills.DrillBoats}.
 */
@NullMarked
package trimwright.drills;

import org.jspecify.annotations.NullMarked;
