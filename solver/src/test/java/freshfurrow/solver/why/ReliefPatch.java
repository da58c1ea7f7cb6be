package freshfurrow.solver.why;

import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WaterPoint;
import freshfurrow.model.season.WorkHours;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a user would change in a season file to follow an advice, worked out from the file's own figures. */
final class ReliefPatch {
    private ReliefPatch() {}

    /** The advice as a merge patch. */
    static String of(Season season, Relief relief) {
        if (relief instanceof Relief.MoreCompost more) {
            double kg = lot(season, more.lot()).massKg() + more.kg();
            return "{\"compost\": {\"%s\": {\"mass\": \"%s kg\"}}}".formatted(more.lot(), kg);
        }
        if (relief instanceof Relief.Refilled refilled) {
            double kg = refilled.lot().massKg() + refilled.kg();
            return "{\"compost\": {\"%s\": {\"mass\": \"%s kg\"}}}"
                    .formatted(refilled.lot().id(), kg);
        }
        if (relief instanceof Relief.CompostSooner sooner) {
            return "{\"compost\": {\"%s\": {\"from\": \"%s\"}}}"
                    .formatted(sooner.lot(), lot(season, sooner.lot()).from().minusDays(sooner.days()));
        }
        if (relief instanceof Relief.LongerDay longer) {
            return "{\"planters\": {\"%s\": {\"hours\": %s}}}"
                    .formatted(
                            longer.planter(), longer(season.applicators().get(0).hours(), longer.minutes()));
        }
        if (relief instanceof Relief.LongerDayForAll longer) {
            return "{\"hours\": " + longer(season.applicators().get(0).hours(), longer.minutes()) + "}";
        }
        if (relief instanceof Relief.MoreRigs rigs) {
            Rig like = season.rigs().get(0);
            return "{\"rigs\": "
                    + each(IntStream.rangeClosed(1, rigs.count()).boxed().toList(), i -> "X" + i, i -> rig(like)) + "}";
        }
        if (relief instanceof Relief.FasterBatches batches) {
            return "{\"rigs\": "
                    + each(season.rigs(), Rig::id, rig -> "{\"batchTime\": \"%d s\"}"
                            .formatted(rig.batchTimeS() / 20 * (20 - batches.percent() / 5)))
                    + "}";
        }
        if (relief instanceof Relief.FasterWater water) {
            return points(season, "flow", point -> point.flowLPerS() * (100 + water.percent()) / 100 + " L/s", true);
        }
        if (relief instanceof Relief.MoreHoses hoses) {
            return points(season, "hoses", point -> point.hoses() + hoses.count() + "", false);
        }
        if (relief instanceof Relief.HigherDailyLimit limit) {
            return points(
                    season,
                    "dailyLimit",
                    point -> point.dailyLimitL().orElseThrow() * (100 + limit.percent()) / 100 + " L",
                    true);
        }
        if (relief instanceof Relief.LongerWait wait) {
            Applicator planter = season.applicators().stream()
                    .filter(own -> own.id().equals(wait.planter()))
                    .findFirst()
                    .orElseThrow();
            return "{\"planters\": {\"%s\": {\"longestWait\": \"%d min\"}}}"
                    .formatted(wait.planter(), planter.longestWaitS().getAsInt() / 60 + wait.minutes());
        }
        Relief.LongerHold hold = (Relief.LongerHold) relief;
        return "{\"recipes\": {\"%s\": {\"hold\": \"%d s\"}}}"
                .formatted(hold.recipe(), season.recipe(hold.recipe()).holdS() + 60 * hold.minutes());
    }

    private static CompostLot lot(Season season, String id) {
        return season.lot(id).orElseThrow();
    }

    private static String points(Season season, String key, Function<WaterPoint, String> value, boolean quoted) {
        String quote = quoted ? "\"" : "";
        return "{\"waterPoints\": "
                + each(
                        season.waterPoints(),
                        point -> point.id(),
                        point -> "{\"" + key + "\": " + quote + value.apply(point) + quote + "}")
                + "}";
    }

    private static String rig(Rig like) {
        return String.format(
                Locale.ROOT,
                "{\"drum\": \"%s L\", \"batchCompost\": \"%s kg\", \"batchTime\": \"%d s\", \"cleanTime\": \"%d s\","
                        + " \"nurseTank\": \"%s L\", \"transferRate\": \"%s L/s\", \"roadSpeed\": \"%s m/s\","
                        + " \"extractAt\": \"%s\", \"at\": \"%s\"}",
                like.drumL(),
                like.batchCompostKg(),
                like.batchTimeS(),
                like.cleanTimeS(),
                like.nurseTankL(),
                like.transferLPerS(),
                like.roadSpeedMPerS(),
                like.extractAt().name().toLowerCase(Locale.ROOT),
                like.at());
    }

    private static <T> String each(List<T> all, Function<T, String> id, Function<T, String> change) {
        return all.stream()
                .map(one -> "\"" + id.apply(one) + "\": " + change.apply(one))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** Later evenings, and beyond midnight earlier mornings. */
    private static String longer(WorkHours hours, int minutes) {
        List<DaySpan> spans = hours.spans();
        int evening = spans.get(spans.size() - 1).endS() / 60 + minutes;
        return IntStream.range(0, spans.size())
                .mapToObj(i -> {
                    int from = spans.get(i).startS() / 60 - (i == 0 ? Math.max(0, evening - 24 * 60) : 0);
                    int to = i == spans.size() - 1
                            ? Math.min(24 * 60, evening)
                            : spans.get(i).endS() / 60;
                    return "\"" + clock(from) + "/" + clock(to) + "\"";
                })
                .collect(Collectors.joining(", ", "[", "]"));
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
}
