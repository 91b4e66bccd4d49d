@NullMarked
package trimwright.fleet;

import org.jspecify.annotations.NullMarked;
