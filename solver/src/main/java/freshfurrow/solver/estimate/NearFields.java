package freshfurrow.solver.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * For each field a few others that may well stand beside it in a list, in several kinds of nearness: by road; by window; by recipe,
 * as a load serves no other; by drainage, as such fields are dry on the same day after rain. Of those that are equally near in kind
 * the nearest by road come first. A kind that tells no field of the season from another is left out. For use by any threads.
 */
public final class NearFields {
    private static final int PER_KIND = 12;
    private static final int METRES_PER_DAY_APART = 1_000;

    /** So much road that a field of another kind is near only when there are too few of the same. */
    private static final int METRES_TO_ANOTHER_KIND = 1_000_000;

    private final int fields;
    private final List<Kind> kinds = new ArrayList<>();

    public NearFields(SeasonEstimate season) {
        fields = season.fieldCount();
        kinds.add(new Kind(fields, season::metres));
        kinds.add(new Kind(fields, (here, other) -> season.metres(here, other) + daysApart(season, here, other)));
        addKind(season, season::recipe);
        addKind(season, season::drainage);
    }

    /** Kinds of nearness, 2 or more. */
    public int kinds() {
        return kinds.size();
    }

    /** Near in one of the kinds, the nearest first; empty only when there is no other field. */
    public int[] near(int kind, int field) {
        Kind near = kinds.get(kind);
        int[] known = near.known().get(field);
        if (known == null) {
            known = nearest(field, near.distance());
            near.known().set(field, known);
        }
        return known;
    }

    private void addKind(SeasonEstimate season, IntFunction<Object> kindOf) {
        List<Object> kind = IntStream.range(0, fields).mapToObj(kindOf).toList();
        if (kind.stream().distinct().count() > 1) {
            kinds.add(new Kind(
                    fields,
                    (here, other) -> season.metres(here, other)
                            + daysApart(season, here, other) / 4
                            + (kind.get(here).equals(kind.get(other)) ? 0 : METRES_TO_ANOTHER_KIND)));
        }
    }

    /** In metres. */
    private static int daysApart(SeasonEstimate season, int one, int other) {
        int days =
                Math.abs(season.opens(one) - season.opens(other)) + Math.abs(season.closes(one) - season.closes(other));
        return days * METRES_PER_DAY_APART;
    }

    private int[] nearest(int here, Distance distance) {
        long[] nearest = new long[Math.min(PER_KIND, fields - 1)];
        int count = 0;
        for (int other = 0; other < fields; other++) {
            if (other == here) {
                continue;
            }
            long next = ((long) distance.between(here, other) << 32) | other;
            if (count < nearest.length || next < nearest[count - 1]) {
                int at = count < nearest.length ? count++ : count - 1;
                for (; at > 0 && nearest[at - 1] > next; at--) {
                    nearest[at] = nearest[at - 1];
                }
                nearest[at] = next;
            }
        }
        return Arrays.stream(nearest).mapToInt(packed -> (int) packed).toArray();
    }

    /**
     * A kind of nearness.
     *
     * @param known what has been asked for, by field: which others are near takes a look at all, and searches ask of few fields at first
     */
    private record Kind(Distance distance, AtomicReferenceArray<int @Nullable []> known) {
        Kind(int fields, Distance distance) {
            this(distance, new AtomicReferenceArray<>(fields));
        }
    }

    @FunctionalInterface
    private interface Distance {
        int between(int here, int other);
    }
}
