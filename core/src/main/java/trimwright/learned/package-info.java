/**
 * What a boat's own sailing says of her best speed: from steady sailing of many sessions a smooth correction to the target
 * book, with its error and what it rests on. Start at {@link trimwright.learned.SeasonFit}. Pure functions; may use {@code
 * target}, {@code response}, {@code wind}, {@code segment} and {@code units}; never the simulator. Model and sources:
 * docs/theory/analysis.md, "Learned targets".
 */
@NullMarked
package trimwright.learned;

import org.jspecify.annotations.NullMarked;
