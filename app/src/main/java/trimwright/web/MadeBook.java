package trimwright.web;

import trimwright.target.TargetBook;

/** A target book, and the document that a page gets of it. */
final class MadeBook implements BackgroundWork.Result {
    private final TargetBook book;
    private final byte[] document;

    MadeBook(TargetBook book, byte[] document) {
        this.book = book;
        this.document = document;
    }

    TargetBook book() {
        return book;
    }

    @Override
    public byte[] document() {
        return document;
    }
}
