/**
 * The course as a file, {@code course/1}. {@link trimwright.coursefile.CourseKeys} lists its keys,
 * {@link trimwright.coursefile.CourseFiles} reads and checks it, {@link trimwright.coursefile.CourseText} writes it.
 */
@NullMarked
package trimwright.coursefile;

import org.jspecify.annotations.NullMarked;
