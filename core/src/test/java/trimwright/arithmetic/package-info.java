@NullMarked
package trimwright.arithmetic;

import org.jspecify.annotations.NullMarked;
