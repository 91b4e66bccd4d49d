@NullMarked
package trimwright.debrief;

import org.jspecify.annotations.NullMarked;
