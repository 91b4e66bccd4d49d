/** The dock check from files to words. */
@NullMarked
package trimwright.dockside;

import org.jspecify.annotations.NullMarked;
