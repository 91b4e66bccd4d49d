@NullMarked
package trimwright.call;

import org.jspecify.annotations.NullMarked;
