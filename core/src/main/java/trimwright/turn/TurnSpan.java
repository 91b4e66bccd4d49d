package trimwright.turn;

import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;

/** Between which moves a plan is sought; all chosen, wide enough that found plans lie inside. */
record TurnSpan(double[] least, double[] most, double[] middle) {
    static TurnSpan of(TurnKind kind) {
        return switch (kind) {
            case TACK ->
                span(
                        new double[] {-4, -15, -5, 0, 0, 8, 0, 0, 0.05, -0.2, 0.7},
                        new double[] {10, 25, 28, 30, 15, 30, 30, 1, 0.95, 0.6, 1},
                        new double[] {0, 18, 20, 10, 2, 18, 12, 0.9, 0.4, 0.2, 0.98});
            case GYBE ->
                span(
                        new double[] {-6, -10, -5, 0, 0, 10, 0, 0, 0.05, -0.2, 0.7},
                        new double[] {15, 25, 30, 30, 20, 30, 25, 1, 0.95, 0.4, 1},
                        new double[] {-4, 13, 9, 7, 13, 25, 10, 0.35, 0.1, 0.07, 0.97});
            case BEAR_AWAY ->
                span(
                        new double[] {0.5, 0, 60, 0, 6, 0, 0, -0.2, 0.7},
                        new double[] {3, 15, 150, 15, 20, 20, 1, 0.4, 1},
                        new double[] {1.5, 4, 100, 2, 14, 5, 0.5, 0.1, 0.9});
            case ROUND_UP ->
                span(
                        new double[] {0, -2, 45, 0, 5, 0, 0, -0.2, 0.7},
                        new double[] {3, 15, 110, 10, 20, 20, 1, 0.4, 1},
                        new double[] {1.5, 6, 80, 4, 12, 5, 0.5, 0.1, 0.9});
        };
    }

    /** Where a search begins, as shares of the span: chosen from what searches in 16 kn found. */
    double[] begin() {
        double[] shares = new double[middle.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = (middle[i] - least[i]) / (most[i] - least[i]);
        }
        return shares;
    }

    /** Moves at shares of the span, 0 to 1 each. */
    TurnMoves at(TurnKind kind, double[] shares) {
        double[] value = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            value[i] = least[i] + Math.max(0, Math.min(1, shares[i])) * (most[i] - least[i]);
        }
        return switch (kind) {
            case TACK, GYBE ->
                new TurnMoves(
                        0,
                        rad(value[0]),
                        rad(value[1]),
                        rad(value[2]),
                        rad(value[3]),
                        rad(value[4]),
                        new TurnConduct(rad(value[5]), rad(value[6]), value[7], value[8], value[9], value[10]));
            case BEAR_AWAY, ROUND_UP ->
                new TurnMoves(
                        value[0],
                        rad(value[1]),
                        0,
                        0,
                        rad(value[2]),
                        rad(value[3]),
                        new TurnConduct(rad(value[4]), rad(value[5]), value[6], 0, value[7], value[8]));
        };
    }

    /** The moves' shares of the span. */
    double[] sharesOf(TurnKind kind, TurnMoves moves) {
        TurnConduct conduct = moves.conduct();
        double[] value = switch (kind) {
            case TACK, GYBE ->
                new double[] {
                    deg(moves.ease()),
                    deg(moves.over()),
                    deg(moves.across()),
                    deg(moves.on()),
                    deg(moves.power()),
                    deg(conduct.rate()),
                    deg(conduct.exit()),
                    conduct.build(),
                    conduct.board(),
                    conduct.height(),
                    conduct.moment()
                };
            case BEAR_AWAY, ROUND_UP ->
                new double[] {
                    moves.lead(),
                    deg(moves.ease()),
                    deg(moves.on()),
                    deg(moves.power()),
                    deg(conduct.rate()),
                    deg(conduct.exit()),
                    conduct.build(),
                    conduct.height(),
                    conduct.moment()
                };
        };
        double[] shares = new double[value.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.max(0, Math.min(1, (value[i] - least[i]) / (most[i] - least[i])));
        }
        return shares;
    }

    int size() {
        return least.length;
    }

    private static double deg(double radians) {
        return Math.toDegrees(radians);
    }

    private static double rad(double degrees) {
        return Math.toRadians(degrees);
    }

    private static TurnSpan span(double[] least, double[] most, double[] middle) {
        return new TurnSpan(least, most, middle);
    }
}
