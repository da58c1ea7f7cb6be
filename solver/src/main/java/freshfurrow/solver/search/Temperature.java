package freshfurrow.solver.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.solver.estimate.NearFields;
import freshfurrow.solver.schedule.FieldLists;
import freshfurrow.solver.schedule.ListPlayer;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** How bad a move annealing may accept at its start, from what moves of one field do to the score of a season. */
final class Temperature {
    private static final int SAMPLES = 200;

    private final double medium;
    private final double soft;

    private Temperature(double medium, double soft) {
        this.medium = medium;
        this.soft = soft;
    }

    /** The score by which the middle one of the worsening moves worsens the lists, by level. */
    static Temperature of(CompiledSeason season, NearFields near, FieldLists lists, long seed) {
        ListPlayer player = new ListPlayer(season);
        HardMediumSoftLongScore before = player.score(lists);
        Random random = new Random(seed);
        List<Long> medium = new ArrayList<>();
        List<Long> soft = new ArrayList<>();
        for (int sample = 0; sample < SAMPLES; sample++) {
            HardMediumSoftLongScore change = before.subtract(player.score(moved(lists, near, random)));
            if (change.mediumScore() > 0) {
                medium.add(change.mediumScore());
            }
            if (change.softScore() > 0) {
                soft.add(change.softScore());
            }
        }
        return new Temperature(middle(medium), middle(soft));
    }

    /** Starting temperature of an annealing, as a share of the middle worsening. */
    HardMediumSoftLongScore times(double share) {
        return HardMediumSoftLongScore.of(
                0, Math.round(Math.ceil(medium * share)), Math.round(Math.ceil(soft * share)));
    }

    private static FieldLists moved(FieldLists lists, NearFields near, Random random) {
        List<List<Integer>> moved = new ArrayList<>();
        lists.byPlanter().forEach(list -> moved.add(new ArrayList<>(list)));
        List<Integer> from = moved.get(random.nextInt(moved.size()));
        if (from.isEmpty()) {
            return lists;
        }
        Integer field = from.remove(random.nextInt(from.size()));
        int[] others = near.byRoad(field);
        Integer nearOne = others.length == 0 ? field : (Integer) others[random.nextInt(others.length)];
        List<Integer> to = moved.stream()
                .filter(list -> list.contains(nearOne))
                .findFirst()
                .orElse(from);
        to.add(Math.max(0, to.indexOf(nearOne)), field);
        return new FieldLists(moved);
    }

    private static double middle(List<Long> worsenings) {
        return worsenings.isEmpty()
                ? 1
                : worsenings.stream()
                        .sorted()
                        .skip(worsenings.size() / 2)
                        .findFirst()
                        .orElseThrow();
    }
}
