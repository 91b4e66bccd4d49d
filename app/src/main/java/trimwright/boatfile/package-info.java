/**
 * The boat file {@code boat/1}: how a crew describes its boat. Start at {@link trimwright.boatfile.BoatFiles}; what may
 * stand in a file is {@link trimwright.boatfile.BoatKeys}. May use {@code text}, {@code keyfile} and core's {@code boat}.
 */
@NullMarked
package trimwright.boatfile;

import org.jspecify.annotations.NullMarked;
