/** Texts and documents. */
@NullMarked
package trimwright.text;

import org.jspecify.annotations.NullMarked;
