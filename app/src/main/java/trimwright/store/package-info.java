/**
 * The library: a folder of sessions that several processes may read while one writes. Start at
 * {@link trimwright.store.Library}. Uses the track values of core; knows nothing of pages or commands.
 */
@NullMarked
package trimwright.store;

import org.jspecify.annotations.NullMarked;
