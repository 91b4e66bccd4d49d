package trimwright.web;

/** A request that gets one sentence instead of an answer; thrown by routes, turned into JSON at the edge. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;

    private Refusal(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    /** What was asked for is written wrongly (HTTP 400). */
    public static Refusal badRequest(String sentence) {
        return new Refusal(400, sentence);
    }

    /** The request does not come from one of our own pages (HTTP 403). */
    public static Refusal forbidden(String sentence) {
        return new Refusal(403, sentence);
    }

    /** There is no such thing (HTTP 404). */
    public static Refusal notFound(String sentence) {
        return new Refusal(404, sentence);
    }

    /** The question is well put and has no answer (HTTP 422). */
    public static Refusal noAnswer(String sentence) {
        return new Refusal(422, sentence);
    }

    public int status() {
        return status;
    }

    /** The sentence for the reader; never null. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
