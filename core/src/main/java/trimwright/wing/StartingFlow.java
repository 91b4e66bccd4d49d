package trimwright.wing;

import java.util.Arrays;

/** Circulations from which the search for a wing's flow begins, such that it ends in the one that the wing has. */
final class StartingFlow {
    private StartingFlow() {}

    /**
     * Circulation spread over the span as the half ellipse of the sections' mean lift at the undisturbed air, less what an
     * elliptic wing loses to its wake. Begun without, the steep wake of the ends throws the first step so far past zero lift
     * there that some end strips settle in a stall on the wrong side.
     */
    static void guess(StripFlow flow) {
        Wing wing = flow.wing;
        Arrays.fill(flow.gamma, 0);
        flow.update();
        double sum = 0;
        for (int i = 0; i < flow.n; i++) {
            // Without circulation the error is the circulation of the section alone, with its sign turned.
            sum -= flow.error[i] * wing.stripWidth(i);
        }
        double span = wing.span();
        double most = 4 / Math.PI * sum / span / (1 + 2 * wing.area() / (span * span));
        for (int i = 0; i < flow.n; i++) {
            double share = wing.stripHeight(i) / span;
            flow.gamma[i] = most * 2 * Math.sqrt(share * (1 - share));
        }
    }

    /**
     * An end strip that stalls and lifts against its unstalled neighbour has found a root of its own equation that no flow
     * leads to. Gives it the share of its neighbour's circulation that the square root of the distance to the end asks.
     */
    static boolean setEndsRight(StripFlow flow) {
        int last = flow.n - 1;
        double span = flow.wing.span();
        boolean low = setEndRight(flow, 0, 1, flow.wing.stripHeight(0), flow.wing.stripHeight(1));
        boolean high = setEndRight(
                flow, last, last - 1, span - flow.wing.stripHeight(last), span - flow.wing.stripHeight(last - 1));
        return low || high;
    }

    private static boolean setEndRight(StripFlow flow, int end, int next, double fromEnd, double nextFromEnd) {
        boolean wrong = flow.point[end].stallMargin < 0
                && flow.point[next].stallMargin > 0
                && flow.point[end].cl * flow.point[next].cl < 0;
        if (wrong) {
            flow.gamma[end] = flow.gamma[next] * Math.sqrt(fromEnd / nextFromEnd);
        }
        return wrong;
    }
}
