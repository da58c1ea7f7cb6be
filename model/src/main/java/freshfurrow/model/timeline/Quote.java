package freshfurrow.model.timeline;

import static freshfurrow.model.timeline.Calendar.NEVER;
import static freshfurrow.model.timeline.State.FREE;
import static freshfurrow.model.timeline.State.MIX_DEADLINE;
import static freshfurrow.model.timeline.State.MIX_DM2;
import static freshfurrow.model.timeline.State.MIX_RECIPE;
import static freshfurrow.model.timeline.State.RIG_PLACE;
import static freshfurrow.model.timeline.State.WATER_ML;

import freshfurrow.model.season.ExtractAt;

/**
 * When and how one rig could bring a load of a given size to a planter. Nothing is changed by asking, and the same question
 * twice in a row is worked out once.
 */
final class Quote {
    /** Where the mix of a load comes from. */
    enum Source {
        /** Batches made beside the planter: {@link ExtractAt#FIELD}. */
        BESIDE_PLANTER,
        /** Batches made at the water point: {@link ExtractAt#WATER}. */
        AT_WATER,
        /** Mix that is already on the rig. */
        ON_BOARD,
        /** Batches made beside a planter before, and as many more as the load asks for. */
        BEGUN
    }

    private static final long NOTHING = -1;

    private final CompiledSeason season;
    private final State state;
    private final long[] v;
    private final WaterPoints points;
    private final CompostLots lots;
    final Extraction extraction;

    final int rig;

    // the request
    int planter;
    int recipe;
    int place;
    int need;
    Source source = Source.BESIDE_PLANTER;

    /** Make all batches after a break rather than some before it. */
    boolean wholeAfterBreak;

    // the answer
    /** Water point of a water trip, -1 when none is needed. */
    int point;

    int drawStart;
    int drawS;
    long drawMl;
    /** Drive from the water point to the planter, s. */
    int onwardS;
    /** When mix to be dumped first is out, s; when the rig may set off without any. */
    int dumpEnd;

    int rigReady;
    int depart;
    int transferStart;
    int transferS;
    int deadline;
    int metres;
    /** The rig stood at the water point until hose, hours or limit let it draw. */
    boolean waitedForWater;

    /** The rig has a break between its first batch and the transfer. */
    boolean acrossBreak;

    // the question that the answer is to
    private long askedLoadDm2 = NOTHING;
    private long askedMixDm2;
    private Source askedSource = Source.BESIDE_PLANTER;
    private boolean askedWhole;

    /** The answer tells of the batches, not of the start only. */
    private boolean laid;

    /** Drive with mix on board from where it is made to the planter, s. */
    private int carryS;

    Quote(CompiledSeason season, State state, WaterPoints points, CompostLots lots, int rig) {
        this.rig = rig;
        this.season = season;
        this.state = state;
        this.v = state.v;
        this.points = points;
        this.lots = lots;
        this.extraction = new Extraction(season);
    }

    /** A planter asks for a fill where it stands. */
    void request(int planterIndex, int placeIndex, int recipeIndex, int needS) {
        planter = planterIndex;
        place = placeIndex;
        recipe = recipeIndex;
        need = needS;
        wholeAfterBreak = false;
        askedLoadDm2 = NOTHING;
    }

    /** When the rig may begin to get ready for a load asked for at a time, s. */
    int free(int needS) {
        return (int) Math.max(v[state.rig(rig) + FREE], season.rigs.readyFromS(rig, needS));
    }

    /**
     * Works out a load for {@code loadDm2}, out of a mix for {@code mixDm2}, and returns when its transfer starts;
     * {@link Calendar#NEVER} when the rig cannot bring it in the season.
     */
    int ask(long loadDm2, long mixDm2) {
        start(loadDm2, mixDm2);
        if (!laid) {
            laid = true;
            lay();
        }
        return transferStart;
    }

    /** When the transfer of such a load starts; how old the mix is then, only {@link #ask} tells. */
    int start(long loadDm2, long mixDm2) {
        if (loadDm2 != askedLoadDm2
                || mixDm2 != askedMixDm2
                || source != askedSource
                || wholeAfterBreak != askedWhole) {
            askedLoadDm2 = loadDm2;
            askedMixDm2 = mixDm2;
            askedSource = source;
            askedWhole = wholeAfterBreak;
            laid = false;
            workOut(loadDm2, mixDm2);
        }
        return transferStart;
    }

    private void workOut(long loadDm2, long mixDm2) {
        int base = state.rig(rig);
        int from = (int) v[base + RIG_PLACE];
        transferS = transferS(loadDm2);
        point = -1;
        waitedForWater = false;
        acrossBreak = false;
        dumpEnd = free(need);
        metres = 0;
        transferStart = NEVER;
        deadline = 0;
        if (source == Source.ON_BOARD) {
            metres = season.places.metres(from, place);
            rigReady = arrival(from, place, dumpEnd);
            extraction.batches = 0;
            transferStart = fitTransfer(Math.max(need, rigReady));
            deadline = (int) v[base + MIX_DEADLINE];
            laid = true;
            return;
        }
        if (source != Source.BEGUN && v[base + MIX_DM2] > 0) {
            int dumpS = dumpS();
            dumpEnd = season.rigs.hours(rig).earliest(dumpEnd, dumpS) + dumpS;
        }
        long begunMl = 0;
        if (source == Source.BEGUN) {
            long begunDm2 = v[base + MIX_DM2];
            begunMl = season.recipes.mixMl(begunDm2, recipe);
            extraction.planRest(
                    rig, season.recipes.compostMg(mixDm2, recipe) - season.recipes.compostMg(begunDm2, recipe));
        } else {
            extraction.plan(rig, season.recipes.compostMg(mixDm2, recipe));
        }
        long waterMl = Math.max(0, Math.min(season.recipes.mixMl(mixDm2, recipe), season.rigs.nurseMl(rig)) - begunMl);
        long leastMl = season.recipes.mixMl(Leeway.least(mixDm2), recipe) - begunMl;
        int ready;
        int drive = 0;
        if (source == Source.AT_WATER) {
            choosePoint(from, leastMl, waterMl);
            if (point < 0) {
                return;
            }
            ready = drawStart + drawS;
            drive = onwardS;
        } else if (v[base + WATER_ML] >= leastMl) {
            metres = season.places.metres(from, place);
            ready = arrival(from, place, dumpEnd);
        } else {
            choosePoint(from, leastMl - v[base + WATER_ML], season.rigs.nurseMl(rig) - begunMl - v[base + WATER_ML]);
            if (point < 0) {
                return;
            }
            ready = season.rigs.hours(rig).earliest(drawStart + drawS, onwardS) + onwardS;
        }
        Calendar hours = season.rigs.hours(rig);
        if (extraction.batches == 0) {
            rigReady = ready;
            transferStart = fitTransfer(Math.max(need, rigReady));
            deadline = (int) v[base + MIX_DEADLINE];
            laid = true;
            return;
        }
        ready = Math.max(ready, lots.availableFrom());
        if (ready >= NEVER) {
            return;
        }
        carryS = drive;
        if (v[base + State.CLEAN_DUE] == 1) {
            ready = hours.earliest(ready, season.rigs.cleanS(rig)) + season.rigs.cleanS(rig);
        }
        rigReady = hours.earliest(extraction.forward(ready), drive) + drive;
        transferStart = fitTransfer(Math.max(need, rigReady));
    }

    /** Lays the batches before the transfer, as late as may be. */
    private void lay() {
        if (transferStart >= NEVER) {
            return;
        }
        Calendar hours = season.rigs.hours(rig);
        layBatches(hours, carryS);
        if (wholeAfterBreak && acrossBreak) {
            int together = hours.startBefore(transferStart) + extraction.chainS() + carryS;
            if (together > transferStart) {
                rigReady = together;
                transferStart = fitTransfer(together);
                if (transferStart >= NEVER) {
                    return;
                }
                layBatches(hours, carryS);
            }
        }
        deadline = source == Source.BEGUN
                ? (int) v[state.rig(rig) + MIX_DEADLINE]
                : season.clock.after(extraction.oldestEnd, season.recipes.holdS(recipe));
    }

    /** Setup and pumping of a load, s. */
    int transferS(long dm2) {
        return season.transferS(planter, rig, recipe, dm2);
    }

    /** The first moment at or after {@code t} at which a transfer of {@code duration} fits both machines' hours. */
    int fitTransfer(int t, int duration) {
        Calendar planterHours = season.planters.hours(planter);
        Calendar rigHours = season.rigs.hours(rig);
        int s = t;
        while (s < NEVER) {
            int later = rigHours.earliest(planterHours.earliest(s, duration), duration);
            if (later == s) {
                return s;
            }
            s = later;
        }
        return NEVER;
    }

    /** When the rig is at a place if it sets off at {@code t} or as soon after as its hours allow. */
    int arrival(int from, int to, int t) {
        if (from == to) {
            return t;
        }
        int duration = driveS(from, to);
        return season.rigs.hours(rig).earliest(t, duration) + duration;
    }

    int driveS(int from, int to) {
        return season.rigs.driveS(rig, season.places.metres(from, to));
    }

    /** To let out the mix on board, s: at the rate of a transfer. */
    int dumpS() {
        int base = state.rig(rig);
        long ml = season.recipes.mixMl(v[base + MIX_DM2], (int) v[base + MIX_RECIPE]);
        return season.rigs.pumpS(rig, ml);
    }

    private int fitTransfer(int t) {
        return fitTransfer(t, transferS);
    }

    private void layBatches(Calendar hours, int drive) {
        depart = drive == 0 ? transferStart : hours.latest(transferStart, drive) - drive;
        extraction.backward(depart, null);
        long thereMg = lots.available(extraction.start);
        if (extraction.compostMg > thereMg && CompostLots.isEnough(thereMg, extraction.compostMg)) {
            extraction.plan(rig, thereMg);
            extraction.backward(depart, null);
        }
        acrossBreak = extraction.start < hours.startBefore(transferStart);
    }

    /** The point that has the water at the planter earliest; ties go to the shorter way, then to the season's order. */
    private void choosePoint(int from, long lackMl, long roomMl) {
        int best = NEVER;
        int bestWay = 0;
        for (int w = 0; w < season.water.count(); w++) {
            int at = season.water.place(w);
            int arrival = arrival(from, at, dumpEnd);
            int onward = driveS(at, place);
            int quickest = season.water.leastDrawS(w, lackMl) + onward;
            if (arrival + quickest > best) {
                continue;
            }
            int start = points.earliestDraw(w, arrival, lackMl, roomMl, season.rigs.hours(rig));
            if (start >= NEVER) {
                continue;
            }
            int there = season.rigs.hours(rig).earliest(start + points.drawS, onward) + onward;
            int way = season.places.metres(from, at) + season.places.metres(at, place);
            if (there < best || (there == best && there < NEVER && way < bestWay)) {
                best = there;
                bestWay = way;
                point = w;
                waitedForWater = start > arrival;
                drawStart = start;
                drawS = points.drawS;
                drawMl = points.drawMl;
                onwardS = onward;
                metres = way;
            }
        }
    }
}
