package trimwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.segment.Cutting;
import trimwright.segment.FoilingRule;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

class TrimLossesTest {
    private static final int RATE = 5;

    /** Curvature of the price by camber, a degree squared (-). */
    private static final double CURVED = 0.02;

    /** Upwind on port tack until 150 s, then on starboard, the camber gauge showing so many degrees more than the target. */
    private static double meanLoss(DoubleUnaryOperator port, DoubleUnaryOperator starboard) {
        var track = new SyntheticTrack(300, RATE)
                .heading(t -> t < 150 ? 45 : Math.max(-45, 45 - 10 * (t - 150)))
                .with(Paths.CAMBER, t -> Math.toRadians((t < 154 ? port : starboard).applyAsDouble(t)))
                .with(Paths.TWIST, t -> 0)
                .with(Paths.SHEET, t -> 0)
                .with(Paths.RIDE_HEIGHT, t -> 1)
                .build();
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), RATE);
        WindTrack wind = SailedWind.of(track, clock, null, WindOptions.DEFAULT);
        Pieces pieces = Cutting.of(wind, FoilingRule.ByRideHeight.DEFAULT);
        TargetBook book = ComparisonTest.tenEverywhere();
        double[][] second = new double[Trim.SIZE][Trim.SIZE];
        second[1][1] = -CURVED;
        Map<TargetPoint, SpeedSlopes> slopes = new HashMap<>();
        book.points().stream()
                .filter(point -> point.mode() == TargetMode.UPWIND)
                .forEach(point -> slopes.put(point, new SpeedSlopes(new double[Trim.SIZE], second)));
        SpeedLosses losses = TrimLosses.of(wind, pieces, new TrimTable(book, slopes), OthersAir.unknown(wind.size()));
        double sum = 0;
        int count = 0;
        for (Phase phase : pieces.phases()) {
            for (int i = phase.span().from(); i < phase.span().to(); i++) {
                if (i * 0.2 < 145 || i * 0.2 > 170) {
                    sum += losses.trim(i);
                    count++;
                }
            }
        }
        assertTrue(count > 1000, "instants " + count);
        return sum / count;
    }

    @Test
    void whatOnlyOneTackShowsIsTheGaugesAndWhatBothShowIsTheCrews() {
        // The gauge is signed by the side: two degrees too much on both tacks are a zero error.
        assertEquals(0, meanLoss(t -> 2, t -> 2), 1e-6);
        assertEquals(CURVED / 2 * 4, meanLoss(t -> -2, t -> 2), 1e-6);
        // Three on one tack and one on the other: two of the crew, one of the gauge.
        assertEquals(CURVED / 2 * 4, meanLoss(t -> -1, t -> 3), 1e-6);
    }

    @Test
    void trimThatSwingsAboutTheTargetCosts() {
        DoubleUnaryOperator swing = t -> 3 * Math.sin(2 * Math.PI * t / 40);
        // Half the square of the amplitude, which means over 10 s of 40 lessen by sin(x)/x of pi/4.
        double seen = 3 * Math.sin(Math.PI / 4) / (Math.PI / 4);
        assertEquals(CURVED / 2 * seen * seen / 2, meanLoss(swing, swing), 0.002);
    }
}
