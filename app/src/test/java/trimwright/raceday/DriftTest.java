package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.ComputedHand;
import trimwright.crew.Habits;
import trimwright.crew.Sight;
import trimwright.drills.DrillBoats;
import trimwright.motion.MotionState;
import trimwright.motion.Rates;
import trimwright.practice.Drill;
import trimwright.practice.DrillRun;
import trimwright.units.Units;

/**
 * Ten minutes of straight sailing in a steady wind end as they began: the steps add up no error of their own. An hour is sailed with
 * {@code -Dtrimwright.drift.minutes=60}.
 */
class DriftTest {
    private static final int MINUTES = Integer.getInteger("trimwright.drift.minutes", 10);
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final double GRAVITY = 9.81;

    /** Time from which she counts as settled (s). */
    private static final double SETTLED = 60;

    @Test
    void straightSailingDoesNotDrift() {
        sail(Drill.HOLD);
        sail(Drill.RUN);
    }

    private static void sail(Drill drill) {
        DrillRun run = new DrillRun(
                DrillBoats.setup(
                        drill,
                        FILE,
                        FILE.boat().wings().get(0),
                        LoneBoatBook.get(),
                        Units.fromKnots(15),
                        /* seed= */ 1),
                new ComputedHand(FILE.boat().wings().get(0), Habits.NONE, 1));
        double end = SETTLED + 60.0 * MINUTES;
        Means first = new Means();
        Means last = new Means();
        double most = 0;
        double time = 0;
        while (time < end) {
            Sight sight = run.step().sight();
            time += DrillRun.STEP;
            double energy = energy(sight.state());
            assertTrue(Double.isFinite(energy), drill + " after " + time + " s");
            if (time > SETTLED) {
                // Nothing may grow in the minutes between either.
                most = Math.max(most, energy);
            }
            if (time > SETTLED && time <= SETTLED + 60) {
                first.add(sight, energy);
            } else if (time > end - 60) {
                last.add(sight, energy);
            }
        }
        String told = drill + ": " + first + " then " + last + ", most " + most;
        assertEquals(1, last.speed() / first.speed(), 1e-3, told);
        assertEquals(first.height(), last.height(), 0.005, told);
        assertEquals(first.heel(), last.heel(), Math.toRadians(0.1), told);
        assertTrue(last.swing() <= first.swing() + 1e-3 * most, told);
        assertTrue(most <= 1.001 * Math.max(first.most, last.most), told);
    }

    /** Of the motion of her mass and of her height (J/kg), and of a kilogram a metre off her middle by her turning. */
    private static double energy(MotionState state) {
        Rates r = state.rates();
        double along = r.surge() * r.surge() + r.sway() * r.sway() + r.climb() * r.climb();
        double round = r.roll() * r.roll() + r.pitch() * r.pitch() + r.yaw() * r.yaw();
        return (along + round) / 2 + GRAVITY * state.pose().height();
    }

    /** What a minute had: means, and its energy's least and most. */
    private static final class Means {
        private double speed;
        private double height;
        private double heel;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;
        private int count;

        void add(Sight sight, double energy) {
            speed += sight.speed();
            height += sight.state().pose().height();
            heel += sight.state().pose().roll();
            least = Math.min(least, energy);
            most = Math.max(most, energy);
            count++;
        }

        double swing() {
            return most - least;
        }

        double speed() {
            return speed / count;
        }

        double height() {
            return height / count;
        }

        double heel() {
            return heel / count;
        }

        @Override
        public String toString() {
            return speed() + " m/s, " + height() + " m, " + Math.toDegrees(heel()) + " deg, " + least + " to " + most
                    + " J/kg";
        }
    }
}
