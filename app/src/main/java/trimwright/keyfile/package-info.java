/**
 * Files that people write: TOML whose every key stands in one table. Start at {@link trimwright.keyfile.KeyTable} (what
 * may stand in a file) and {@link trimwright.keyfile.KeyFile} (reads one and finds every fault at once). May use {@code
 * text} and core's {@code units}.
 */
@NullMarked
package trimwright.keyfile;

import org.jspecify.annotations.NullMarked;
