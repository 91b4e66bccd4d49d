package trimwright.ingest;

/**
 * One thing that is wrong in a log.
 *
 * @param line where, counted from 1
 * @param kind what, and what was done about it
 * @param detail the offending text as far as it helps, or empty
 */
public record Issue(long line, IssueKind kind, String detail) {}
