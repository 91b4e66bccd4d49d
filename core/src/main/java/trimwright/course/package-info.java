/**
 * The race course: start line and gun, marks and gates with their order, finish, boundary. Start at
 * {@link trimwright.course.Course}. Values and plane geometry; uses {@code units} only.
 */
@NullMarked
package trimwright.course;

import org.jspecify.annotations.NullMarked;
