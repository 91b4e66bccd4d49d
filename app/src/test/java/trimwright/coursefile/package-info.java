/** Tests of the course file. */
@NullMarked
package trimwright.coursefile;

import org.jspecify.annotations.NullMarked;
