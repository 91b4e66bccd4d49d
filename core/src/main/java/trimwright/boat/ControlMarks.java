package trimwright.boat;

/**
 * What the crew reads on one control.
 *
 * @param control which
 * @param unit the crew's word for one of them: {@code steps}
 * @param finest smallest part of a mark that is told and set (in that unit), positive
 * @param starboard what is read on starboard tack
 * @param port what is read on port tack; the same where the marks are alike
 */
public record ControlMarks(MarkedControl control, String unit, double finest, MarkScale starboard, MarkScale port) {
    public ControlMarks {
        if (unit.isBlank() || !(finest > 0)) {
            throw new IllegalArgumentException(
                    "marks have a unit and a finest part above 0, not " + unit + ", " + finest);
        }
    }

    /** The scale that is read on the tack with the wind from that side. */
    public MarkScale on(Side windFrom) {
        return windFrom == Side.STARBOARD ? starboard : port;
    }
}
