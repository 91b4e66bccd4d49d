@NullMarked
package trimwright.layer;

import org.jspecify.annotations.NullMarked;
