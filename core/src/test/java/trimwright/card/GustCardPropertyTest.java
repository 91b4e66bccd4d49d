package trimwright.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.boat.TrimRange;
import trimwright.platform.Variable;
import trimwright.target.TargetFinder;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

class GustCardPropertyTest {
    private static final GustCard CARD = new GustCard(DemoTargets.PLATFORM, DemoTargets.HANDLING);

    /** Halving ends within 1e-6 of the range of a control that sheds some times the moment over it. */
    private static final double HALVED = 1e-4;

    private static GustRow row(TargetPoint point, double gustKn) {
        GustRow row = CARD.rowOf(point, Units.fromKnots(gustKn), 0);
        assertNotNull(row);
        return row;
    }

    @Test
    void theMomentJumpsWithTheGustAndFallsWithTheLull() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double last = Double.NEGATIVE_INFINITY;
            for (double gustKn : new double[] {-4, -2, 2, 4, 6}) {
                GustRow row = row(point, gustKn);
                assertTrue(row.jump() * gustKn > 0);
                assertTrue(row.atOnce() > last);
                last = row.atOnce();
                // Of the same size as the moment that the target's crew and foils hold, wing's share.
                double held = point.getTarget().loads().rightingMoment();
                assertEquals(held, row.before(), 0.2 * held);
            }
        }
    }

    @Test
    void whatIsEnoughBringsTheMomentBack() {
        int enough = 0;
        for (TargetPoint point : DemoTargets.FOILING) {
            for (double gustKn : new double[] {-2, 2, 4, 6}) {
                GustRow row = row(point, gustKn);
                for (GustAct act : row.acts()) {
                    if (act.isEnough()) {
                        enough++;
                        assertEquals(row.before(), act.heelingMoment(), HALVED * row.before(), act.toString());
                        assertTrue(act.stallMargin() > 0);
                    } else {
                        assertTrue(Math.abs(act.heelingMoment() - row.before()) <= Math.abs(row.jump()) * (1 + HALVED));
                    }
                }
            }
        }
        assertTrue(enough >= 8, "sheet alone brings every gust's moment back: " + enough);
    }

    @Test
    void theFirstActIsInTimeAndNoneBetterIsSooner() {
        for (TargetPoint point : DemoTargets.FOILING) {
            GustRow row = row(point, 4);
            GustAct first = row.first();
            assertTrue(first.isInTime(), first.toString());
            for (GustAct act : row.acts()) {
                // Two per cent of the drive count as equal; then the sooner one goes first.
                double more = (act.drive() - first.drive()) / row.driveBefore();
                assertTrue(!act.isInTime() || more <= 0.02);
                assertTrue(!act.isInTime() || more < 0 || act.seconds() >= first.seconds());
            }
            assertTrue(first.drive() < row.driveAtOnce(), "a gust's moment is not shed for nothing");
        }
    }

    @Test
    void noActGoesPastARangeOrALimit() {
        TrimRange range = DemoTargets.PLATFORM.wing().trim();
        for (TargetPoint point : DemoTargets.FOILING) {
            for (double gustKn : new double[] {-4, -2, 2, 4, 6}) {
                for (GustAct act : row(point, gustKn).acts()) {
                    double value = point.state().get(act.control()) + act.change();
                    double camber = act.control() == Variable.CAMBER
                            ? value
                            : point.state().get(Variable.CAMBER);
                    double twist = act.control() == Variable.TWIST
                            ? value
                            : point.state().get(Variable.TWIST);
                    assertTrue(camber <= range.camberMax() + 1e-9 && camber >= -1e-9);
                    assertTrue(twist <= range.twistMax() + 1e-9 && twist >= -1e-9);
                    assertTrue(camber - twist >= range.headFlapMin() - 1e-6);
                }
            }
        }
    }

    /** Slow controls are never first where a fast one serves: rates come from the boat file. */
    @Test
    void secondsAreChangeOverRate() {
        GustRow row = row(DemoTargets.FOILING.get(0), 4);
        List<Double> rates = List.of(
                DemoTargets.HANDLING.rates().sheetEase(),
                DemoTargets.HANDLING.rates().camber(),
                DemoTargets.HANDLING.rates().twist());
        for (int i = 0; i < rates.size(); i++) {
            GustAct act = row.acts().get(i);
            assertEquals(Math.abs(act.change()) / rates.get(i), act.seconds(), 1e-12 + 1e-9 * act.seconds());
        }
    }

    /**
     * Upwind a wind that comes from further aft with the gust asks for more ease, one that heads for less. On the fastest reach the
     * apparent wind is as far aft as it goes, so that a shift changes nothing to first order.
     */
    @Test
    void aShiftAftAsksForMoreEase() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double headed = easedIn(point, -3);
            double straight = easedIn(point, 0);
            double lifted = easedIn(point, 3);
            if (point.trueWindAngle() < Math.PI / 2) {
                assertTrue(headed < straight - Units.fromDegrees(0.3), headed + " of " + straight);
                assertTrue(lifted > straight + Units.fromDegrees(0.3), lifted + " of " + straight);
            } else {
                assertEquals(straight, headed, Units.fromDegrees(0.3));
                assertEquals(straight, lifted, Units.fromDegrees(0.3));
            }
        }
    }

    private static double easedIn(TargetPoint point, double shiftDeg) {
        GustRow row = CARD.rowOf(point, Units.fromKnots(4), Units.fromDegrees(shiftDeg));
        assertNotNull(row);
        return row.acts().get(0).change();
    }

    /**
     * Downwind in light air a puff comes from further aft and stalls the wing, so that the moment hardly jumps: the first act there is
     * to ease until the wing is clear of stall, further than the moment alone would ask. Upwind nothing stalls.
     */
    @Test
    void downwindAPuffStallsTheWingAndTheFirstActFreesIt() {
        List<TargetPoint> points = new TargetFinder(DemoTargets.PLATFORM, Map.of())
                .pointsAt(Units.fromKnots(11), List.of(Units.fromDegrees(75)));
        double margin = DemoTargets.PLATFORM.wing().trim().stallMarginMin();
        int seen = 0;
        for (TargetPoint point : points) {
            if (!point.isSolved() || !point.isFoiling()) {
                continue;
            }
            GustRow row = row(point, 6);
            seen++;
            boolean isDownwind = point.trueWindAngle() > Math.PI / 2;
            assertEquals(isDownwind, row.isStalled(), point.mode() + " " + row.stallMarginAtOnce());
            if (isDownwind) {
                assertTrue(row.jump() < 0.3 * row.before());
                assertEquals(Variable.SHEET, row.first().control());
                assertTrue(row.first().isEnough() && row.first().stallMargin() >= margin - 1e-9);
                assertTrue(row.first().heelingMoment() < row.before());
            }
        }
        assertTrue(seen >= 2);
    }
}
