package freshfurrow.model.audit;

import freshfurrow.model.plan.Activity;
import freshfurrow.model.plan.ActivityVisitor;
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

    private void follow(Rig rig, List<Activity> activities) {
        var onBoard = new OnBoard(rig);
        activities.stream().filter(activity -> activity.kind().byRigs()).forEach(activity -> activity.accept(onBoard));
    }

    /**
     * The batches in the mix on a rig. Mix from a water point serves several loads until
     * the rig draws again. Beside a planter batches are made for one load, which may have what was on board to begin with besides.
     */
    private final class OnBoard implements ActivityVisitor.OfRig<OnBoard> {
        private final boolean atWater;
        private final List<String> all;
        private final List<String> sinceTransfer;

        OnBoard(Rig rig) {
            atWater = rig.extractAt() == ExtractAt.WATER;
            all = new ArrayList<>(
                    evidence.carried.mix(rig.id()).map(Mix::batches).orElse(List.of()));
            sinceTransfer = new ArrayList<>(all);
        }

        @Override
        public OnBoard visit(Activity.Move move) {
            return this;
        }

        @Override
        public OnBoard visit(Activity.Draw draw) {
            return atWater ? emptied() : this;
        }

        @Override
        public OnBoard visit(Activity.LoadCompost loading) {
            return this;
        }

        @Override
        public OnBoard visit(Activity.Extract extract) {
            all.add(extract.batch());
            sinceTransfer.add(extract.batch());
            return this;
        }

        @Override
        public OnBoard visit(Activity.Clean clean) {
            return this;
        }

        @Override
        public OnBoard visit(Activity.Transfer transfer) {
            judge(transfer.load(), all, atWater ? all : sinceTransfer);
            sinceTransfer.clear();
            return this;
        }

        @Override
        public OnBoard visit(Activity.Dump dump) {
            return emptied();
        }

        @Override
        public OnBoard visit(Activity.SetUp setUp) {
            return this;
        }

        @Override
        public OnBoard visit(Activity.CloseUp closeUp) {
            return this;
        }

        private OnBoard emptied() {
            all.clear();
            sinceTransfer.clear();
            return this;
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
