@NullMarked
package trimwright.chance;

import org.jspecify.annotations.NullMarked;
