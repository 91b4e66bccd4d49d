/**
 * Self-contained HTML pages that leave the program: the report of a day. Starts at {@link trimwright.report.DayReport}. Text and drawings
 * only, no script, nothing fetched. Sees the debrief's document, tracks and the course's plane.
 */
@NullMarked
package trimwright.report;

import org.jspecify.annotations.NullMarked;
