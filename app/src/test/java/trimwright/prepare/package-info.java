@NullMarked
package trimwright.prepare;

import org.jspecify.annotations.NullMarked;
