package trimwright.fleet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.chance.RandomStream;

class EffectsTest {
    private static final double[] TRUE = {0.5, -0.2, 0.1, -0.4};

    /** Moments of two or three of four boats, each with a level of its own and a slope of 0.7 over the boats' winds. */
    private static BlockSums sums(int[] names, double noise, long seed) {
        RandomStream random = new RandomStream(seed);
        BlockSums sums = new BlockSums(4);
        for (int m = 0; m < 400; m++) {
            int[] there = m % 3 == 0 ? new int[] {0, 1, 2} : m % 3 == 1 ? new int[] {1, 3} : new int[] {2, 3};
            double level = random.uniform(5, 15);
            double[] values = new double[there.length];
            double[] winds = new double[there.length];
            int[] who = new int[there.length];
            for (int i = 0; i < there.length; i++) {
                winds[i] = random.normal();
                values[i] = level + TRUE[there[i]] + 0.7 * winds[i] + noise * random.normal();
                who[i] = names[there[i]];
            }
            sums.add(who, values, winds);
        }
        return sums;
    }

    /** A boat less the mean of the other three. */
    private static double expected(int boat) {
        double others = 0;
        for (int b = 0; b < TRUE.length; b++) {
            others += b == boat ? 0 : TRUE[b] / (TRUE.length - 1);
        }
        return TRUE[boat] - others;
    }

    @Test
    void withoutNoiseTheyComeBackExactlyWhoeverMetWhom() {
        double[] found = Effects.of(sums(new int[] {0, 1, 2, 3}, 0, 1));
        for (int b = 0; b < TRUE.length; b++) {
            assertEquals(expected(b), found[b], 1e-9);
        }
    }

    @Test
    void theOrderOfBoatsAndOfStretchesDoesNotMatter() {
        double[] straight = Effects.of(sums(new int[] {0, 1, 2, 3}, 0.3, 2));
        double[] turned = Effects.of(sums(new int[] {3, 2, 1, 0}, 0.3, 2));
        assertArrayEquals(straight, new double[] {turned[3], turned[2], turned[1], turned[0]}, 1e-9);
        BlockSums joined = new BlockSums(4);
        joined.add(sums(new int[] {0, 1, 2, 3}, 0.3, 2));
        joined.add(sums(new int[] {0, 1, 2, 3}, 0.3, 3));
        BlockSums other = new BlockSums(4);
        other.add(sums(new int[] {0, 1, 2, 3}, 0.3, 3));
        other.add(sums(new int[] {0, 1, 2, 3}, 0.3, 2));
        assertArrayEquals(Effects.of(joined), Effects.of(other), 1e-9);
    }

    @Test
    void boatsThatNeverMetAreNotCompared() {
        BlockSums sums = new BlockSums(4);
        sums.add(new int[] {0, 1}, new double[] {1, 2}, new double[] {0, 0});
        assertTrue(Double.isNaN(Effects.of(sums)[2]));
        assertEquals(-1, Effects.of(sums)[0], 1e-9);
        sums.add(new int[] {2, 3}, new double[] {5, 5}, new double[] {0, 0});
        assertTrue(Double.isNaN(Effects.of(sums)[0]), "two pairs that never met");
    }
}
