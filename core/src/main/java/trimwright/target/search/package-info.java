/**
 * Search for the best point of a smooth problem under equations and limits: sequential quadratic programming with second
 * derivatives. Start at {@link trimwright.target.search.Search}. Knows nothing of boats.
 */
@NullMarked
package trimwright.target.search;

import org.jspecify.annotations.NullMarked;
