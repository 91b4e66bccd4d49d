/**
 * Choice of the setup for a race: wings and crews over a forecast and a course, as document and table. Start at {@link
 * trimwright.choice.SetupRun}. Sees {@code prepare}, {@code boatfile}, {@code keyfile} and {@code text}.
 */
@NullMarked
package trimwright.choice;

import org.jspecify.annotations.NullMarked;
