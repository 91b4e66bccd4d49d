package trimwright.turn;

import trimwright.chance.RandomStream;

/**
 * What no plan decides: the gusts, how long the trimmer takes to act on a cue, how well the oil drives the flap.
 *
 * @param seed of the wind
 * @param delay from a cue to the hand (s): evenly between 0.25 and 0.4, the published span of human delay
 * @param oil share of the usual rate at which the flap goes over (-): 0.7 to 1, chosen
 * @param begin how long she sails before the word (s): 10 to 14, so that gusts come at any time
 */
public record TurnChance(long seed, double delay, double oil, double begin) {
    /** The chances of that number. */
    public static TurnChance of(long seed) {
        RandomStream random = RandomStream.of(seed, "turn");
        return new TurnChance(seed, random.uniform(0.25, 0.4), random.uniform(0.7, 1), random.uniform(10, 14));
    }
}
