/** The picture of the packages of app. */
@NullMarked
package trimwright.architecture;

import org.jspecify.annotations.NullMarked;
