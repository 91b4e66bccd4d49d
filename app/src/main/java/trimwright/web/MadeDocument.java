package trimwright.web;

/**
 * A document that took work.
 *
 * @param document its JSON
 */
record MadeDocument(byte[] document) implements BackgroundWork.Result {}
