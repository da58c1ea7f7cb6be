package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.season.ExtractAt;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Rig;
import java.util.ArrayList;
import java.util.List;

/** Whether loads name the batches that the mix on their rig is made of. */
final class MixBatches {
    private final Evidence evidence;

    MixBatches(Evidence evidence) {
        this.evidence = evidence;
    }

    void check() {
        evidence.plan.rigs().forEach((id, its) -> {
            Rig rig = evidence.rigs.get(id);
            if (rig != null) {
                follow(rig, its.activities());
            }
        });
    }

    /**
     * Mix from a water point serves several loads until the rig draws again. Beside a planter batches are made for one load, which may
     * have what was on board to begin with besides.
     */
    private void follow(Rig rig, List<Activity> activities) {
        boolean atWater = rig.extractAt() == ExtractAt.WATER;
        List<String> onBoard =
                new ArrayList<>(evidence.carried.mix(rig.id()).map(Mix::batches).orElse(List.of()));
        List<String> sinceTransfer = new ArrayList<>(onBoard);
        for (Activity activity : activities) {
            if (activity instanceof Activity.Dump || (atWater && activity instanceof Activity.Draw)) {
                onBoard.clear();
                sinceTransfer.clear();
            } else if (activity instanceof Activity.Extract extract) {
                onBoard.add(extract.batch());
                sinceTransfer.add(extract.batch());
            } else if (activity instanceof Activity.Transfer transfer) {
                judge(transfer.load(), onBoard, atWater ? onBoard : sinceTransfer);
                sinceTransfer.clear();
            }
        }
    }

    private void judge(String id, List<String> onBoard, List<String> sinceTransfer) {
        var load = evidence.loads.get(id);
        if (load != null && !load.batches().equals(onBoard) && !load.batches().equals(sinceTransfer)) {
            evidence.report(
                    Rule.MIX_BATCHES,
                    "load " + id,
                    "it names batches " + String.join(", ", load.batches()) + ", on board is mix of "
                            + String.join(", ", sinceTransfer));
        }
    }
}
