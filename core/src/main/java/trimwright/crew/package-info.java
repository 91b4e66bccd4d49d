/**
 * A computed crew: driver, trimmer, flight controller and tactician who sail a boat round a course with no more than they
 * could see and feel. Start at {@link trimwright.crew.Crew}. What to aim at comes in as plain numbers
 * ({@link trimwright.crew.SailingAims}); habits ({@link trimwright.crew.Habits}) make a crew miss it in a known way.
 */
@NullMarked
package trimwright.crew;

import org.jspecify.annotations.NullMarked;
