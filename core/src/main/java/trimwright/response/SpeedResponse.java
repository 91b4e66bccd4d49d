package trimwright.response;

import java.util.List;

/**
 * How a well trimmed boat's speed follows its target: {@code dv/dt = (target - v) / T}, with one T while the target lies
 * above and one while it lies below. Between the winds of a table on a straight line; beyond its ends, the end's.
 *
 * @param upwind rows with the wind before the beam, by rising wind; at least one
 * @param downwind rows with the wind behind it, likewise
 */
public record SpeedResponse(List<Row> upwind, List<Row> downwind) {
    /**
     * One wind.
     *
     * @param wind true, at 10 m (m/s)
     * @param rise T while the boat gathers speed (s)
     * @param fall T while she loses it (s)
     * @param spread most that a perfectly trimmed boat lay under or over this response in a gust, means of 10 s (-)
     */
    public record Row(double wind, double rise, double fall, double spread) {
        public Row {
            if (!(wind > 0 && rise > 0 && fall > 0 && spread >= 0)) {
                throw new IllegalArgumentException("response in " + wind + " m/s: " + rise + " s, " + fall + " s");
            }
        }
    }

    public SpeedResponse {
        upwind = List.copyOf(upwind);
        downwind = List.copyOf(downwind);
        if (upwind.isEmpty() || downwind.isEmpty()) {
            throw new IllegalArgumentException("a response needs a row against the wind and one down it");
        }
    }

    /** The row for a wind (m/s) and an angle from the course (rad, either tack). */
    public Row at(double wind, double angle) {
        List<Row> rows = Math.abs(angle) <= Math.PI / 2 ? upwind : downwind;
        Row below = rows.get(0);
        for (Row row : rows) {
            if (row.wind() >= wind) {
                return row.wind() > below.wind() ? between(below, row, wind) : row;
            }
            below = row;
        }
        return below;
    }

    private static Row between(Row low, Row high, double wind) {
        double share = Math.max(0, (wind - low.wind) / (high.wind - low.wind));
        return new Row(
                low.wind + share * (high.wind - low.wind),
                low.rise + share * (high.rise - low.rise),
                low.fall + share * (high.fall - low.fall),
                low.spread + share * (high.spread - low.spread));
    }
}
