/**
 * The journal of a live recording ({@code journal/1}): bytes as they came, with the time of their arrival. {@link
 * trimwright.ingest.journal.JournalText} makes records, {@link trimwright.ingest.journal.JournalScanner} finds them
 * again, {@link trimwright.ingest.journal.JournalReader} reads a whole journal as any log is read. Files are the
 * recorder's matter.
 */
@NullMarked
package trimwright.ingest.journal;

import org.jspecify.annotations.NullMarked;
