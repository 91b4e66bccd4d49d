/**
 * Cards that go on the boat beside the target book: what commands and pages say of them, as documents, tables and printed
 * pages. Start at {@link trimwright.cards.LoadRun}. Sees {@code prepare}, {@code boatfile} and {@code text}.
 */
@NullMarked
package trimwright.cards;

import org.jspecify.annotations.NullMarked;
