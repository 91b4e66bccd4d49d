@NullMarked
package trimwright.course;

import org.jspecify.annotations.NullMarked;
