/** Choice of the setup against tables, closed forms and Monte Carlo. */
@NullMarked
package trimwright.setup;

import org.jspecify.annotations.NullMarked;
