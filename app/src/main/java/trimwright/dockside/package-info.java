/**
 * The dock check at the edge: what is asked, what is said, what is kept. Start at {@link trimwright.dockside.DockRequest}; the check itself is core's {@code dock}. May use {@code
 * text}, {@code boatfile} and {@code store}.
 */
@NullMarked
package trimwright.dockside;

import org.jspecify.annotations.NullMarked;
