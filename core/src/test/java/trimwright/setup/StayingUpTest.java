package trimwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class StayingUpTest {
    /** An Ornstein-Uhlenbeck process walked in small steps, the boat switched by its two bounds. */
    @Test
    void theShareUpIsThatOfAWalkedWind() {
        double low = -0.4;
        double high = 0.9;
        double dt = 0.0005;
        double decay = Math.exp(-dt);
        double kick = Math.sqrt(1 - decay * decay);
        // A walk in steps meets a bound later than the process itself, by 0.5826 of a step's deviation (Siegmund's
        // correction).
        double late = 0.5826 * kick;
        Random random = new Random(7);
        double y = 0;
        boolean isUp = false;
        int bins = 5;
        long[] up = new long[bins];
        long[] all = new long[bins];
        for (int i = 0; i < 12_000_000; i++) {
            y = decay * y + kick * random.nextGaussian();
            isUp = isUp ? y > low + late : y > high - late;
            int bin = (int) Math.floor((y - low) / (high - low) * bins);
            if (bin >= 0 && bin < bins) {
                all[bin]++;
                up[bin] += isUp ? 1 : 0;
            }
        }
        for (int bin = 0; bin < bins; bin++) {
            double middle = low + (bin + 0.5) * (high - low) / bins;
            assertEquals(StayingUp.share(middle, low, high), up[bin] / (double) all[bin], 0.03, "at " + middle);
        }
    }

    @Test
    void outsideTheBoundsThereIsNoDoubt() {
        assertEquals(0, StayingUp.share(-1, -0.5, 0.5), 0);
        assertEquals(1, StayingUp.share(0.5, -0.5, 0.5), 0);
        assertEquals(0.5, StayingUp.share(0, -0.5, 0.5), 1e-9);
        // Far above what the wind reaches: never up; between bounds far below: always.
        assertEquals(0, StayingUp.share(0, -1, Double.POSITIVE_INFINITY), 1e-9);
        assertEquals(1, StayingUp.share(0, -40, 0.5), 1e-4);
        assertEquals(0, StayingUp.share(0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY), 0);
    }
}
