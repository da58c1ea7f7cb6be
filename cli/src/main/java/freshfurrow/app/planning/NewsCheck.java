package freshfurrow.app.planning;

import freshfurrow.app.refusal.PlanningRefusal;
import freshfurrow.app.refusal.Refused;
import freshfurrow.model.progress.News;
import freshfurrow.model.season.Applicator;
import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Machine;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.Work;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether news are of machines and lots that a season has. */
final class NewsCheck {
    private NewsCheck() {}

    /** @throws Refused when one is not */
    static void pass(News news, Season season) {
        List<String> machines = season.machines().map(Machine::id).toList();
        news.outages().forEach(outage -> {
            if (!machines.contains(outage.machine())) {
                throw new Refused(new PlanningRefusal.UnknownMachine(outage.machine(), machines, works(season)));
            }
        });
        List<String> lots = season.compost().stream().map(CompostLot::id).toList();
        news.spoiledLots().stream()
                .filter(lot -> !lots.contains(lot))
                .min(Comparator.naturalOrder())
                .ifPresent(lot -> {
                    throw new Refused(new PlanningRefusal.UnknownLot(lot, lots));
                });
    }

    private static Set<Work> works(Season season) {
        return season.applicators().stream().map(Applicator::work).collect(Collectors.toSet());
    }
}
