/**
 * How files come into a library: opened, unpacked, recognised, read by core's readers, cut into sessions, stored. Start
 * at {@link trimwright.intake.Intake}. May use {@code text}, {@code keyfile}, {@code store} and core's readers.
 */
@NullMarked
package trimwright.intake;

import org.jspecify.annotations.NullMarked;
