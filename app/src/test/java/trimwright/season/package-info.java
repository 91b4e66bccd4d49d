@NullMarked
package trimwright.season;

import org.jspecify.annotations.NullMarked;
