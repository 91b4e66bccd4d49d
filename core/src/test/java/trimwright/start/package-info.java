@NullMarked
package trimwright.start;

import org.jspecify.annotations.NullMarked;
