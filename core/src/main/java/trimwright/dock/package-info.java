/**
 * The dock check: what a boat's instruments say at rest while her crew goes through a list of ten minutes, held against what is known
 * to be so. Start at {@link trimwright.dock.DockCheck}. Uses {@code track}, {@code boat}, {@code units} and of {@code compare} the
 * interval of a mean.
 */
@NullMarked
package trimwright.dock;

import org.jspecify.annotations.NullMarked;
