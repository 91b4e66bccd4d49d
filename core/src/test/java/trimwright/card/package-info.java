@NullMarked
package trimwright.card;

import org.jspecify.annotations.NullMarked;
