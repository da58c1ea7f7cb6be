package freshfurrow.model.learn;

import freshfurrow.model.log.Entry;
import freshfurrow.model.log.Fact;
import freshfurrow.model.log.SeasonLog;
import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.Plan;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.Season;
import freshfurrow.model.timeline.CompiledSeason;
import freshfurrow.model.timeline.WorkingTime;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What somebody with a watch logs of a season as the timeline let it turn out: of each piece of work the time of the work alone. */
final class TurnedOutLog {
    private final Season season;
    private final Plan plan;
    private final WorkingTime hours;
    private final Map<String, Plan.Batch> batches;
    private final Map<String, Plan.Load> loads;
    private final List<Entry> entries = new ArrayList<>();

    private TurnedOutLog(Season season, Plan plan) {
        this.season = season;
        this.plan = plan;
        hours = new WorkingTime(CompiledSeason.of(season));
        batches = plan.batches().stream().collect(Collectors.toMap(Plan.Batch::id, Function.identity()));
        loads = plan.loads().stream().collect(Collectors.toMap(Plan.Load::id, Function.identity()));
    }

    /** @param turnedOut a plan that was recorded as it turned out, with no breakdowns */
    static SeasonLog of(Season season, Plan turnedOut) {
        return new TurnedOutLog(season, turnedOut).log();
    }

    private SeasonLog log() {
        record Deed(String machine, Activity activity) {}
        List<Deed> deeds = new ArrayList<>();
        plan.rigs().forEach((id, its) -> its.activities().forEach(one -> deeds.add(new Deed(id, one))));
        plan.planters().forEach((id, its) -> its.activities().forEach(one -> deeds.add(new Deed(id, one))));
        deeds.sort(Comparator.comparing(deed -> deed.activity().end()));
        deeds.forEach(deed -> did(deed.machine(), deed.activity()));
        return new SeasonLog(entries);
    }

    private void did(String machine, Activity activity) {
        double durationS = Duration.between(activity.start(), activity.end()).toSeconds();
        if (activity instanceof Activity.Extract extract) {
            List<String> its = loads.values().stream()
                    .filter(load -> load.batches().contains(extract.batch()))
                    .map(Plan.Load::id)
                    .toList();
            Plan.Batch batch = batches.get(extract.batch());
            log(activity.end(), durationS, new Fact.BatchMade(machine, batch.lots(), its, Optional.of(extract.at())));
        } else if (activity instanceof Activity.Transfer transfer) {
            Applicator into = season.applicator(loads.get(transfer.load()).planter());
            Rig rig = season.rig(machine);
            if (into.on().isEmpty()) {
                double pumpingS = transfer.litres() / rig.transferLPerS();
                double alone = pumpingS / (pumpingS + into.fillSetupS());
                log(
                        activity.end(),
                        durationS * alone,
                        new Fact.Transferred(machine, transfer.litres(), Optional.of(transfer.load())));
            }
        } else if (activity instanceof Activity.Planting planting) {
            Optional<String> load =
                    planting instanceof Activity.Plant plant ? Optional.of(plant.load()) : Optional.empty();
            log(
                    activity.end(),
                    planterS(machine, activity),
                    new Fact.Planted(planting.field(), planting.areaHa(), Optional.of(machine), load, load.isEmpty()));
        } else if (activity instanceof Activity.Move move && move.km() > 0 && isRig(machine)) {
            log(activity.end(), durationS, new Fact.Driven(machine, move.from(), move.to()));
        }
    }

    private boolean isRig(String machine) {
        return plan.rigs().containsKey(machine);
    }

    /** Without breaks, in which a planter stands. */
    private int planterS(String machine, Activity activity) {
        int planter = season.applicators().indexOf(season.applicator(machine));
        return hours.planterS(planter, (int) season.time().seconds(activity.start()), (int)
                season.time().seconds(activity.end()));
    }

    private void log(LocalDateTime end, double tookS, Fact fact) {
        if (Math.round(tookS) > 0) {
            entries.add(
                    new Entry(entries.size() + 1, end, fact, Optional.of(Duration.ofSeconds(Math.round(tookS))), ""));
        }
    }
}
