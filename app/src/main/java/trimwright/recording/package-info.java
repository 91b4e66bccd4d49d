/**
 * Recording and following streams: sockets, clocks and the journal's file. {@link trimwright.recording.Recording} puts the parts
 * together: inputs hand bytes to the {@link trimwright.recording.Recorder}, which keeps them before anybody reads them, then
 * hands them on. {@link trimwright.recording.Journals} closes a journal into the library, also one that a crash left.
 */
@NullMarked
package trimwright.recording;

import org.jspecify.annotations.NullMarked;
