package freshfurrow.cli.words;

import freshfurrow.cli.needs.RigWeight;
import freshfurrow.cli.text.Figures;
import freshfurrow.model.season.Season;
import java.util.ArrayList;
import java.util.List;

/** What rigs weigh when they are loaded. */
record RigSummary(Season season, Figures figures) {
    String heading() {
        return "Rigs, loaded with a full nurse tank and "
                + (season.saysWhereCompostLies() ? "all the compost that they hold" : "the compost for one batch");
    }

    /** What each holds, then what is not in that and what would help. */
    List<String> entries() {
        List<String> entries = new ArrayList<>();
        weights()
                .forEach(weight -> entries.add(weight.rig() + ": " + figures.mass(weight.waterKg()) + " of water + "
                        + figures.mass(weight.compostKg()) + " of compost = " + figures.mass(weight.loadKg())
                        + weight.payloadKg().stream()
                                .mapToObj(payload -> ", payload " + figures.mass(payload))
                                .findFirst()
                                .orElse(", payload not given: weigh it")));
        entries.add("Not counted: tanks, drum, pump, hoses, fuel and people.");
        season.rigs().stream()
                .filter(rig -> rig.bucketKg().isEmpty())
                .forEach(rig -> entries.add(
                        rig.id() + ": to count its compost in buckets, weigh a full one, take off the empty one,"
                                + " and give the rest as its `bucket`."));
        return entries;
    }

    /** What is left of each payload, a sentence each. */
    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        weights().forEach(weight -> weight.leftKg().ifPresent(left -> cautions.add(weigh(weight.rig(), left))));
        return cautions;
    }

    private List<RigWeight> weights() {
        return season.rigs().stream()
                .map(rig -> RigWeight.of(rig, season.saysWhereCompostLies()))
                .toList();
    }

    private String weigh(String rig, double leftKg) {
        return leftKg < 0
                ? rig + ": water and compost alone are " + figures.mass(-leftKg)
                        + " over its payload. Tanks, drum,"
                        + " pump, fuel and people are extra. Do not drive it like this."
                : rig + ": that leaves " + figures.mass(leftKg) + " of payload for tanks, drum, pump, fuel and"
                        + " people. Weigh the loaded rig before it goes on the road.";
    }
}
