/** Files that people write. */
@NullMarked
package trimwright.keyfile;

import org.jspecify.annotations.NullMarked;
