package trimwright.report;

/**
 * How a boat is drawn: Okabe and Ito's colours, and a dash that says the same without colour; as on the Debrief page.
 *
 * @param colour of the line
 * @param dash lengths of strokes and gaps, "none" for a whole line
 */
record BoatInk(String colour, String dash) {
    private static final String[] COLOURS = {"#0072b2", "#d55e00", "#009e73", "#cc79a7", "#56b4e9", "#e69f00", "#16202b"
    };
    private static final String[] DASHES = {"none", "7 3", "2 2.5", "9 3 2 3", "12 3", "4 2 1 2"};

    /** A boat's line through points of a drawing, with her name for who points at it. */
    void line(Html page, String points, String boat) {
        page.in(
                "polyline",
                () -> page.put("title", boat),
                "points",
                points,
                "class",
                "boat",
                "stroke",
                colour,
                "stroke-dasharray",
                dash);
    }

    /** Of a boat by its place in the session. */
    static BoatInk of(int place) {
        return new BoatInk(COLOURS[place % COLOURS.length], DASHES[place % DASHES.length]);
    }
}
