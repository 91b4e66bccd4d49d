@NullMarked
package trimwright.panel;

import org.jspecify.annotations.NullMarked;
