/**
 * Calls: when a short sentence of advice is due, and when it is better to say nothing. Figures of a boat as it sails go
 * second by second into a {@link trimwright.call.Caller}, which answers with a call or with the reason for its silence;
 * {@link trimwright.call.Tones} tells limits at once. May use {@code units}, {@code boat}, {@code segment} and {@code live}.
 * The rules: docs/theory/analysis.md, "Calls".
 */
@NullMarked
package trimwright.call;

import org.jspecify.annotations.NullMarked;
