/** Tests of the import, its bad inputs and its sudden ends. */
@NullMarked
package trimwright.intake;

import org.jspecify.annotations.NullMarked;
