/**
 * Polars of the wing's section computed ahead: the flow of {@code layer} at all nodes of a {@code section} table. Start at
 * {@link trimwright.polar.ColumnMaker}. May use {@code profile}, {@code panel}, {@code layer} and {@code section}. Theory:
 * docs/theory/section-tables.md.
 */
@NullMarked
package trimwright.polar;

import org.jspecify.annotations.NullMarked;
