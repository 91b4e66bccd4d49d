package trimwright.turn;

import trimwright.crew.TurnKind;

/** Between which moves a plan is sought; all chosen, wide enough that found plans lie inside. */
record TurnSpan(double[] least, double[] most) {
    static TurnSpan of(TurnKind kind) {
        return switch (kind) {
            case TACK -> span(new double[] {-4, -15, -5, 0, 0, 12}, new double[] {10, 25, 20, 30, 15, 25});
            case GYBE -> span(new double[] {-6, -10, -5, 0, 0, 10}, new double[] {15, 25, 30, 30, 20, 25});
            case BEAR_AWAY -> span(new double[] {0.5, 0, 60, 0, 6}, new double[] {3, 15, 150, 15, 20});
            case ROUND_UP -> span(new double[] {0, -2, 45, 0, 5}, new double[] {3, 15, 110, 10, 20});
        };
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
                        0, rad(value[0]), rad(value[1]), rad(value[2]), rad(value[3]), rad(value[4]), rad(value[5]));
            case BEAR_AWAY, ROUND_UP ->
                new TurnMoves(value[0], rad(value[1]), 0, 0, rad(value[2]), rad(value[3]), rad(value[4]));
        };
    }

    /** The moves' shares of the span. */
    double[] sharesOf(TurnKind kind, TurnMoves moves) {
        double[] value = switch (kind) {
            case TACK, GYBE ->
                new double[] {
                    deg(moves.ease()),
                    deg(moves.over()),
                    deg(moves.across()),
                    deg(moves.on()),
                    deg(moves.power()),
                    deg(moves.rate())
                };
            case BEAR_AWAY, ROUND_UP ->
                new double[] {moves.lead(), deg(moves.ease()), deg(moves.on()), deg(moves.power()), deg(moves.rate())};
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

    private static TurnSpan span(double[] least, double[] most) {
        return new TurnSpan(least, most);
    }
}
