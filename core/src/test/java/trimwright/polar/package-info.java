@NullMarked
package trimwright.polar;

import org.jspecify.annotations.NullMarked;
