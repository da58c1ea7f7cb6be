package freshfurrow.model.timeline.actual;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random numbers that follow from what they are for and from nothing that was drawn before, so that seasons that differ in one thing have all others in
 * common.
 */
final class KeyedRandom {
    /** The step and the mixing of SplitMix64 (Steele, Lea and Flood, 'Fast splittable pseudorandom number generators', 2014). */
    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

    private static final long MIX_1 = 0xBF58476D1CE4E5B9L;
    private static final long MIX_2 = 0x94D049BB133111EBL;

    private KeyedRandom() {}

    /** A key for one thing among those that have a key in common. */
    static long key(long common, long thing) {
        long z = common + GOLDEN_GAMMA * (thing + 1);
        z = (z ^ (z >>> 30)) * MIX_1;
        z = (z ^ (z >>> 27)) * MIX_2;
        return z ^ (z >>> 31);
    }

    static UniformRandomProvider of(long key) {
        return RandomSource.SPLIT_MIX_64.create(key);
    }
}
