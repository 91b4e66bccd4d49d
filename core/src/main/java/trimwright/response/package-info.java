/**
 * How a boat's speed follows the wind: the time constants of her response, fitted to the motion model, and the speed that
 * she can have reached by now. Start at {@link trimwright.response.ResponseFit} and {@link
 * trimwright.response.ReachableSpeed}. May use {@code units}, {@code air}, {@code water}, {@code boat}, {@code weather},
 * {@code motion}, {@code crew} and {@code practice}. The fit: docs/theory/analysis.md, "Reachable speed".
 */
@NullMarked
package trimwright.response;

import org.jspecify.annotations.NullMarked;
