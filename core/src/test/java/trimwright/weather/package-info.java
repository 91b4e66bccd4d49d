@NullMarked
package trimwright.weather;

import org.jspecify.annotations.NullMarked;
