/** Files that people write. */
@NullMarked
package trimwright.boatfile;

import org.jspecify.annotations.NullMarked;
