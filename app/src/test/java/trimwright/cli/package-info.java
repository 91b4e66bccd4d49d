/** Commands run in process. */
@NullMarked
package trimwright.cli;

import org.jspecify.annotations.NullMarked;
