@NullMarked
package trimwright.crew;

import org.jspecify.annotations.NullMarked;
