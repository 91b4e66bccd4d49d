/** Speed measurements: what is timed, on which input. {@code bench/run} runs them, bench/README.md holds figures. */
@NullMarked
package trimwright.bench;

import org.jspecify.annotations.NullMarked;
