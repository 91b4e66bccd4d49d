@NullMarked
package trimwright.cards;

import org.jspecify.annotations.NullMarked;
