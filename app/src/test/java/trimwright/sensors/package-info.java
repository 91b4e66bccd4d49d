@NullMarked
package trimwright.sensors;

import org.jspecify.annotations.NullMarked;
