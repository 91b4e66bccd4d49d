@NullMarked
package trimwright.aim;

import org.jspecify.annotations.NullMarked;
