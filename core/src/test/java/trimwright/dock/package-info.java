/** The dock check against planted faults. */
@NullMarked
package trimwright.dock;

import org.jspecify.annotations.NullMarked;
