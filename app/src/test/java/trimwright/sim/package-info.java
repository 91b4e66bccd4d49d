@NullMarked
package trimwright.sim;

import org.jspecify.annotations.NullMarked;
