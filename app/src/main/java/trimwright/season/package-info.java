/**
 * What a library's sessions teach of a boat's targets: read from it, learnt, kept in its folder {@code learned}, shown. Start at
 * {@link trimwright.season.LearnRun}. The statistics are {@code core}'s; files are {@code learned-targets/1}, docs/formats.md.
 */
@NullMarked
package trimwright.season;

import org.jspecify.annotations.NullMarked;
