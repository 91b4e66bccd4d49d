@NullMarked
package trimwright.learned;

import org.jspecify.annotations.NullMarked;
