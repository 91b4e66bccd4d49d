@NullMarked
package trimwright.power;

import org.jspecify.annotations.NullMarked;
