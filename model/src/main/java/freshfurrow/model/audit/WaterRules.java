package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Rig;
import freshfurrow.model.season.WaterPoint;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What rigs draw, carry and pass on. Where a rig makes its batches at the water, what it carries is finished mix. */
final class WaterRules {
    private final Evidence evidence;

    WaterRules(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.plan.rigs().forEach((id, its) -> {
            Rig rig = evidence.rigs.get(id);
            if (rig != null) {
                onBoard(rig, its.activities());
            }
        });
        evidence.allBy(Activity.Draw.class, Activity.Draw::at).forEach((id, draws) -> {
            WaterPoint point = evidence.waterPoints.get(id);
            if (point == null) {
                draws.forEach(
                        draw -> evidence.report(Rule.DRAW_PLACE, draw.where(), "'" + id + "' is not a water point"));
            } else {
                draws.forEach(draw -> timeAndHours(draw, point));
                hoses(draws, point);
                dailyLimit(draws, point);
            }
        });
    }

    private void onBoard(Rig rig, List<Activity> activities) {
        double litres = evidence.carried
                .rig(rig.id())
                .map(standing ->
                        standing.waterL() + standing.mix().map(this::litres).orElse(0.0))
                .orElse(0.0);
        double passedOn = 0;
        int events = 3;
        for (Activity activity : activities) {
            double change = activity.onRigL();
            if (change == 0) {
                continue;
            }
            litres += change;
            passedOn = change > 0 ? 0 : passedOn - change;
            events++;
            double tolerance = events * Evidence.ROUNDING;
            if (litres < 0) {
                if (-litres > passedOn * Evidence.LEEWAY + tolerance) {
                    report(
                            rig,
                            activity,
                            Rule.WATER_ON_BOARD,
                            "it transfers or dumps more than it has: it is short by " + Evidence.show(-litres) + " L");
                }
                litres = 0;
            } else if (!(litres <= rig.nurseTankL() + tolerance)) {
                report(
                        rig,
                        activity,
                        Rule.NURSE_TANK,
                        "it has " + Evidence.show(litres) + " L on board, its nurse tank holds "
                                + Evidence.show(rig.nurseTankL()) + " L");
                litres = rig.nurseTankL();
            }
        }
    }

    private double litres(Mix mix) {
        var recipe = evidence.recipes.get(mix.recipe());
        return recipe == null ? 0 : mix.areaHa() * recipe.mixLPerHa();
    }

    private void report(Rig rig, Activity activity, Rule rule, String what) {
        evidence.report(rule, new Evidence.Done<>(rig.id(), activity).where(), what);
    }

    private void timeAndHours(Evidence.Done<Activity.Draw> done, WaterPoint point) {
        double least = point.hookUpS() + point.treatmentS() + done.activity().litres() / point.flowLPerS();
        long taken = evidence.lasts(done.activity());
        if (!(taken >= least - Evidence.SECOND_ROUNDING)) {
            evidence.report(
                    Rule.DRAW_TIME,
                    done.where(),
                    "its draw takes at least " + Evidence.show(least) + " s at " + point.id() + ", not " + taken
                            + " s");
        }
        long start = evidence.start(done.activity());
        long end = evidence.end(done.activity());
        if (evidence.calendar.open(point.hours()).stream().noneMatch(open -> open.contains(start, end))) {
            evidence.report(
                    Rule.DRAW_HOURS,
                    done.where(),
                    "it draws until " + done.activity().end() + ", " + point.id() + " is not open all that time");
        }
    }

    private void hoses(List<Evidence.Done<Activity.Draw>> draws, WaterPoint point) {
        List<Evidence.Done<Activity.Draw>> inOrder = draws.stream()
                .sorted(Comparator.comparingLong(draw -> evidence.start(draw.activity())))
                .toList();
        for (int i = 0; i < inOrder.size(); i++) {
            long start = evidence.start(inOrder.get(i).activity());
            long stillDrawing = inOrder.subList(0, i).stream()
                    .filter(earlier -> evidence.end(earlier.activity()) > start)
                    .count();
            if (stillDrawing >= point.hoses()) {
                evidence.report(
                        Rule.HOSES,
                        inOrder.get(i).where(),
                        "it draws at " + point.id() + " beside " + stillDrawing + " others, there are " + point.hoses()
                                + " hoses");
            }
        }
    }

    private void dailyLimit(List<Evidence.Done<Activity.Draw>> draws, WaterPoint point) {
        if (point.dailyLimitL().isEmpty()) {
            return;
        }
        double limit = point.dailyLimitL().getAsDouble();
        Map<LocalDate, Double> drawn = new TreeMap<>();
        evidence.carried.now().ifPresent(now -> drawn.put(now.toLocalDate(), evidence.carried.drawnL(point.id())));
        draws.forEach(draw -> drawn.merge(
                draw.activity().start().toLocalDate(), draw.activity().litres(), Double::sum));
        drawn.forEach((date, litres) -> {
            if (!(litres <= limit + (draws.size() + 1) * Evidence.ROUNDING)) {
                evidence.report(
                        Rule.DAILY_LIMIT,
                        point.id() + " on " + date,
                        Evidence.show(litres) + " L are drawn, the limit is " + Evidence.show(limit) + " L");
            }
        });
    }
}
