@NullMarked
package trimwright.motion;

import org.jspecify.annotations.NullMarked;
