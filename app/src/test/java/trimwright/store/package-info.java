/** Tests of the library. */
@NullMarked
package trimwright.store;

import org.jspecify.annotations.NullMarked;
